#pragma once

#include <QWidget>
#include <optional>

#include "indexer/record/id.h"

namespace quarterturn {

class Notice;
class Session;

// Says which of a look's photo files are gone or no longer hold what was brought in. Silent while
// all is well.
class FilesPart : public QWidget {
    Q_OBJECT
  public:
    explicit FilesPart(Session& session, QWidget* parent = nullptr);

    // Reads every photo of the look, off the window's thread; of several looks asked about one
    // after the other, the last counts.
    void look_at(std::optional<LookId> look);

  private:
    Session& session_;
    Notice* notice_;
    std::optional<LookId> look_;
};

}  // namespace quarterturn
