#pragma once
// Whether parts with deadlines can all be done in time, were they allowed to be broken off.

#include <algorithm>
#include <array>

#include "indexer/record/morning.h"

namespace quarterturn {

// Always doing what is due first is best when parts may be broken off (Jackson 1955, Horn 1974): if
// even that is late, no order is in time.
class Deadlines {
  public:
    void add(int from, int minutes, int deadline) {
        if (count_ < parts_.size()) parts_[count_++] = {from, minutes, deadline};
    }

    bool can_be_kept() {
        const auto end = parts_.begin() + count_;
        std::sort(parts_.begin(), end,
                  [](const Due& left, const Due& right) { return left.from < right.from; });
        int now = 0;
        std::size_t come = 0;
        while (true) {
            Due* next = nullptr;
            for (; come < count_ && parts_[come].from <= now; ++come) {
            }
            for (std::size_t i = 0; i < come; ++i) {
                Due& part = parts_[i];
                if (part.minutes > 0 && (next == nullptr || part.deadline < next->deadline)) {
                    next = &part;
                }
            }
            const int next_from = come < count_ ? parts_[come].from : no_more;
            if (next == nullptr) {
                if (come == count_) return true;
                now = next_from;
                continue;
            }
            const int done = std::min(next->minutes, next_from - now);
            now += done;
            next->minutes -= done;
            if (now + next->minutes > next->deadline) return false;
        }
    }

  private:
    static constexpr int no_more = 1'000'000;
    struct Due {
        int from = 0;
        int minutes = 0;
        int deadline = 0;
    };

    std::array<Due, std::size_t{2} * most_in_the_chair + 8> parts_;
    std::size_t count_ = 0;
};

}  // namespace quarterturn
