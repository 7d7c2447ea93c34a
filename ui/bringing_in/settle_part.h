#pragma once

#include <QWidget>
#include <memory>

#include "indexer/intake/to_settle.h"

class QVBoxLayout;

namespace quarterturn {

class Job;
class Session;

// What only she can settle, by looking at pictures: doubtful clocks first, then photos without a
// place. Hidden while there is nothing.
class SettlePart : public QWidget {
    Q_OBJECT
  public:
    explicit SettlePart(Session& session, QWidget* parent = nullptr);
    ~SettlePart() override;

    void look_again();  // off the window's thread

  private:
    void show_what_waits(const ToSettle& waits);

    Session& session_;
    QVBoxLayout* parts_;
    ToSettle shown_;
    std::unique_ptr<Job> job_;
    bool once_more_ = false;  // something changed while it looked
};

}  // namespace quarterturn
