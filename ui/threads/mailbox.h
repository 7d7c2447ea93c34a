#pragma once

#include <QObject>
#include <deque>
#include <functional>
#include <mutex>

namespace quarterturn {

// What other threads give this object's thread to do. Declare it before the threads that use it.
class Mailbox : public QObject {
  public:
    using QObject::QObject;

    // From any thread. Done in turn, from the event loop; what waits when the mailbox goes is never
    // done.
    void post(std::function<void()> work);

  protected:
    void customEvent(QEvent* event) override;

  private:
    std::mutex mutex_;
    std::deque<std::function<void()>> waiting_;
};

}  // namespace quarterturn
