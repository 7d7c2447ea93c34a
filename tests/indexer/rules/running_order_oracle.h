#pragma once
// The best morning found another way. Each stylist for herself tries, minute by minute, every part
// she could begin, or stands idle, and so comes to know of every set of clients how little late she
// could have them ready by every minute. Then all ways to share the clients out are added up. Small
// numbers only: nothing is bounded but what is later than asked for.

#include <algorithm>
#include <vector>

#include "indexer/rules/running_order.h"

namespace quarterturn {

struct LeastLateness {
    int in_all = 0;
    int worst = 0;

    auto operator<=>(const LeastLateness&) const = default;
};

inline constexpr LeastLateness never{1'000'000, 1'000'000};

inline LeastLateness both(const LeastLateness& one, const LeastLateness& other) {
    return {one.in_all + other.in_all, std::max(one.worst, other.worst)};
}

// By set of clients, a bit for each.
using LatenessOfSets = std::vector<LeastLateness>;

class BestMorning {
  public:
    explicit BestMorning(const MorningNeeds& needs) : needs_(needs) {}

    // When nothing begins before `from`; exact up to `most` in all, and anything more is `never`.
    LeastLateness least(int from, int most) const;

  private:
    LeastLateness shared_out(int from, int most) const;

    const MorningNeeds& needs_;
};

}  // namespace quarterturn
