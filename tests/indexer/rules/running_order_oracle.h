#pragma once
// The best morning found another way: minute by minute, every stylist begins each part she could or
// stands idle, and every state met again is remembered. All stylists and order rules at once.

#include <map>
#include <vector>

#include "indexer/rules/running_order.h"

namespace quarterturn {

struct LeastLateness {
    int in_all = 0;
    int worst = 0;

    auto operator<=>(const LeastLateness&) const = default;
};

inline constexpr LeastLateness never{1'000'000, 1'000'000};

class MinuteByMinute {
  public:
    explicit MinuteByMinute(const MorningNeeds& needs) : needs_(needs) {}

    // When nothing begins before `from`; exact up to `most` in all, and anything more is `never`.
    LeastLateness least(int from, int most) {
        from_ = from;
        most_ = most;
        known_.clear();
        return from_now_on(State{0, 0, std::vector<int>(needs_.stylists.size(), 0),
                                 std::vector<Client>(needs_.clients.size()), -1, false});
    }

  private:
    enum Standing { open, waiting, done };
    struct Client {
        Standing standing = open;
        int ends = 0;  // of the part begun last
        int stylist = -1;

        auto operator<=>(const Client&) const = default;
    };
    struct State {
        int now;
        std::size_t stylist;  // whose turn it is in this minute
        std::vector<int> busy_until;
        std::vector<Client> clients;
        int last_ends;            // she who must be last; -1 while she is not finished
        bool begun_before_first;  // in this minute: she must be begun in it too

        auto operator<=>(const State&) const = default;
    };
    LeastLateness from_now_on(State state) {
        bool all_done = true;
        for (const Client& client : state.clients) all_done = all_done && client.standing == done;
        if (all_done) return {};
        if (state.stylist == needs_.stylists.size()) {
            if (state.begun_before_first && first_is_open(state)) return never;
            state.begun_before_first = false;
            state.stylist = 0;
            ++state.now;
            return from_now_on(forgetting(std::move(state)));
        }
        if (is_lost(state)) return never;
        const auto seen = known_.find(state);
        if (seen != known_.end()) return seen->second;
        LeastLateness best = idle(state);
        if (state.now >= from_ && state.busy_until[state.stylist] <= state.now) {
            for (std::size_t i = 0; i < needs_.clients.size(); ++i) {
                best = std::min(best, with(state, i));
            }
        }
        known_[state] = best;
        return best;
    }

    // A set was left too long, or too much is late already.
    bool is_lost(const State& state) const {
        int late = 0;
        for (std::size_t i = 0; i < state.clients.size(); ++i) {
            const Client& client = state.clients[i];
            const MorningClient& needs = needs_.clients[i];
            if (client.standing == done) continue;
            if (client.standing == waiting && state.now - client.ends > needs.work.may_be_left) {
                return true;
            }
            const int work = client.standing == waiting
                                 ? needs.work.after
                                 : needs.work.hands_on() + needs.work.cooling;
            late += std::max(0, state.now + work - needs.ready_by);
        }
        return late > most_;
    }

    LeastLateness idle(State state) {
        ++state.stylist;
        return from_now_on(std::move(state));
    }

    LeastLateness with(State state, std::size_t i) {
        const MorningClient& client = needs_.clients[i];
        Client& standing = state.clients[i];
        const bool second = standing.standing == waiting;
        const int minutes = second ? client.work.after : client.work.before;
        const int ends = state.now + minutes;
        if (standing.standing == done || !is_working(state.stylist, state.now, ends)) return never;
        if (second && !may_be_finished(state, i)) return never;
        if (!second && state.now < client.arrives) return never;
        const bool ready = second || client.work.after == 0;
        if (state.last_ends >= 0 && ends > state.last_ends) return never;
        if (ready && client.last) {
            for (const Client& other : state.clients) {
                if (other.ends > ends) return never;
            }
            state.last_ends = ends;
        }
        if (!client.first && first_is_open(state)) state.begun_before_first = true;
        standing = {ready ? done : waiting, ends, static_cast<int>(state.stylist)};
        state.busy_until[state.stylist] = ends;
        ++state.stylist;
        const int late = ready ? std::max(0, ends - client.ready_by) : 0;
        const LeastLateness rest = from_now_on(std::move(state));
        return {rest.in_all + late, std::max(rest.worst, late)};
    }

    bool is_working(std::size_t stylist, int begins, int ends) const {
        const StylistHours& hours = needs_.stylists[stylist];
        if (begins < hours.arrives) return false;
        for (const Break& pause : hours.breaks) {
            if (begins < pause.ends && ends > pause.begins) return false;
        }
        return true;
    }

    bool first_is_open(const State& state) const {
        for (std::size_t k = 0; k < state.clients.size(); ++k) {
            if (needs_.clients[k].first && state.clients[k].standing == open) return true;
        }
        return false;
    }

    bool may_be_finished(const State& state, std::size_t i) const {
        const Client& client = state.clients[i];
        const int waited = state.now - client.ends;
        return client.stylist == static_cast<int>(state.stylist) &&
               waited >= needs_.clients[i].work.cooling &&
               waited <= needs_.clients[i].work.may_be_left;
    }

    // What lies behind cannot matter any more: it makes states alike.
    State forgetting(State state) const {
        for (int& busy : state.busy_until) busy = std::max(busy, state.now);
        for (Client& client : state.clients) {
            if (client.standing != done) continue;
            client.stylist = -1;
            client.ends = std::max(client.ends, state.now);
        }
        return state;
    }

    const MorningNeeds& needs_;
    int from_ = 0;
    int most_ = 0;
    std::map<State, LeastLateness> known_;
};

}  // namespace quarterturn
