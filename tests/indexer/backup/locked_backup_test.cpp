// Backups of a locked library: locked as it is, and as good.

#include <gtest/gtest.h>

#include "indexer/backup/backup_place.h"
#include "indexer/backup/restore.h"
#include "indexer/backup/verify.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

constexpr auto passphrase = "seven owls below the granary";

struct LockedBackup : testing::Test, BackupTest {
    NewLock lock = new_lock(passphrase, least_guess_cost());

    LockedBackup() { add_paper_and_picture(); }
    ~LockedBackup() override { forget_keys(); }

    void lock_it() {
        { const Library closed = std::move(library); }
        lock_library(real_file_system(), folder / "library", lock, {});
        reopen();
    }

    // As add_photo, which writes past the lock.
    void add_photo_through_the_lock(const std::string& name) {
        Photo photo = example_photo(name);
        const std::string words = "photo of " + name;
        photo.file.sha256 = sha256(words);
        photo.file.bytes = std::ssize(words);
        library.disk().make_folders(library.photo_file(photo).parent_path());
        library.disk().write_new(library.photo_file(photo), bytes_in(words));
        library.photos().add(photo);
    }

    void forget_keys() {
        for (const Path& place : {folder / "library", drive, again}) key_ring::forget(place);
    }

    RestoreReport restore_again(const std::string& client = {}) {
        RestoreWishes wishes;
        wishes.from = drive;
        wishes.to = again;
        wishes.client = client;
        wishes.now = at("2026-12-01T10:00");
        return restore(real_file_system(), wishes);
    }

    // The bytes of all files of the backup and their names, one after the other.
    std::string all_of(const Path& place) const {
        std::string all;
        for (const auto& [path, text] : files_below(place)) all += path + text;
        return all;
    }

    Path again = folder / "again";
};

TEST_F(LockedBackup, ShowsNothingButWhatItIs) {
    lock_it();
    EXPECT_TRUE(back_up_to(drive).problems.empty());
    const std::string all = all_of(drive);
    for (const char* text : {"Okonjo", "photo of one.jpg", "one.jpg", "a scan of the form",
                             "torn out", "SQLite format", "May I show"}) {
        EXPECT_EQ(all.find(text), std::string::npos) << text;
    }
    EXPECT_NE(text_of(drive / "READ ME.txt").find("encrypted"), std::string::npos);
}

