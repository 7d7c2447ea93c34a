// bench_running_order: how much processor time twelve clients take to be planned for one to four
// stylists, and for how many of the mornings the plan was proven the best. The same mornings in
// every run.

#include <cstdio>
#include <ctime>
#include <random>

#include "indexer/rules/running_order.h"

namespace {

using namespace quarterturn;

constexpr int mornings = 20;

MorningNeeds morning(unsigned seed, int stylists) {
    std::mt19937 random(seed);
    const auto pick = [&](int least, int most) {
        return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
    };
    MorningNeeds needs;
    needs.stylists.resize(static_cast<std::size_t>(stylists));
    int work = 0;
    for (int i = 1; i <= most_in_the_chair; ++i) {
        MorningClient client;
        client.client = ClientId{i};
        client.work = {.before = 5 * pick(4, 9)};
        if (pick(1, 3) > 1) client.work = {5 * pick(3, 6), 5 * pick(2, 4), 60, 5 * pick(4, 8)};
        work += client.work.hands_on();
        needs.clients.push_back(client);
    }
    for (MorningClient& client : needs.clients) {
        client.ready_by = usual_arrival + work / stylists + 60;
    }
    needs.clients.front().last = true;
    return needs;
}

void measure(int stylists) {
    double longest = 0;
    double all = 0;
    int proven = 0;
    for (unsigned seed = 1; seed <= mornings; ++seed) {
        const MorningNeeds needs = morning(seed, stylists);
        const std::clock_t begin = std::clock();
        proven += plan_morning(needs).proven ? 1 : 0;
        const double took = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
        longest = std::max(longest, took);
        all += took;
    }
    std::printf("12 clients, %d stylists: %.3f s in the mean, %.3f s at most, %d of %d proven\n",
                stylists, all / mornings, longest, proven, mornings);
}

}  // namespace

int main() {
    for (int stylists = 1; stylists <= most_stylists; ++stylists) measure(stylists);
}
