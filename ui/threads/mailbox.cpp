#include "ui/threads/mailbox.h"

#include <QCoreApplication>
#include <QEvent>

namespace quarterturn {

void Mailbox::post(std::function<void()> work) {
    {
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(work));
    }
    QCoreApplication::postEvent(this, new QEvent(QEvent::User));
}

void Mailbox::customEvent(QEvent*) {
    std::function<void()> work;
    {
        const std::lock_guard lock(mutex_);
        work = std::move(waiting_.front());
        waiting_.pop_front();
    }
    work();
}

}  // namespace quarterturn