TEST_F(LockedBackup, MakesTheSameLibraryAgainWithThePassphrase) {
    lock_it();
    back_up_to(drive);
    const auto photos = library.photos().all();
    library = Library::create(folder / "another");
    forget_keys();
    EXPECT_THROW(restore_again(), LibraryLocked);
    const auto there = read_lock(real_file_system(), drive);
    ASSERT_TRUE(there);
    key_ring::add(drive, keys_from(*there, passphrase));
    const RestoreReport report = restore_again();
    EXPECT_TRUE(report.problems.empty());
    EXPECT_EQ(report.files, 6);
    Library restored = Library::open(again);
    EXPECT_TRUE(restored.keys());
    EXPECT_EQ(restored.photos().all(), photos);
    EXPECT_TRUE(verify(restored, {}).whole());
    EXPECT_EQ(all_of(again).find("photo of one.jpg"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(again / "restoring"));
}

TEST_F(LockedBackup, GoesOnAndHealsWhatWasDamaged) {
    lock_it();
    back_up_to(drive);
    add_photo_through_the_lock("four.jpg");
    EXPECT_EQ(back_up_to(drive).copied, 1);
    auto* locked = dynamic_cast<LockedFileSystem*>(&library.disk());
    ASSERT_NE(locked, nullptr);
    const Path file = locked->place_of(library.photo_file(photo_named("two.jpg")));
    Bytes bytes = read_bytes(file);
    bytes.back() ^= std::byte{1};
    write_bytes(file, bytes);
    const VerifyReport report = verify(library, {});
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_EQ(report.troubles[0].trouble, Trouble::changed);
    EXPECT_EQ(report.troubles[0].healed_from, drive);
    const Bytes healed = library.disk().read(library.photo_file(photo_named("two.jpg")), any_size);
    EXPECT_EQ(sha256(healed), photo_named("two.jpg").file.sha256);
}

TEST_F(LockedBackup, IsNotMixedWithOneThatCanBeRead) {
    back_up_to(drive);
    const std::string before = all_of(drive);
    lock_it();
    EXPECT_THROW(back_up_to(drive), StoreError);
    EXPECT_EQ(all_of(drive), before);
    // It can still be healed from.
    library.disk().remove(library.photo_file(photo_named("two.jpg")));
    EXPECT_EQ(verify(library, {}).troubles.at(0).healed_from, drive);
}

// Else what is written into the backup would be written into the library.
TEST_F(LockedBackup, RefusesLinksToTheLibrarysOwnFiles) {
    const auto refuses_links = [&](const std::string& name, auto link) {
        FileSystem& disk = library.disk();
        const Photo photo = photo_named(name);
        const auto* locked = dynamic_cast<const LockedFileSystem*>(&disk);
        const Path own = library.photo_file(photo);
        const Path place = locked != nullptr ? locked->place_of(own) : own;
        const Path copy = drive / place.lexically_relative(library.folder());
        std::filesystem::remove(copy);
        link(place, copy);
        EXPECT_THROW(back_up_to(drive), StoreError);
        EXPECT_EQ(sha256(disk.read(own, any_size)), photo.file.sha256);
        std::filesystem::remove(copy);
    };
    const auto hard_link = [](const Path& to, const Path& at) {
        std::filesystem::create_hard_link(to, at);
    };
    const auto symbolic_link = [](const Path& to, const Path& at) {
        std::filesystem::create_symlink(to, at);
    };
    back_up_to(drive);
    refuses_links("one.jpg", hard_link);
    refuses_links("two.jpg", symbolic_link);
    EXPECT_TRUE(back_up_to(drive).problems.empty());
    drive = folder / "another drive" / "backup";
    lock_it();
    back_up_to(drive);
    refuses_links("one.jpg", hard_link);
    refuses_links("two.jpg", symbolic_link);
}

TEST_F(LockedBackup, IsKnownBeforehandToTakeNoMore) {
    const auto takes_no_more = [&](const KeysInHand& keys) {
        return was_locked_otherwise(real_file_system(), drive, keys);
    };
    EXPECT_FALSE(takes_no_more(lock.keys)) << "there is none";
    back_up_to(drive);
    EXPECT_TRUE(takes_no_more(lock.keys));
    EXPECT_FALSE(takes_no_more(nullptr));
    write_lock(real_file_system(), drive, lock.file);
    EXPECT_FALSE(takes_no_more(nullptr)) << "it takes more without that lock.json";
    drive = folder / "another drive";
    lock_it();
    back_up_to(drive);
    EXPECT_FALSE(takes_no_more(lock.keys));
    EXPECT_TRUE(takes_no_more(nullptr));
    EXPECT_TRUE(takes_no_more(new_library_keys())) << "locked anew since";
    std::filesystem::remove(drive / lock_file_name);
    EXPECT_FALSE(takes_no_more(lock.keys)) << "it takes more with its lock.json";
}

TEST_F(LockedBackup, SaysThatItsLockIsGone) {
    lock_it();
    back_up_to(drive);
    std::filesystem::remove(drive / lock_file_name);
    const std::string before = all_of(drive);
    for (const auto& work :
         std::vector<std::function<void()>>{[&] { restore_again(); }, [&] { back_up_to(drive); }}) {
        try {
            work();
            ADD_FAILURE() << "read a backup without its lock";
        } catch (const StoreError& error) {
            EXPECT_NE(std::string(error.what()).find("its lock.json is gone"), std::string::npos)
                << error.what();
        }
    }
    EXPECT_EQ(all_of(drive), before);
}

TEST_F(LockedBackup, SaysThatAnotherLibrarysLockLiesInIt) {
    lock_it();
    back_up_to(drive);
    const NewLock other = new_lock(passphrase, least_guess_cost());
    const auto expect_said = [&](const std::function<void()>& work) {
        const std::string before = all_of(drive);
        try {
            work();
            ADD_FAILURE() << "read a backup under another lock";
        } catch (const StoreError& error) {
            const std::string words = error.what();
            EXPECT_NE(words.find("lock.json belongs to another library, and this backup does not "
                                 "open with it: put the right one back"),
                      std::string::npos)
                << words;
        }
        EXPECT_EQ(all_of(drive), before);
    };
    write_lock(real_file_system(), drive, other.file);
    key_ring::add(drive, other.keys);
    expect_said([&] { restore_again(); });
    expect_said([&] { back_up_to(drive); });
    write_lock(real_file_system(), drive, lock.file);
    key_ring::forget(drive);
    EXPECT_TRUE(back_up_to(drive).problems.empty());
}

// As where somebody copied this library's lock.json into the backup of another.
TEST_F(LockedBackup, SaysThatItsOwnLockLiesInTheBackupOfAnother) {
    lock_it();
    back_up_to(drive);
    BackupTest another;
    const NewLock lock_of_another = new_lock(passphrase, least_guess_cost());
    const Path its_place = another.library.folder();
    { const Library closed = std::move(another.library); }
    lock_library(real_file_system(), its_place, lock_of_another, {});
    another.library = Library::open(its_place);
    std::filesystem::copy_file(drive / lock_file_name, folder / "ours.json");
    std::filesystem::remove_all(drive);
    another.back_up_to(drive);
    std::filesystem::copy_file(folder / "ours.json", drive / lock_file_name,
                               std::filesystem::copy_options::overwrite_existing);
    key_ring::forget(drive);
    try {
        back_up_to(drive);
        ADD_FAILURE() << "mixed two backups";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("lock.json belongs to another library"),
                  std::string::npos)
            << error.what();
    }
    key_ring::forget(its_place);
}

