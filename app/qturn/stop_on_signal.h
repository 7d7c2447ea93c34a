#pragma once
// Ctrl-C and SIGTERM as a request to stop. What is being done is brought to a safe end; a second
// signal ends the program at once.

#include <stop_token>
#include <thread>

namespace quarterturn {

// Make it before any other thread is started, so that all of them leave the signals to it.
class StopOnSignal {
  public:
    StopOnSignal();
    ~StopOnSignal();
    StopOnSignal(const StopOnSignal&) = delete;
    StopOnSignal& operator=(const StopOnSignal&) = delete;

    std::stop_token token() const { return stop_.get_token(); }

  private:
    std::stop_source stop_;
    std::jthread waiter_;
};

}  // namespace quarterturn
