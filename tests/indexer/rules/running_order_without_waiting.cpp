#include "tests/indexer/rules/running_order_without_waiting.h"

namespace quarterturn {
namespace {

using ClientSet = unsigned;  // a bit for each client

class BestWithoutWaiting {
  public:
    BestWithoutWaiting(const MorningNeeds& needs, int begins) : needs_(needs), begins_(begins) {
        for (ClientSet set = 0; set <= everybody(); ++set) minutes_.push_back(minutes_of(set));
    }

    LeastLateness least() const {
        const MorningClient& last = needs_.clients.back();
        return last.last ? least_with_last(last) : least_of_all()[everybody()];
    }

  private:
    ClientSet everybody() const { return (1U << needs_.clients.size()) - 1; }

    int minutes_of(ClientSet set) const {
        int minutes = 0;
        for (std::size_t i = 0; i < needs_.clients.size(); ++i) {
            if (set >> i & 1U) minutes += needs_.clients[i].work.hands_on();
        }
        return minutes;
    }

    int end_of(const StylistHours& hours, ClientSet set) const {
        return std::max(begins_, hours.arrives) + minutes_[set];
    }

    static LeastLateness late_by(int minutes) {
        return {std::max(0, minutes), std::max(0, minutes)};
    }

    // For each set of clients, when this stylist alone does them.
    LatenessOfSets least_of(const StylistHours& hours) const {
        LatenessOfSets table(everybody() + 1);
        for (ClientSet set = 1; set <= everybody(); ++set) {
            table[set] = never;
            for (std::size_t i = 0; i < needs_.clients.size(); ++i) {
                if (!(set >> i & 1U)) continue;
                const int late = end_of(hours, set) - needs_.clients[i].ready_by;
                table[set] = std::min(table[set], both(table[set & ~(1U << i)], late_by(late)));
            }
        }
        return table;
    }

    // For each set of clients, when it is divided among all the stylists.
    LatenessOfSets least_of_all() const {
        LatenessOfSets all = least_of(needs_.stylists.front());
        for (std::size_t i = 1; i < needs_.stylists.size(); ++i) {
            const LatenessOfSets own = least_of(needs_.stylists[i]);
            LatenessOfSets divided = all;
            for (ClientSet set = 1; set <= everybody(); ++set) {
                for (ClientSet part = set; part > 0; part = (part - 1) & set) {
                    divided[set] = std::min(divided[set], both(all[set & ~part], own[part]));
                }
            }
            all = std::move(divided);
        }
        return all;
    }

    // With one or two stylists: she who must be last is finished when all the others are.
    LeastLateness least_with_last(const MorningClient& last) const {
        const ClientSet others = everybody() >> 1U;
        LeastLateness least = never;
        for (std::size_t own = 0; own < needs_.stylists.size(); ++own) {
            const StylistHours& hers = needs_.stylists[own];
            const StylistHours& other = needs_.stylists[needs_.stylists.size() - 1 - own];
            const LatenessOfSets before_her = least_of(hers);
            const LatenessOfSets elsewhere = least_of(other);
            for (ClientSet set = 0; set <= others; ++set) {
                const ClientSet rest = others & ~set;
                if (needs_.stylists.size() == 1 && rest > 0) continue;
                int end = end_of(hers, set) + last.work.hands_on();
                if (rest > 0) end = std::max(end, end_of(other, rest));
                least = std::min(least, both(both(before_her[set], elsewhere[rest]),
                                             late_by(end - last.ready_by)));
            }
        }
        return least;
    }

    const MorningNeeds& needs_;
    int begins_;
    std::vector<int> minutes_;
};

}  // namespace

LeastLateness least_without_waiting(const MorningNeeds& needs, int begins) {
    return BestWithoutWaiting(needs, begins).least();
}

}  // namespace quarterturn
