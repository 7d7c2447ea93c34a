#pragma once

#include <QWidget>

#include "indexer/looks/coming_up.h"

class QVBoxLayout;

namespace quarterturn {

class Session;

// One look: its ring, its name, and what it still lacks in words that lead there.
class LookLine : public QWidget {
    Q_OBJECT
  public:
    LookLine(Session& session, const LookAhead& look, QWidget* parent = nullptr);

  private:
    void add_lacks(QVBoxLayout& column, const LookAhead& look);

    Session& session_;
};

}  // namespace quarterturn
