#pragma once
// How long the rest takes, told from how long the bytes so far took.

#include <chrono>
#include <cstdint>
#include <optional>

namespace quarterturn {

class TimeLeft {
  public:
    explicit TimeLeft(std::int64_t total_bytes) : total_(total_bytes) {}

    void done(std::int64_t bytes) { done_ += bytes; }

    // Nothing in the first seconds, which say little.
    std::optional<std::chrono::seconds> left() const {
        using namespace std::chrono;
        const auto spent = steady_clock::now() - begun_;
        if (spent < seconds{2} || done_ == 0) return std::nullopt;
        const double share = static_cast<double>(total_ - done_) / static_cast<double>(done_);
        return ceil<seconds>(spent * share);
    }

  private:
    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
    std::int64_t total_;
    std::int64_t done_ = 0;
};

}  // namespace quarterturn
