#include "tests/indexer/rules/running_order_oracle.h"

#include <cstdint>
#include <optional>
#include <unordered_map>

namespace quarterturn {
namespace {

// One stylist and the clients she may take.
class EveryMinute {
  public:
    // Nothing begins before `from`; her work on the client who must be first begins right then.
    EveryMinute(const MorningNeeds& needs, const StylistHours& hours, int from, int most)
        : clients_(needs.clients), hours_(hours), from_(from), most_(most) {
        for (const MorningClient& client : clients_) {
            horizon_ = std::max(horizon_, client.ready_by + most);
        }
        at_.resize(static_cast<std::size_t>(horizon_) + 1);
        ready_.assign(at_.size(), LatenessOfSets(std::size_t{1} << clients_.size(), never));
        if (from <= horizon_) reach(from, 0, {});
        for (now_ = from; now_ <= horizon_; ++now_) {
            for (const auto& [standing, late] : at_[static_cast<std::size_t>(now_)]) {
                go_on(standing, late);
            }
        }
    }

    // Of each set when all of it is ready by then, and she who must be last exactly then.
    const std::vector<LatenessOfSets>& ready() const { return ready_; }

  private:
    // Four bits for each client: not begun, ready, or how long her set has been cooling.
    using Standing = std::uint64_t;
    enum : unsigned { open = 0, done = 1, cooling = 2 };

    static unsigned of(Standing standing, std::size_t client) {
        return static_cast<unsigned>(standing >> (4 * client) & 15U);
    }
    static Standing with(Standing standing, std::size_t client, unsigned how) {
        return (standing & ~(Standing{15} << (4 * client))) | Standing{how} << (4 * client);
    }

    void reach(int now, Standing standing, LeastLateness late) {
        if (now > horizon_ || is_lost(now, standing, late.in_all)) return;
        auto& best = at_[static_cast<std::size_t>(now)].try_emplace(standing, never).first->second;
        best = std::min(best, late);
    }

    // Too much is late already, or must be, whoever does those who are not begun here.
    bool is_lost(int now, Standing standing, int late) const {
        for (std::size_t i = 0; i < clients_.size(); ++i) {
            const MorningClient& client = clients_[i];
            const unsigned how = of(standing, i);
            if (how == done) continue;
            const int ends = how == open ? std::max(from_, client.arrives) + client.work.before +
                                               client.work.cooling + client.work.after
                                         : now + client.work.after;
            late += std::max(0, ends - client.ready_by);
        }
        return late > most_;
    }

    void go_on(Standing standing, LeastLateness late) {
        note_ready(now_, standing, late);
        if (const auto idle = later(standing, 1)) reach(now_ + 1, *idle, late);
        if (now_ < hours_.arrives) return;
        for (std::size_t i = 0; i < clients_.size(); ++i) {
            const ChairWork& work = clients_[i].work;
            const unsigned how = of(standing, i);
            if (how == open && now_ >= clients_[i].arrives && keeps_first(standing, i)) {
                do_part(standing, i, work.before, work.after > 0 ? cooling : done, late);
            }
            if (how >= cooling && how - cooling >= static_cast<unsigned>(work.cooling)) {
                do_part(standing, i, work.after, done, late);
            }
        }
    }

    void note_ready(int now, Standing standing, LeastLateness late) {
        std::size_t set = 0;
        for (std::size_t i = 0; i < clients_.size(); ++i) {
            if (of(standing, i) >= cooling) return;
            if (of(standing, i) == done) set |= std::size_t{1} << i;
        }
        auto& best = ready_[static_cast<std::size_t>(now)][set];
        best = std::min(best, late);
    }

    // Every set cools on; nothing when one would be left too long.
    std::optional<Standing> later(Standing standing, int minutes) const {
        for (std::size_t i = 0; i < clients_.size(); ++i) {
            const unsigned how = of(standing, i);
            if (how < cooling) continue;
            const int left = static_cast<int>(how - cooling) + minutes;
            if (left > clients_[i].work.may_be_left) return std::nullopt;
            standing = with(standing, i, cooling + static_cast<unsigned>(left));
        }
        return standing;
    }

    void do_part(Standing standing, std::size_t i, int minutes, unsigned then, LeastLateness late) {
        const int ends = now_ + minutes;
        for (const Break& pause : hours_.breaks) {
            if (now_ < pause.ends && ends > pause.begins) return;
        }
        const auto at_end = later(with(standing, i, done), minutes);
        if (!at_end) return;
        if (then == cooling) return reach(ends, with(*at_end, i, cooling), late);
        const int own = std::max(0, ends - clients_[i].ready_by);
        late = both(late, {own, own});
        if (!clients_[i].last) return reach(ends, *at_end, late);
        // Nobody is ready after her, so this is the end.
        if (ends <= horizon_ && late.in_all <= most_) note_ready(ends, *at_end, late);
    }

    bool keeps_first(Standing standing, std::size_t i) const {
        return !clients_[i].first || (standing == 0 && now_ == from_);
    }

    const std::vector<MorningClient>& clients_;
    const StylistHours& hours_;
    int from_;
    int most_;
    int horizon_ = 0;
    int now_ = 0;
    std::vector<std::unordered_map<Standing, LeastLateness>> at_;  // by minute
    std::vector<LatenessOfSets> ready_;
};

LatenessOfSets together(const LatenessOfSets& some, const LatenessOfSets& more) {
    LatenessOfSets result(some.size(), never);
    for (std::size_t set = 0; set < some.size(); ++set) {
        if (some[set] == never) continue;
        for (std::size_t other = 0; other < more.size(); ++other) {
            if ((set & other) != 0 || more[other] == never) continue;
            result[set | other] = std::min(result[set | other], both(some[set], more[other]));
        }
    }
    return result;
}

}  // namespace

LeastLateness BestMorning::least(int from, int most) const {
    const bool any_first = std::ranges::count(needs_.clients, true, &MorningClient::first) > 0;
    LeastLateness best = never;
    int latest = 0;
    for (const MorningClient& client : needs_.clients) {
        latest = std::max(latest, client.ready_by + most);
    }
    // She who must be first begins at one of the minutes, and nobody before it.
    do {
        best = std::min(best, shared_out(from, most));
    } while (any_first && ++from < latest);
    return best;
}

LeastLateness BestMorning::shared_out(int from, int most) const {
    std::vector<std::vector<LatenessOfSets>> by_stylist;
    for (const StylistHours& hours : needs_.stylists) {
        by_stylist.push_back(EveryMinute(needs_, hours, from, most).ready());
    }
    const bool any_last = std::ranges::count(needs_.clients, true, &MorningClient::last) > 0;
    LeastLateness best = never;
    // She who must be last is ready at one of the minutes, and everybody else by then.
    for (std::size_t by = any_last ? 0 : by_stylist.front().size() - 1;
         by < by_stylist.front().size(); ++by) {
        LatenessOfSets sets = by_stylist.front()[by];
        for (std::size_t k = 1; k < by_stylist.size(); ++k) {
            sets = together(sets, by_stylist[k][by]);
        }
        best = std::min(best, sets.back());
    }
    return best.in_all > most ? never : best;
}

}  // namespace quarterturn
