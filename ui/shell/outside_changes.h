#pragma once

#include <QTimer>

class QWidget;

namespace quarterturn {

class Session;

// Sees that another program, such as qturn, or a second window changed the library's records, and
// has the window look at them again. It waits while she is typing or a list is open, and while work
// of this window runs, whose end is told anyway.
class OutsideChanges : public QObject {
    Q_OBJECT
  public:
    OutsideChanges(Session& session, QWidget& window);

    void look();  // also called by itself, every second

  private:
    Session& session_;
    QWidget& window_;
    QTimer timer_;
};

}  // namespace quarterturn
