#include "indexer/disk/file_system.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>
#include <fstream>

#include "indexer/disk/reads_back.h"
#include "tests/support/child.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

constexpr std::int64_t plenty = 1 << 20;

Bytes bytes_of(std::string_view text) {
    const auto bytes = std::as_bytes(std::span(text));
    return {bytes.begin(), bytes.end()};
}

unsigned mode_of(const Path& file) {
    struct stat found {};
    ::lstat(file.c_str(), &found);
    return found.st_mode & 07777U;
}

// The error number with which `work` fails; 0 when it does not.
template <class Work>
int failure_of(Work work) {
    try {
        work();
        return 0;
    } catch (const DiskError& error) {
        return error.error_number();
    }
}

class FileSystemTest : public testing::Test {
  protected:
    Path write(const Path& name, std::string_view text) {
        disk.write_new(folder / name, bytes_of(text));
        return folder / name;
    }
    std::string text(const Path& file) {
        const Bytes bytes = disk.read(file, plenty);
        return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    }

    TemporaryFolder folder;
    FileSystem& disk = real_file_system();
};

TEST_F(FileSystemTest, WritesAFileThatOnlyTheUserCanOpen) {
    const Path file = write("one", "words");
    EXPECT_EQ(text(file), "words");
    EXPECT_TRUE(reads_back_as(disk, file, bytes_of("words")));
    for (const char* other : {"", "word", "works", "words "}) {
        EXPECT_FALSE(reads_back_as(disk, file, bytes_of(other))) << other;
    }
    EXPECT_EQ(mode_of(file), 0600U);
    EXPECT_EQ(disk.state(file).bytes, 5);
    EXPECT_TRUE(disk.state(file).regular);
}

TEST_F(FileSystemTest, KeepsNamesOfAnyBytes) {
    const Path file = write("\xff\xfe no text\n.jpg", "words");
    EXPECT_EQ(disk.list(folder.path()), std::vector{file});
    EXPECT_EQ(text(file), "words");
}

TEST_F(FileSystemTest, NeverWritesOverAFile) {
    const Path file = write("one", "first");
    EXPECT_EQ(failure_of([&] { disk.write_new(file, bytes_of("second")); }), EEXIST);
    EXPECT_EQ(text(file), "first");
}

TEST_F(FileSystemTest, NeverWritesThroughALink) {
    std::filesystem::create_symlink(folder / "elsewhere", folder / "link");
    EXPECT_EQ(failure_of([&] { disk.write_new(folder / "link", bytes_of("words")); }), EEXIST);
    EXPECT_FALSE(disk.exists(folder / "elsewhere"));
    EXPECT_TRUE(disk.exists(folder / "link")) << "the name is taken, wherever the link leads";
}

TEST_F(FileSystemTest, LeavesNothingOfAFileThatCouldNotBeWritten) {
    const Path file = folder / "large";
    const std::string answer = in_child([&]() -> std::string {
        ::signal(SIGXFSZ, SIG_IGN);
        const struct rlimit limit { 1000, 1000 };
        ::setrlimit(RLIMIT_FSIZE, &limit);
        disk.write_new(file, Bytes(5000));
        return "written";
    });
    EXPECT_NE(answer.find(file.string() + " is too large"), std::string::npos) << answer;
    EXPECT_FALSE(disk.exists(file));
}

TEST_F(FileSystemTest, SaysThatTheDiskIsFullAndLeavesNothing) {
    const auto answer = on_small_disk(folder.path(), 65536, [&]() -> std::string {
        try {
            disk.write_new(folder / "large", Bytes(1'000'000));
        } catch (const DiskError& error) {
            const bool clean = disk.list(folder.path()).empty();
            return std::string(error.disk_full() && clean ? "full: " : "wrong: ") + error.what();
        }
        return "written";
    });
    if (!answer) GTEST_SKIP() << "This system does not let a test have a small disk.";
    EXPECT_EQ(*answer, "full: There is no room left on the disk that holds " +
                           (folder / "large").string() +
                           ": free some and start again; nothing was lost.");
}

TEST_F(FileSystemTest, SaysWhoMayNotRead) {
    const Path file = write("private", "words");
    std::filesystem::permissions(file, std::filesystem::perms::none);
    const std::string answer = as_stranger([&] { return text(file); });
    EXPECT_NE(answer.find(file.string() + " may not be read"), std::string::npos) << answer;
}

TEST_F(FileSystemTest, RefusesToReadMoreThanAskedFor) {
    const Path file = write("one", "12345");
    EXPECT_EQ(failure_of([&] { disk.read(file, 4); }), EFBIG);
    EXPECT_EQ(disk.read(file, 5).size(), 5U);
}

TEST_F(FileSystemTest, ReadsNoPipesDevicesOrFolders) {
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    EXPECT_EQ(failure_of([&] { disk.read(folder / "pipe", plenty); }), EINVAL);
    EXPECT_EQ(failure_of([&] { disk.read("/dev/zero", plenty); }), EINVAL);
    EXPECT_EQ(failure_of([&] { disk.read(folder.path(), plenty); }), EISDIR);
    EXPECT_FALSE(disk.state(folder / "pipe").regular);
}

