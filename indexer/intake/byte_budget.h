#pragma once
// Keeps what several threads hold in memory at one time below a limit. Something larger than the
// limit is let in when it is alone.

#include <condition_variable>
#include <cstdint>
#include <mutex>

namespace quarterturn {

class ByteBudget {
  public:
    explicit ByteBudget(std::int64_t limit) : limit_(limit) {}

    // Gives the bytes back when it goes.
    class Hold {
      public:
        Hold(ByteBudget& budget, std::int64_t bytes) : budget_(budget), bytes_(bytes) {
            std::unique_lock lock{budget_.mutex_};
            budget_.freed_.wait(lock, [this] {
                return budget_.held_ == 0 || budget_.held_ + bytes_ <= budget_.limit_;
            });
            budget_.held_ += bytes_;
        }
        ~Hold() {
            {
                const std::lock_guard lock{budget_.mutex_};
                budget_.held_ -= bytes_;
            }
            budget_.freed_.notify_all();
        }
        Hold(const Hold&) = delete;
        Hold& operator=(const Hold&) = delete;

      private:
        ByteBudget& budget_;
        std::int64_t bytes_;
    };

    // Waits until there is room.
    Hold hold(std::int64_t bytes) { return {*this, bytes}; }

  private:
    const std::int64_t limit_;
    std::int64_t held_ = 0;
    std::mutex mutex_;
    std::condition_variable freed_;
};

}  // namespace quarterturn
