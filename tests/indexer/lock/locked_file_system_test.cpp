// A locked folder is the same to the program as a plain one: both are given the same calls.

#include "indexer/lock/locked_file_system.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cerrno>

#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

std::span<const std::byte> bytes_in(std::string_view text) {
    return std::as_bytes(std::span(text));
}

std::string text_in(const Bytes& bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

struct LockedFolder {
    TemporaryFolder folder;
    LockedFileSystem disk{real_file_system(), folder.path(), new_library_keys()};
    Path photo = folder / "photos/2026/2026-11-07 Mira Okonjo trial/IMG_1.jpg";

    LockedFolder() {
        disk.make_folders(photo.parent_path());
        disk.write_new(photo, bytes_in("a low twisted bun"));
    }
};

TEST(LockedFileSystem, ShowsNeitherNamesNorContents) {
    LockedFolder made;
    EXPECT_EQ(text_in(made.disk.read(made.photo, any_size)), "a low twisted bun");
    for (const Path& file : files_below(real_file_system(), made.folder.path())) {
        const std::string path = file.lexically_relative(made.folder.path()).string();
        EXPECT_TRUE(path.starts_with("photos/")) << path;
        EXPECT_EQ(path.find("Mira"), std::string::npos) << path;
        EXPECT_EQ(path.find("2026"), std::string::npos) << path;
        EXPECT_EQ(text_in(real_file_system().read(file, any_size)).find("bun"), std::string::npos);
    }
}

TEST(LockedFileSystem, LeavesOtherFoldersAsTheyAre) {
    LockedFolder made;
    const TemporaryFolder elsewhere;
    made.disk.write_new(elsewhere / "out.pdf", bytes_in("for a client"));
    EXPECT_EQ(text_in(read_bytes(elsewhere / "out.pdf")), "for a client");
    EXPECT_EQ(made.disk.list(elsewhere.path()), std::vector{elsewhere / "out.pdf"});
}

TEST(LockedFileSystem, LeavesRecordsToTheirOwnLock) {
    EXPECT_TRUE(stays_as_it_is("lock.json"));
    EXPECT_TRUE(stays_as_it_is("records.sqlite-wal"));
    EXPECT_TRUE(stays_as_it_is("records/records-20261107T101203Z.sqlite"));
    EXPECT_FALSE(stays_as_it_is("consent-form.txt"));
    EXPECT_FALSE(stays_as_it_is("photos/lock.json"));
    EXPECT_FALSE(stays_as_it_is("photos/holiday.sqlite.jpg"));
    EXPECT_FALSE(stays_as_it_is("photos/2026/records.sqlite"));
}

TEST(LockedFileSystem, TellsOfDamage) {
    LockedFolder made;
    Bytes bytes = read_bytes(made.disk.place_of(made.photo));
    bytes.back() ^= std::byte{1};
    write_bytes(made.disk.place_of(made.photo), bytes);
    try {
        made.disk.read(made.photo, any_size);
        FAIL() << "a changed byte was not noticed";
    } catch (const DiskError& error) {
        EXPECT_EQ(error.error_number(), EBADMSG);
        EXPECT_TRUE(std::string(error.what()).starts_with(made.photo.string()));
    }
    write_bytes(made.disk.place_of(made.photo), std::span(bytes).first(20));
    EXPECT_EQ(made.disk.state(made.photo).bytes, -1);
}

TEST(LockedFileSystem, RefusesWhatItsNamesCannotDo) {
    LockedFolder made;
    const Path folder = made.photo.parent_path();
    EXPECT_THROW(made.disk.rename_new(folder, made.folder / "photos/other"), DiskError);
    EXPECT_THROW(made.disk.rename_new(made.photo, made.folder / "records.sqlite"), DiskError);
    EXPECT_TRUE(made.disk.exists(made.photo));
}

TEST(LockedFileSystem, LeavesNothingOfALongNameBehind) {
    LockedFolder made;
    const Path folder = made.photo.parent_path();
    const Path file = folder / std::string(200, 'n');
    made.disk.write_new(file, bytes_in("bun"));
    EXPECT_EQ(made.disk.list(folder), (std::vector{made.photo, file}));
    const Path moved = folder / std::string(201, 'n');
    made.disk.rename_new(file, moved);
    EXPECT_EQ(text_in(made.disk.read(moved, any_size)), "bun");
    made.disk.remove(moved);
    EXPECT_EQ(real_file_system().list(made.disk.place_of(folder)),
              std::vector{made.disk.place_of(made.photo)});
}

TEST(LockedFileSystem, WhatAnInterruptionLeftOfALongNameIsNoFile) {
    LockedFolder made;
    const Path folder = made.photo.parent_path();
    const Path front = made.disk.place_of(folder / std::string(200, 'n')).parent_path();
    real_file_system().make_folders(front);
    EXPECT_EQ(made.disk.list(folder), std::vector{made.photo});
    made.disk.remove(made.photo);
    made.disk.remove_empty_folder(folder);
    EXPECT_FALSE(made.disk.exists(folder));
}

// What calls on a file system answer, in a text; an error is its number and the file it names.
class Caller {
  public:
    Caller(FileSystem& disk, Path root) : disk_(disk), root_(std::move(root)) {}

    std::string call(int what, const std::string& one, const std::string& other,
                     const std::string& bytes) try {
        return answer(what, root_ / one, root_ / other, bytes);
    } catch (const DiskError& error) {
        // Which of the two says that nothing is there differs where a long name has a folder.
        const bool nothing = error.error_number() == ENOTDIR;
        return std::to_string(nothing ? ENOENT : error.error_number()) + ' ' +
               error.file().lexically_relative(root_).string();
    }

    static constexpr int calls = 14;

  private:
    std::string answer(int what, const Path& one, const Path& other, const std::string& bytes) {
        switch (what) {
            case 0: {
                const FileState state = disk_.state(one);
                return state.regular ? std::to_string(state.bytes) : "a folder";
            }
            case 1:
                return std::to_string(disk_.exists(one)) + std::to_string(disk_.is_folder(one));
            case 2:
                return text_in(disk_.read(one, static_cast<std::int64_t>(bytes.size())));
            case 3:
                return text_in(disk_.read_front(one, static_cast<std::int64_t>(bytes.size())));
            case 4:
            case 5: {
                std::string all;
                const auto take = [&](std::span<const std::byte> given) {
                    all.append(reinterpret_cast<const char*>(given.data()), given.size());
                };
                what == 4 ? disk_.read_through(one, take) : disk_.read_back(one, take);
                return all;
            }
            case 6:
                disk_.rename_new(one, other);
                return "moved";
            case 7:
                disk_.rename_over(one, other);
                return "moved over";
            case 8:
                disk_.link_new(one, other);
                return "linked";
            case 9:
                disk_.remove(one);
                return "removed";
            case 10:
                disk_.remove_empty_folder(one);
                return "folder removed";
            case 11:
                disk_.make_folders(one);
                return "made";
            case 12: {
                std::string names;
                for (const Path& entry : disk_.list(one)) {
                    names += entry.lexically_relative(root_).string() + '\n';
                }
                return names;
            }
            default:
                disk_.write_new(one, bytes_in(bytes));
                disk_.sync_file(one);
                disk_.sync_folder(one.parent_path());
                return "written";
        }
    }

    FileSystem& disk_;
    Path root_;
};

std::string any_path() {
    static const std::vector<std::string> names{
        "photos", "a", "Ähre", "IMG 1.jpg", "b.txt", std::string(144, 'l'), std::string(250, 'm')};
    std::string path = *rc::gen::elementOf(std::vector<std::string>{"photos", "cache"});
    for (int depth = *rc::gen::inRange(0, 3); depth > 0; --depth) {
        path += '/' + *rc::gen::elementOf(names);
    }
    return path;
}

RC_GTEST_PROP(LockedFileSystem, BehavesAsThePlainOne, ()) {
    const TemporaryFolder plain_folder;
    const TemporaryFolder locked_folder;
    LockedFileSystem locked(real_file_system(), locked_folder.path(), new_library_keys());
    Caller plain_caller(real_file_system(), plain_folder.path());
    Caller locked_caller(locked, locked_folder.path());
    for (int step = 0; step < 60; ++step) {
        // Every second call writes a file or makes a folder, so that there is something to meet.
        const int what = *rc::gen::inRange(0, 2) == 0 ? *rc::gen::elementOf(std::vector{11, 13, 13})
                                                      : *rc::gen::inRange(0, Caller::calls);
        const std::string one = any_path();
        const std::string other = any_path();
        const std::string bytes(*rc::gen::elementOf(std::vector<std::size_t>{0, 3, 70'000}), 'x');
        const bool moves_folder =
            what >= 6 && what <= 8 && real_file_system().is_folder(plain_folder / one);
        if (moves_folder) continue;
        RC_LOG() << what << ' ' << one << ' ' << other << '\n';
        RC_ASSERT(locked_caller.call(what, one, other, bytes) ==
                  plain_caller.call(what, one, other, bytes));
    }
}

}  // namespace
}  // namespace quarterturn
