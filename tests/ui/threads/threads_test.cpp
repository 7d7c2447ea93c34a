#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTest>
#include <numeric>
#include <thread>
#include <vector>

#include "ui/threads/helper_thread.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {
namespace {

TEST(Mailbox, DoesInItsOwnThreadWhatOthersPostEachInItsOrder) {
    Mailbox mailbox;
    const auto here = std::this_thread::get_id();
    std::vector<int> done[2];
    std::vector<std::jthread> others;
    for (int who = 0; who < 2; ++who) {
        others.emplace_back([&, who] {
            for (int i = 0; i < 500; ++i) {
                mailbox.post([&, who, i] {
                    EXPECT_EQ(std::this_thread::get_id(), here);
                    done[who].push_back(i);
                });
            }
        });
    }
    std::vector<int> all(500);
    std::iota(all.begin(), all.end(), 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return done[0].size() + done[1].size() == 1000; }));
    EXPECT_EQ(done[0], all);
    EXPECT_EQ(done[1], all);
}

TEST(Mailbox, TakesWhatWasPostedFromWithinIt) {
    Mailbox mailbox;
    bool done = false;
    mailbox.post([&] { mailbox.post([&] { done = true; }); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return done; }));
}

TEST(Mailbox, LeavesUndoneWhatWaitsWhenItGoes) {
    bool done = false;
    { Mailbox().post([&] { done = true; }); }
    QCoreApplication::processEvents();
    EXPECT_FALSE(done);
}

TEST(HelperThread, DoesOneAfterTheOtherOnAThreadOfItsOwn) {
    Mailbox mailbox;
    std::vector<int> done;
    HelperThread helper;
    for (int i = 0; i < 100; ++i) {
        helper.give([&, i, here = std::this_thread::get_id()] {
            EXPECT_NE(std::this_thread::get_id(), here);
            mailbox.post([&, i] { done.push_back(i); });
        });
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return done.size() == 100; }));
    EXPECT_TRUE(std::ranges::is_sorted(done));
}

TEST(HelperThread, EndsAfterWhatItIsAt) {
    std::atomic<int> begun = 0;
    {
        HelperThread helper;
        for (int i = 0; i < 1000; ++i) {
            helper.give([&] {
                ++begun;
                std::this_thread::sleep_for(std::chrono::milliseconds{20});
            });
        }
        while (begun == 0) std::this_thread::yield();
    }
    EXPECT_LT(begun, 1000);
}

}  // namespace
}  // namespace quarterturn
