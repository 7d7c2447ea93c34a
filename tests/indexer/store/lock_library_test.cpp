// A library is locked in place and unlocked for good, whatever fails on the way.

#include "indexer/store/lock_library.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/locked_name.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

constexpr auto passphrase = "seven owls below the granary";
const std::string her_name = "Okonjo-Lindqvist";
// Of a file and of a folder: locked, neither fits into one name.
const std::string long_name = std::string(150, 'm') + " Mira.jpg";
const std::string long_folder = std::string(230, 'f') + " Mira";
const std::string jpeg_front{"\xff\xd8\xff\xe0\0\x10JFIF", 10};  // JFIF 1.02

using Contents = std::map<std::string, std::string>;

// All of them where FAULTS is set.
bool is_tried(int call) {
    return std::getenv("FAULTS") != nullptr || call % 4 == 1;
}

std::string text_in(const Bytes& bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

Contents bytes_below(const Path& folder) {
    Contents contents;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file()) continue;
        contents[entry.path().string()] = text_in(read_bytes(entry.path()));
    }
    return contents;
}

void write_text(const Path& file, std::string_view text) {
    std::filesystem::create_directories(file.parent_path());
    write_bytes(file, std::as_bytes(std::span(text)));
}

// Her photos and texts as the program reads them.
Contents contents_of(Library& library) {
    Contents contents;
    for (const Path& file : files_below(library.disk(), library.folder())) {
        const std::string path = file.lexically_relative(library.folder()).string();
        if (path.starts_with("records.sqlite") || path == lock_file_name) continue;
        contents[path] = text_in(library.disk().read(file, any_size));
    }
    return contents;
}

// What of these stands in a byte or a name of the folder.
std::string found_in(const Path& folder, const std::vector<std::string>& texts) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        std::string all = entry.path().lexically_relative(folder).string();
        if (entry.is_regular_file()) all += text_in(read_bytes(entry.path()));
        for (const std::string& text : texts) {
            if (all.find(text) != std::string::npos) return text + " in " + entry.path().string();
        }
    }
    return {};
}

struct LibraryToLock {
    TemporaryFolder folder;
    Path library = folder / "library";
    Contents contents;

