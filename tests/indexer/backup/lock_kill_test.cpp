// A library that is being locked, unlocked for good or given another passphrase when the program is
// killed: nothing is lost, and the job goes on. KILLS says how often.

#include <random>

#include "tests/indexer/backup/library_to_lock.h"
#include "tests/support/killed.h"

namespace quarterturn {
namespace {

using std::chrono::microseconds;

class LockKill : public testing::Test {
  protected:
    // Each time in a library as `before` has it; `goes_on` is asked what came of it.
    template <class Work, class GoesOn>
    void kill_again_and_again(const Path& before, Work work, GoesOn goes_on) {
        const auto begun = std::chrono::steady_clock::now();
        ASSERT_TRUE(ends_well(start_apart([&, there = fresh(before)] { work(there); })));
        auto took =
            std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begun);
        std::minstd_rand random{7};
        int killed = 0;
        constexpr int most = 50;
        for (int i = 0; i < kills(4) || (killed == 0 && i < most); ++i) {
            SCOPED_TRACE(i);
            const Path there = fresh(before);
            const microseconds moment{static_cast<long>(random() % took.count())};
            const bool in_time = kill_after(moment, [&] { work(there); });
            killed += in_time ? 1 : 0;
            if (!in_time) took = std::max(took / 2, microseconds{1});  // it was slower before
            goes_on(there);
            if (HasFailure()) return;
        }
        EXPECT_GT(killed, 0);
    }

    Path fresh(const Path& before) {
        Path there = folder / "library";
        key_ring::forget(there);
        std::filesystem::remove_all(there);
        std::filesystem::copy(before, there, std::filesystem::copy_options::recursive);
        return there;
    }

    void lock_it() { lock_library(real_file_system(), made.place, made.lock, {}); }

    LibraryToLock made;
    TemporaryFolder folder;
};

TEST_F(LockKill, WhileItIsLocked) {
    const auto lock_there = [&](const Path& there) {
        lock_library(real_file_system(), there, made.lock, {});
    };
    kill_again_and_again(made.place, lock_there, [&](const Path& there) {
        if (std::filesystem::exists(there / lock_file_name)) {
            EXPECT_THROW(Library::open(there), LibraryLocked);
            const KeysInHand keys = keys_by(there, first_passphrase);
            ASSERT_TRUE(keys);
            key_ring::add(there, keys);
            finish_locking(real_file_system(), there, keys, {});
        } else {
            EXPECT_EQ(wrong_from_outside(there), std::vector<std::string>{});
            lock_there(there);
        }
        made.expect_locked(there);
    });
}

TEST_F(LockKill, WhileItIsUnlockedForGood) {
    lock_it();
    const auto unlock_there = [&](const Path& there) {
        EXPECT_TRUE(
            unlock_for_good(real_file_system(), there, made.lock.keys, {}).problems.empty());
    };
    kill_again_and_again(made.place, unlock_there, [&](const Path& there) {
        if (std::filesystem::exists(there / lock_file_name)) {
            EXPECT_TRUE(keys_by(there, first_passphrase));
            unlock_there(there);
        }
        made.expect_plain(there);
        EXPECT_EQ(without_record_from_outside(there),
                  std::vector<std::string>{"photos/2026/long one.jpg"});
    });
}

TEST_F(LockKill, WhileThePassphraseIsChanged) {
    lock_it();
    const auto change_to = [&](const Path& there, const char* passphrase) {
        change_passphrase(real_file_system(), there, made.lock.keys, passphrase,
                          least_guess_cost());
    };
    const auto change_often = [&](const Path& there) {
        for (int i = 0; i < 30; ++i) {
            change_to(there, i % 2 == 0 ? second_passphrase : first_passphrase);
        }
    };
    kill_again_and_again(made.place, change_often, [&](const Path& there) {
        expect_one_passphrase(there, made.lock);
        change_to(there, second_passphrase);
        EXPECT_FALSE(keys_by(there, first_passphrase));
        key_ring::add(there, keys_by(there, second_passphrase));
        made.expect_locked(there);
    });
}

}  // namespace
}  // namespace quarterturn
