// The power goes while a library is locked, unlocked for good or given another passphrase, and in
// the middle of work in a locked one.

#include "indexer/intake/import.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/backup/library_to_lock.h"
#include "tests/indexer/backup/power_cut_fixture.h"
#include "tests/indexer/intake/photo_files.h"

namespace quarterturn {
namespace {

class LockedPowerCut : public PowerCut {
  protected:
    LockedPowerCut() { place(made.place); }
    ~LockedPowerCut() override { key_ring::forget(root / "library"); }

    void lock_it() { lock_library(real_file_system(), root / "library", made.lock, {}); }

    LibraryToLock made;
};

TEST_F(LockedPowerCut, WhileItIsLocked) {
    record([&](FileSystem& disk) { lock_library(disk, root / "library", made.lock, {}); });
    at_every_cut(
        [&](const Cut& cut) {
            const Path there = cut.disk / "library";
            const auto lock = read_lock(real_file_system(), there);
            if (cut.at_the_end) {
                ASSERT_TRUE(lock && lock->state == LockState::locked);
            }
            if (lock) {
                finish_locking(real_file_system(), there, made.lock.keys, {});
            } else {
                EXPECT_EQ(wrong_from_outside(there), std::vector<std::string>{});
                lock_library(real_file_system(), there, made.lock, {});
            }
            made.expect_locked(there);
        },
        23);
}

TEST_F(LockedPowerCut, WhileItIsUnlockedForGood) {
    lock_it();
    record([&](FileSystem& disk) { unlock_for_good(disk, root / "library", made.lock.keys, {}); });
    at_every_cut(
        [&](const Cut& cut) {
            const Path there = cut.disk / "library";
            if (std::filesystem::exists(there / lock_file_name)) {
                EXPECT_FALSE(cut.at_the_end);
                EXPECT_TRUE(unlock_for_good(real_file_system(), there, made.lock.keys, {})
                                .problems.empty());
            }
            made.expect_plain(there);
        },
        23);
}

TEST_F(LockedPowerCut, WhileThePassphraseIsChanged) {
    lock_it();
    constexpr int changes = 8;
    record([&](FileSystem& disk) {
        for (int i = 1; i <= changes; ++i) {
            change_passphrase(disk, root / "library", made.lock.keys,
                              i % 2 == 0 ? first_passphrase : second_passphrase,
                              least_guess_cost());
        }
    });
    at_every_cut([&](const Cut& cut) {
        const Path there = cut.disk / "library";
        expect_one_passphrase(there, made.lock);
        if (cut.at_the_end) {
            EXPECT_TRUE(keys_by(there, first_passphrase));
            made.expect_locked(there);
        }
    });
}

TEST_F(LockedPowerCut, WhilePhotosAreBroughtIn) {
    lock_it();
    const Path card = folder / "card";
    for (int i = 0; i < 3; ++i) {
        write_photo(card / ("IMG_" + std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 10:00:1" + std::to_string(i)});
    }
    const auto decoder = make_confined_decoder();
    const auto bring_in = [&](const Path& into, FileSystem& disk) {
        Library library = Library::open(into, disk);
        import_photos(library, *decoder, {.sources = {card}});
    };
    const std::size_t after = made.photos.size() + 3;
    record([&](FileSystem& disk) { bring_in(root / "library", disk); });
    at_every_cut([&](const Cut& cut) {
        const Path there = cut.disk / "library";
        expect_sound(there);
        EXPECT_EQ(readable_in(there), std::set<std::string>{});
        if (cut.at_the_end) {
            EXPECT_EQ(Library::open(there).photos().all().size(), after);
        }
        if (cut.number % 3 != 0) return;
        bring_in(there, real_file_system());
        expect_sound(there);
        Library again = Library::open(there);
        EXPECT_EQ(again.photos().all().size(), after);
        EXPECT_TRUE(files_below(again.disk(), again.incoming_folder()).empty());
    });
}

TEST_F(LockedPowerCut, WhilePhotosAreTagged) {
    lock_it();
    RepeatedTagging tagging(root / "library", log);
    record([&](FileSystem& disk) { tagging.run(disk); });
    at_every_cut([&](const Cut& cut) {
        expect_sound(cut.disk / "library");
        tagging.expect_whole_changes(cut);
        EXPECT_EQ(readable_in(cut.disk / "library"), std::set<std::string>{});
    });
}

}  // namespace
}  // namespace quarterturn