    LibraryToLock() {
        ExampleLibrary example;
        write_text(example.library.folder() / "photos/2026/Mira trial/IMG_1.jpg",
                   jpeg_front + " one");
        write_text(example.library.folder() / "photos/2026/Mira trial/IMG_2.jpg",
                   std::string(70'000, 'x'));
        write_text(example.library.folder() / "photos/2026" / long_folder / long_name,
                   jpeg_front + " long");
        write_text(example.library.folder() / "consent-form.txt", "May I show your plait?");
        write_text(example.library.folder() / "cache/ab/small.jpg", jpeg_front + " small");
        std::filesystem::create_directories(example.library.folder() / "photos/2025/empty Mira");
        contents = contents_of(example.library);
        example.library.database().handle().exec("PRAGMA wal_checkpoint(TRUNCATE)");
        std::filesystem::copy(example.library.folder(), library,
                              std::filesystem::copy_options::recursive);
    }
    ~LibraryToLock() { key_ring::forget(library); }
};

void expect_locked(const LibraryToLock& made) {
    Library library = Library::open(made.library);
    ASSERT_TRUE(library.keys());
    EXPECT_EQ(contents_of(library), made.contents);
    EXPECT_EQ(library.clients().all().size(), 1U);
    library.clients().add(client_called("Berit Lindqvist"));
    EXPECT_EQ(found_in(made.library,
                       {her_name, "Berit Lindqvist", "Mira trial", "IMG_1.jpg", "empty Mira",
                        "small.jpg", "May I show", jpeg_front, "SQLite format"}),
              "");
}

void expect_plain(const LibraryToLock& made) {
    Library library = Library::open(made.library);
    EXPECT_FALSE(library.keys());
    EXPECT_EQ(contents_of(library), made.contents);
    EXPECT_EQ(library.clients().find(ClientId{1}).value().name, "Mira Okonjo-Lindqvist");
    EXPECT_EQ(text_in(read_bytes(made.library / "consent-form.txt")), "May I show your plait?");
    for (const auto& entry : std::filesystem::recursive_directory_iterator(made.library)) {
        const std::string name = entry.path().filename().string();
        if (name == long_name || name == long_folder) continue;
        EXPECT_LT(name.size(), 26U) << entry.path();
    }
}

NewLock cheap_lock() {
    return new_lock(passphrase, least_guess_cost());
}

TEST(LockLibrary, HidesEverythingAndGivesItBack) {
    const LibraryToLock made;
    const NewLock lock = cheap_lock();
    const LockReport report = lock_library(real_file_system(), made.library, lock, {});
    EXPECT_EQ(report.files, 5);
    EXPECT_TRUE(report.problems.empty());
    expect_locked(made);
    unlock_for_good(real_file_system(), made.library, lock.keys, {});
    expect_plain(made);
    EXPECT_FALSE(std::filesystem::exists(made.library / lock_file_name));
}

TEST(LockLibrary, OpensOnlyWithItsKey) {
    const LibraryToLock made;
    lock_library(real_file_system(), made.library, cheap_lock(), {});
    key_ring::forget(made.library);
    EXPECT_THROW(Library::open(made.library), LibraryLocked);
    const auto lock = read_lock(real_file_system(), made.library);
    key_ring::add(made.library, keys_from(*lock, passphrase));
    expect_locked(made);
}

TEST(LockLibrary, SaysThatItsLockIsGone) {
    const LibraryToLock made;
    const NewLock lock = cheap_lock();
    lock_library(real_file_system(), made.library, lock, {});
    std::filesystem::rename(made.library / lock_file_name, made.folder / lock_file_name);
    const auto before = bytes_below(made.library);
    try {
        Library::open(made.library);
        FAIL() << "opened without its lock";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("its lock.json is gone"), std::string::npos)
            << error.what();
    }
    EXPECT_EQ(bytes_below(made.library), before);
    std::filesystem::rename(made.folder / lock_file_name, made.library / lock_file_name);
    key_ring::add(made.library, lock.keys);
    expect_locked(made);
}

TEST(LockLibrary, AFolderWithANameThatLooksLockedIsNone) {
    const LibraryToLock made;
    const std::string name(32, 'q');
    ASSERT_TRUE(looks_locked(name));
    std::filesystem::create_directories(made.library / "photos" / name);
    EXPECT_NO_THROW(Library::open(made.library));
}

TEST(LockLibrary, RefusesWhileSomebodyElseHasItOpen) {
    const LibraryToLock made;
    {
        Library open = Library::open(made.library);
        (void)open.clients().all();
        EXPECT_THROW(lock_library(real_file_system(), made.library, cheap_lock(), {}), StoreError);
    }
    expect_plain(made);
}

TEST(LockLibrary, RefusesPathsThatWouldNotFit) {
    const LibraryToLock made;
    Path deep = made.library / "photos";
    for (int depth = 0; depth < 10; ++depth) deep /= std::string(250, 'n');
    write_text(deep / "IMG_3.jpg", "");
    EXPECT_THROW(lock_library(real_file_system(), made.library, cheap_lock(), {}), StoreError);
    EXPECT_FALSE(std::filesystem::exists(made.library / lock_file_name));
}

TEST(LockLibrary, RefusesCopiesOfRecordsThatWouldStayReadable) {
    const LibraryToLock made;
    std::filesystem::copy_file(made.library / "records.sqlite",
                               made.library / "records.sqlite.kept-1");
    EXPECT_THROW(lock_library(real_file_system(), made.library, cheap_lock(), {}), StoreError);
    EXPECT_FALSE(read_lock(real_file_system(), made.library));
}

TEST(LockLibrary, LeavesNoCopyOfRecordsThatWasBeingMade) {
    const LibraryToLock made;
    for (const char* left : {"records.sqlite.trial", "records.sqlite.trial-wal",
                             "records.sqlite.version-3.copy.new", "records.sqlite.rewritten-wal"}) {
        write_text(made.library / left, her_name);
    }
    lock_library(real_file_system(), made.library, cheap_lock(), {});
    expect_locked(made);
}

TEST(LockLibrary, RefusesAWeakPassphraseAndASecondLock) {
    EXPECT_THROW(new_lock("short"), LockError);
    const LibraryToLock made;
    lock_library(real_file_system(), made.library, cheap_lock(), {});
    EXPECT_THROW(lock_library(real_file_system(), made.library, cheap_lock(), {}), StoreError);
    expect_locked(made);
}

TEST(LockLibrary, StopsAndGoesOn) {
    const LibraryToLock made;
    const NewLock lock = cheap_lock();
    std::stop_source stop;
    const LockWishes until_first{[&](std::int64_t, std::int64_t) { stop.request_stop(); },
                                 stop.get_token()};
    EXPECT_TRUE(lock_library(real_file_system(), made.library, lock, until_first).stopped);
    EXPECT_THROW(Library::open(made.library), LibraryLocked);
    EXPECT_EQ(finish_locking(real_file_system(), made.library, lock.keys, {}).files, 4);
    expect_locked(made);
}

TEST(LockLibrary, KeepsAWholeLibraryWhicheverCallFails) {
    bool failed = true;
    int call = 1;
    for (; failed; ++call) {
        if (!is_tried(call)) continue;
        SCOPED_TRACE("call " + std::to_string(call));
        const LibraryToLock made;
        const NewLock lock = cheap_lock();
        FailingDisk disk;
        disk.fail_call(call, call % 2 == 0 ? EIO : ENOSPC);
        try {
            lock_library(disk, made.library, lock, {});
        } catch (const std::runtime_error& error) {
            EXPECT_TRUE(std::string(error.what()).ends_with('.')) << error.what();
        }
        failed = disk.failed();
        disk.heal();
        if (!std::filesystem::exists(made.library / lock_file_name)) {
            expect_plain(made);
            continue;
        }
        finish_locking(disk, made.library, lock.keys, {});
        lock_what_is_left(disk, made.library, lock.keys, {});
        expect_locked(made);
    }
    EXPECT_GT(call, 60);
}

TEST(UnlockForGood, KeepsAWholeLibraryWhicheverCallFails) {
    bool failed = true;
    int call = 1;
    for (; failed; ++call) {
        if (!is_tried(call)) continue;
        SCOPED_TRACE("call " + std::to_string(call));
        const LibraryToLock made;
        const NewLock lock = cheap_lock();
        FailingDisk disk;
        lock_library(disk, made.library, lock, {});
        disk.fail_call(call, call % 2 == 0 ? EIO : ENOSPC);
        try {
            unlock_for_good(disk, made.library, lock.keys, {});
        } catch (const std::runtime_error& error) {
            EXPECT_TRUE(std::string(error.what()).ends_with('.')) << error.what();
        }
        failed = disk.failed();
        disk.heal();
        if (std::filesystem::exists(made.library / lock_file_name) ||
            std::filesystem::exists(made.library / left_lock_name)) {
            unlock_for_good(disk, made.library, lock.keys, {});
        }
        expect_plain(made);
    }
    EXPECT_GT(call, 60);
}

}  // namespace
}  // namespace quarterturn