TEST_F(FileSystemTest, NoticesAFileThatIsLongerThanItSaid) {
    // Linux says that files in /proc are empty, however much they answer.
    EXPECT_EQ(failure_of([&] { disk.read("/proc/self/status", plenty); }), EAGAIN);
}

TEST_F(FileSystemTest, SaysWhatIsNotThere) {
    EXPECT_EQ(failure_of([&] { disk.read(folder / "none", plenty); }), ENOENT);
    EXPECT_EQ(failure_of([&] { disk.state(folder / "none"); }), ENOENT);
    EXPECT_EQ(failure_of([&] { disk.list(folder / "none"); }), ENOENT);
    EXPECT_EQ(failure_of([&] { disk.remove(folder / "none"); }), ENOENT);
    EXPECT_EQ(failure_of([&] { disk.sync_file(folder / "none"); }), ENOENT);
    EXPECT_FALSE(disk.exists(folder / "none"));
    EXPECT_FALSE(disk.exists(write("file", "") / "below a file"));
}

TEST_F(FileSystemTest, RenamesOnlyToANameThatIsFree) {
    const Path one = write("one", "first");
    const Path two = write("two", "second");
    EXPECT_EQ(failure_of([&] { disk.rename_new(one, two); }), EEXIST);
    EXPECT_EQ(text(one), "first");
    EXPECT_EQ(text(two), "second");
    disk.rename_new(one, folder / "three");
    EXPECT_EQ(text(folder / "three"), "first");
    EXPECT_FALSE(disk.exists(one));
}

TEST_F(FileSystemTest, RenamesOverWhatIsThereWhenAsked) {
    disk.rename_over(write("one", "first"), write("two", "second"));
    EXPECT_EQ(text(folder / "two"), "first");
    EXPECT_EQ(disk.list(folder.path()).size(), 1U);
}

TEST_F(FileSystemTest, NamesTheFileThatAMoveFailedFor) {
    const auto named = [&](const Path& from, const Path& to) {
        try {
            disk.rename_new(from, to);
            return Path("nothing");
        } catch (const DiskError& error) {
            return error.file();
        }
    };
    const Path one = write("one", "first");
    EXPECT_EQ(named(folder / "none", folder / "two"), folder / "none");
    EXPECT_EQ(named(one, folder / "no folder" / "two"), folder / "no folder" / "two");
}

TEST_F(FileSystemTest, GivesASecondNameOnlyWhenItIsFree) {
    const Path one = write("one", "first");
    disk.link_new(one, folder / "two");
    disk.remove(one);
    EXPECT_EQ(text(folder / "two"), "first");
    EXPECT_EQ(failure_of([&] { disk.link_new(folder / "two", folder / "two"); }), EEXIST);
}

TEST_F(FileSystemTest, MakesFoldersForTheUserAlone) {
    disk.make_folders(folder / "a" / "b" / "c");
    disk.make_folders(folder / "a" / "b" / "c");
    EXPECT_EQ(mode_of(folder / "a"), 0700U);
    EXPECT_EQ(mode_of(folder / "a" / "b" / "c"), 0700U);
    EXPECT_EQ(failure_of([&] { disk.make_folders(write("file", "") / "below"); }), EEXIST);
    EXPECT_EQ(failure_of([&] { disk.make_folders(folder / "file"); }), EEXIST);
}

TEST_F(FileSystemTest, RemovesOnlyEmptyFolders) {
    disk.make_folders(folder / "a" / "b");
    EXPECT_EQ(failure_of([&] { disk.remove_empty_folder(folder / "a"); }), ENOTEMPTY);
    disk.remove_empty_folder(folder / "a" / "b");
    disk.remove_empty_folder(folder / "a");
    EXPECT_TRUE(disk.list(folder.path()).empty());
}

TEST_F(FileSystemTest, ListsByName) {
    for (const char* name : {"c", "a", "B", "\xe4\xb8\xad"}) write(name, "");
    EXPECT_EQ(disk.list(folder.path()), (std::vector<Path>{folder / "B", folder / "a", folder / "c",
                                                           folder / "\xe4\xb8\xad"}));
}

TEST_F(FileSystemTest, SyncsFilesAndFoldersAndNotThroughLinks) {
    const Path file = write("one", "first");
    disk.sync_file(file);
    disk.sync_folder(folder.path());
    std::filesystem::create_symlink(file, folder / "link");
    EXPECT_EQ(failure_of([&] { disk.sync_file(folder / "link"); }), ELOOP);
    EXPECT_EQ(failure_of([&] { disk.sync_folder(file); }), ENOTDIR);
}

TEST_F(FileSystemTest, SaysThatANameIsTooLong) {
    const std::string name(300, 'n');
    try {
        write(name, "");
        FAIL() << "no name is that long";
    } catch (const DiskError& error) {
        EXPECT_NE(std::string(error.what()).find("too long"), std::string::npos) << error.what();
    }
}

}  // namespace
}  // namespace quarterturn
