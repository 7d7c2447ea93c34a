// The lock of a library is lost, or another library's lies in its place, while changes wait in the
// log of the records, as a killed program leaves them: nothing of them goes.

#include "tests/indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

TEST_F(LostLock, TakesNoChangesWithIt) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    std::filesystem::rename(left / lock_file_name, folder / lock_file_name);
    expect_refused_untouched(left, "its lock.json is gone");
    const NewLock second = cheap();
    EXPECT_THROW(lock_library(real_file_system(), left, second, {}), StoreError);
    EXPECT_FALSE(std::filesystem::exists(left / lock_file_name));
    std::filesystem::rename(folder / lock_file_name, left / lock_file_name);
    expect_all_there(left);
}

// Its folder is another than the one that was opened, which the guard of records asks about.
TEST_F(LostLock, IsToldOfBeforeAnyDoubtOfCopiedRecords) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    const Path moved = folder / "moved";
    output_of("cp -a " + shell_word(left) + ' ' + shell_word(moved));
    std::filesystem::rename(moved / lock_file_name, folder / lock_file_name);
    expect_refused_untouched(moved, "its lock.json is gone");
    std::filesystem::rename(folder / lock_file_name, moved / lock_file_name);
    expect_all_there(moved);
}

TEST_F(LostLock, IsToldOfWhereNoPhotoIs) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    std::filesystem::remove_all(left / "photos");
    std::filesystem::remove(left / lock_file_name);
    expect_refused_untouched(left, "its lock.json is gone");
}

TEST_F(LostLock, AnotherLibrarysInItsPlaceIsToldOf) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    leave_with_changes(&lock);
    make(folder / "other", &of_other);
    key_ring::forget(left);
    std::filesystem::rename(left / lock_file_name, folder / lock_file_name);
    std::filesystem::copy_file(folder / "other" / lock_file_name, left / lock_file_name);
    expect_refused_untouched(left, "lock.json belongs to another library");
    EXPECT_THROW(unlock_for_good(real_file_system(), left, of_other.keys, {}), StoreError);
    LockFile going_on = *read_lock(real_file_system(), left);
    going_on.state = LockState::unlocking;
    write_lock(real_file_system(), left, going_on);
    EXPECT_THROW(finish_locking(real_file_system(), left, of_other.keys, {}), StoreError);
    std::filesystem::rename(folder / lock_file_name, left / lock_file_name);
    expect_all_there(left);
}

TEST_F(LostLock, AnotherLibrarysBesideOneThatIsNotLockedIsToldOf) {
    const NewLock of_other = cheap();
    leave_with_changes(nullptr);
    make(folder / "other", &of_other);
    std::filesystem::copy_file(folder / "other" / lock_file_name, left / lock_file_name);
    expect_refused_untouched(left, "this one is not locked");
    key_ring::forget(folder / "other");
    key_ring::forget(left);
    expect_refused_untouched(left, "this one is not locked");  // without its passphrase, too
    std::filesystem::remove(left / lock_file_name);
    expect_all_there(left);
}

// Half put on or taken off elsewhere, it would be used up here, or lock this library's photos.
TEST_F(LostLock, AnotherLibrarysThatIsHalfDoneBesideOneThatIsNotLockedIsToldOf) {
    const NewLock of_other = cheap();
    leave_with_changes(nullptr);
    for (const LockState state : {LockState::locking, LockState::unlocking}) {
        LockFile other = of_other.file;
        other.state = state;
        write_lock(real_file_system(), left, other);
        expect_refused_untouched(left, "this one is not locked");  // without its passphrase, too
        key_ring::add(left, of_other.keys);
        expect_refused_untouched(left, "this one is not locked");
        const std::string before = all_of(left);
        EXPECT_THROW(finish_locking(real_file_system(), left, of_other.keys, {}), StoreError);
        EXPECT_THROW(unlock_for_good(real_file_system(), left, of_other.keys, {}), StoreError);
        EXPECT_EQ(all_of(left), before);
        key_ring::forget(left);
    }
    std::filesystem::remove(left / lock_file_name);
    expect_all_there(left);
}

TEST_F(LostLock, RecordsOfOthersUnderTheRightLockAreToldOf) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    leave_with_changes(&lock);
    make(folder / "other", &of_other);
    output_of("cp " + shell_word(folder / "other/records.sqlite") + ' ' +
              shell_word(left / "records.sqlite"));
    expect_refused_untouched(left, "was put there from elsewhere");
}

TEST_F(LostLock, AFileThatIsEmptyTakesNoChangesWithIt) {
    leave_with_changes(nullptr);
    std::filesystem::resize_file(left / "records.sqlite", 0);
    expect_refused_untouched(left, "is empty, and holds no records any longer");
}

TEST_F(LostLock, AnotherLibrarysLockIsNotChanged) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    make(made, &lock);
    make(folder / "other", &of_other);
    std::filesystem::copy_file(folder / "other" / lock_file_name, made / lock_file_name,
                               std::filesystem::copy_options::overwrite_existing);
    const std::string before = all_of(made);
    const auto refused = [&](const auto& change) -> std::string {
        try {
            change();
            return "done";
        } catch (const StoreError& error) {
            return error.what();
        }
    };
    bool printed = false;
    for (const std::string& sentence :
         {refused([&] {
              change_passphrase(real_file_system(), made, of_other.keys,
                                "nine herons over the weir", least_guess_cost());
          }),
          refused([&] {
              renew_recovery_key(real_file_system(), made, of_other.keys,
                                 [&](const std::string&) { printed = true; });
          })}) {
        EXPECT_NE(sentence.find("lock.json belongs to another library"), std::string::npos)
            << sentence;
    }
    EXPECT_FALSE(printed);
    EXPECT_EQ(all_of(made), before);
}

// The power tore it while the log was carried over: the log holds it whole.
TEST_F(LostLock, AFirstPageThatIsTornIsNone) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    Bytes records = read_bytes(left / "records.sqlite");
    std::fill_n(records.begin() + 512, 1024, std::byte{7});
    write_bytes(left / "records.sqlite", records);
    EXPECT_NO_THROW(refuse_lock_that_does_not_fit(real_file_system(), left, lock.keys));
}

}  // namespace
}  // namespace quarterturn
