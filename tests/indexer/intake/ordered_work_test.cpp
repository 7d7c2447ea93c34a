#include "indexer/intake/ordered_work.h"

#include <gtest/gtest.h>

#include <atomic>

#include "indexer/intake/byte_budget.h"

namespace quarterturn {
namespace {

TEST(OrderedWork, GivesEachResultOnceAndInOrder) {
    OrderedWork<std::size_t> work{500, 4, [](std::size_t i) { return i * i; }, {}};
    for (std::size_t i = 0; i < 500; ++i) EXPECT_EQ(work.next(), i * i);
    EXPECT_EQ(work.next(), std::nullopt);
    EXPECT_EQ(work.next(), std::nullopt);
}

TEST(OrderedWork, HasNothingToGiveWhenThereIsNothingToDo) {
    OrderedWork<int> work{0, 2, [](std::size_t) { return 1; }, {}};
    EXPECT_EQ(work.next(), std::nullopt);
}

TEST(OrderedWork, ThrowsWhatTheWorkThrewAndGoesOn) {
    OrderedWork<int> work{3,
                          2,
                          [](std::size_t i) {
                              if (i == 1) throw std::runtime_error("one");
                              return static_cast<int>(i);
                          },
                          {}};
    EXPECT_EQ(work.next(), 0);
    EXPECT_THROW(work.next(), std::runtime_error);
    EXPECT_EQ(work.next(), 2);
}

TEST(OrderedWork, RunsNoFurtherAheadThanItSays) {
    std::atomic<std::size_t> begun = 0;
    OrderedWork<int> work{1000,
                          2,
                          [&](std::size_t) {
                              ++begun;
                              return 0;
                          },
                          {}};
    for (std::size_t given = 1; given <= 1000; ++given) {
        work.next();
        EXPECT_LE(begun, given + 16);
    }
}

TEST(OrderedWork, GivesAllThatWasBegunWhenStopped) {
    std::stop_source stop;
    std::atomic<int> begun = 0;
    OrderedWork<int> work{1000, 3,
                          [&](std::size_t i) {
                              ++begun;
                              if (i == 10) stop.request_stop();
                              return static_cast<int>(i);
                          },
                          stop.get_token()};
    int given = 0;
    while (work.next()) ++given;
    EXPECT_EQ(given, begun);
    EXPECT_GE(given, 11);
    EXPECT_LT(given, 1000);
}

TEST(ByteBudget, HoldsTheSumBelowTheLimitAndLetsALargeOneInAlone) {
    ByteBudget budget{100};
    std::atomic<int> held = 0;
    std::atomic<int> most = 0;
    const auto use = [&](int bytes) {
        const auto hold = budget.hold(bytes);
        most = std::max(most.load(), held += bytes);
        std::this_thread::yield();
        held -= bytes;
    };
    {
        std::vector<std::jthread> threads;
        for (int i = 0; i < 4; ++i) {
            threads.emplace_back([&] {
                for (int n = 0; n < 200; ++n) use(40);
            });
        }
    }
    EXPECT_LE(most, 100);
    use(500);
    EXPECT_EQ(most, 500);
}

}  // namespace
}  // namespace quarterturn