TEST_F(LockedBackup, IsNotRestoredOverTheLockOfAnother) {
    lock_it();
    back_up_to(drive);
    std::filesystem::create_directories(again);
    write_lock(real_file_system(), again, new_lock(passphrase, least_guess_cost()).file);
    const auto before = files_below(again);
    EXPECT_THROW(restore_again(), StoreError);
    EXPECT_EQ(files_below(again), before);
    write_lock(real_file_system(), again, *read_lock(real_file_system(), drive));
    EXPECT_TRUE(restore_again().problems.empty()) << "its own lock is from a restore before";
}

TEST_F(LockedBackup, ALockBesideABackupThatIsNotLockedIsToldOf) {
    back_up_to(drive);
    write_lock(real_file_system(), drive, lock.file);
    try {
        back_up_to(drive);
        ADD_FAILURE() << "took a plain backup for a locked one";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("this backup is not locked: move lock.json out"),
                  std::string::npos)
            << error.what();
    }
    std::filesystem::remove(drive / lock_file_name);
    EXPECT_TRUE(back_up_to(drive).problems.empty());
}

TEST_F(LockedBackup, OpensWithTheNewPassphraseWhenItWasMadeAgain) {
    lock_it();
    back_up_to(drive);
    constexpr auto other = "nine herons over the weir";
    change_passphrase(real_file_system(), library.folder(), lock.keys, other, least_guess_cost());
    EXPECT_THROW(keys_from(*read_lock(real_file_system(), drive), other), LockError);
    back_up_to(drive);
    EXPECT_EQ(keys_from(*read_lock(real_file_system(), drive), other)->mark(), lock.keys->mark());
}

}  // namespace
}  // namespace quarterturn
