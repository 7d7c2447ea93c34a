#pragma once
// How far a long job is, on standard error, at most a few times a second.

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>

namespace quarterturn {

struct HowFar {
    std::int64_t done = 0;
    std::int64_t total = 0;
    std::optional<std::chrono::seconds> left;
};

class ProgressLine {
  public:
    // On a terminal one line is written over and over; else each time a new line, and only when
    // `asked_for`.
    explicit ProgressLine(bool asked_for);
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    void show(const HowFar& how_far);
    // What jobs call with how far they are: a struct of done, total and left, or two numbers. Holds
    // as long as this line.
    auto teller() {
        return [this](const auto& progress) {
            show({progress.done, progress.total, progress.left});
        };
    }
    auto counter() {
        return [this](std::int64_t done, std::int64_t total) { show({done, total, {}}); };
    }

  private:
    bool terminal_;
    bool wanted_;
    bool shown_ = false;
    std::chrono::steady_clock::time_point next_{};
};

// "12 of 240 files, about 2 minutes left"
std::string progress_text(const HowFar& how_far);

}  // namespace quarterturn
