#include "ui/threads/helper_thread.h"

namespace quarterturn {

HelperThread::HelperThread() : thread_([this] { run(); }) {}

HelperThread::~HelperThread() {
    {
        const std::lock_guard lock(mutex_);
        closed_ = true;
    }
    changed_.notify_all();
}

void HelperThread::give(std::function<void()> work) {
    {
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(work));
    }
    changed_.notify_all();
}

void HelperThread::run() {
    for (;;) {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [this] { return closed_ || !waiting_.empty(); });
        if (closed_) return;
        const auto work = std::move(waiting_.front());
        waiting_.pop_front();
        lock.unlock();
        work();
    }
}

}  // namespace quarterturn
