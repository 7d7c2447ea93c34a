#include "indexer/rules/running_order/calendar.h"

#include <algorithm>

namespace quarterturn {

Calendar::Calendar(const StylistHours& hours) : arrives_(hours.arrives), breaks_(hours.breaks) {
    std::erase_if(breaks_, [](const Break& pause) { return pause.ends <= pause.begins; });
    std::ranges::sort(breaks_, {}, &Break::begins);
    std::vector<Break> joined;
    for (const Break& pause : breaks_) {
        if (joined.empty() || pause.begins > joined.back().ends) {
            joined.push_back(pause);
        } else {
            joined.back().ends = std::max(joined.back().ends, pause.ends);
        }
    }
    breaks_ = std::move(joined);
}

int Calendar::place(int from, int minutes) const {
    int begins = std::max(from, arrives_);
    for (const Break& pause : breaks_) {
        if (begins < pause.ends && begins + minutes > pause.begins) begins = pause.ends;
    }
    return begins;
}

int Calendar::after_work(int from, int minutes) const {
    int now = std::max(from, arrives_);
    for (const Break& pause : breaks_) {
        if (pause.ends <= now) continue;
        if (now + minutes <= pause.begins) break;
        minutes -= std::max(0, pause.begins - now);
        now = pause.ends;
    }
    return now + minutes;
}

}  // namespace quarterturn
