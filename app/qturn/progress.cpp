#include "app/qturn/progress.h"

#include <unistd.h>

#include <iostream>

#include "app/qturn/say.h"

namespace quarterturn {
namespace {

constexpr std::chrono::milliseconds between_lines{500};

std::string left_text(std::chrono::seconds left) {
    if (left < std::chrono::seconds{60}) {
        return "about " + count_text(static_cast<std::size_t>(left.count()), "second") + " left";
    }
    const auto minutes = std::chrono::ceil<std::chrono::minutes>(left);
    return "about " + count_text(static_cast<std::size_t>(minutes.count()), "minute") + " left";
}

}  // namespace

std::string progress_text(const HowFar& how_far) {
    std::string text = std::to_string(how_far.done) + " of " +
                       count_text(static_cast<std::size_t>(how_far.total), "file");
    if (how_far.left && how_far.done < how_far.total) text += ", " + left_text(*how_far.left);
    return text;
}

ProgressLine::ProgressLine(bool asked_for)
    : terminal_(isatty(STDERR_FILENO) == 1), wanted_(terminal_ || asked_for) {}

ProgressLine::~ProgressLine() {
    if (terminal_ && shown_) std::cerr << '\n';
}

void ProgressLine::show(const HowFar& how_far) {
    if (!wanted_) return;
    const auto now = std::chrono::steady_clock::now();
    const bool last = how_far.done == how_far.total;
    if (now < next_ && !last) return;
    next_ = now + between_lines;
    shown_ = true;
    constexpr const char* back_to_start = "\r\x1b[K";
    std::cerr << (terminal_ ? back_to_start : "") << progress_text(how_far)
              << (terminal_ ? "" : "\n") << std::flush;
}

}  // namespace quarterturn
