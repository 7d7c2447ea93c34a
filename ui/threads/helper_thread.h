#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

namespace quarterturn {

// One thread that does in turn what it is given.
class HelperThread {
  public:
    HelperThread();
    ~HelperThread();  // waits for what it is at; what was not begun is never done

    void give(std::function<void()> work);

  private:
    void run();

    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<std::function<void()>> waiting_;
    bool closed_ = false;
    std::jthread thread_;
};

}  // namespace quarterturn
