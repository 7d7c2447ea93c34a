// bench_running_order: how much processor time parties of six to twelve take to be planned for one
// to four stylists, and for how many of the mornings the plan was proven the best. The same
// mornings in every run.

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <random>

#include "indexer/rules/running_order.h"

namespace {

using namespace quarterturn;

// How the ready-by times lie.
enum class Kind {
    roomy,   // all by one time, with an hour to spare
    spread,  // one after another, with hardly time to spare; breaks, and some come later
    tight    // one after another, sooner than can be: somebody is late
};

class RandomMorning {
  public:
    RandomMorning(unsigned seed, int clients, int stylists, Kind kind)
        : random_(seed), stylists_(stylists), kind_(kind) {
        needs_.stylists.resize(static_cast<std::size_t>(stylists));
        for (int i = 1; i <= clients; ++i) add_client(i);
        for (MorningClient& client : needs_.clients) give_times(client);
        needs_.clients.front().last = true;
        if (kind == Kind::roomy) return;
        needs_.clients.back().first = pick(1, 3) == 1;
        for (StylistHours& hours : needs_.stylists) {
            hours.arrives += 15 * pick(0, 2);
            const int begins = usual_arrival + 5 * pick(24, 48);
            if (pick(1, 2) == 1) hours.breaks.push_back({begins, begins + 15});
        }
    }

    const MorningNeeds& needs() const { return needs_; }

  private:
    int pick(int least, int most) {
        return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
    }

    void add_client(int number) {
        MorningClient client;
        client.client = ClientId{number};
        client.work = {.before = 5 * pick(4, 9)};
        if (pick(1, 3) > 1) client.work = {5 * pick(3, 6), 5 * pick(2, 4), 60, 5 * pick(4, 8)};
        work_ += client.work.hands_on();
        needs_.clients.push_back(client);
    }

    void give_times(MorningClient& client) {
        const int share = work_ / stylists_;
        client.ready_by = usual_arrival + share + 60;
        if (kind_ == Kind::roomy) return;
        const int latest = kind_ == Kind::spread ? share + 45 : share;
        const int soonest = kind_ == Kind::spread ? latest / 2 : latest / 3;
        client.ready_by = usual_arrival + 5 * pick(soonest / 5, latest / 5);
        if (pick(1, 4) == 1) client.arrives = usual_arrival + 5 * pick(0, share / 10);
    }

    std::mt19937 random_;
    int stylists_;
    Kind kind_;
    int work_ = 0;
    MorningNeeds needs_;
};

void measure(const char* name, Kind kind, int clients, int stylists, unsigned mornings) {
    double longest = 0;
    double all = 0;
    int proven = 0;
    int least_late = 0;
    int late = 0;
    for (unsigned seed = 1; seed <= mornings; ++seed) {
        const RandomMorning morning(seed, clients, stylists, kind);
        const std::clock_t begin = std::clock();
        const RunningOrder order = plan_morning(morning.needs());
        const double took = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
        proven += order.proven ? 1 : 0;
        least_late += order.lateness_proven ? 1 : 0;
        late += order.late_in_all > 0 ? 1 : 0;
        longest = std::max(longest, took);
        all += took;
    }
    std::printf(
        "%-6s %2d clients, %d stylists: %.3f s in the mean, %.3f s at most, %d of %u with "
        "somebody late, least lateness proven for %d, the whole plan for %d\n",
        name, clients, stylists, all / mornings, longest, late, mornings, least_late, proven);
    std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
    const auto mornings = static_cast<unsigned>(count > 1 ? std::atoi(words[1]) : 10);
    for (const int clients : {6, 8, 10, 12}) {
        for (int stylists = 1; stylists <= most_stylists; ++stylists) {
            measure("roomy", Kind::roomy, clients, stylists, mornings);
            measure("spread", Kind::spread, clients, stylists, mornings);
            measure("tight", Kind::tight, clients, stylists, mornings);
        }
    }
}
