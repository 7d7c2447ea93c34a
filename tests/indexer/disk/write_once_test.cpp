#include "indexer/disk/write_once.h"

#include <gtest/gtest.h>

#include "tests/support/failing_disk.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

std::span<const std::byte> as_bytes_of(std::string_view text) {
    return std::as_bytes(std::span(text));
}

TEST(WriteOnce, WritesWhatWasNotThereAndNothingElse) {
    const TemporaryFolder folder;
    write_once(real_file_system(), folder / "a", as_bytes_of("hers"));
    EXPECT_THROW(write_once(real_file_system(), folder / "a", as_bytes_of("other")), DiskError);
    EXPECT_TRUE(std::ranges::equal(read_bytes(folder / "a"), as_bytes_of("hers")));
    EXPECT_EQ(files_in(folder.path()).size(), 1U);
}

TEST(WriteOnce, LeavesNothingWhicheverCallFails) {
    const TemporaryFolder folder;
    FailingDisk disk;
    disk.heal();
    write_once(disk, folder / "whole", as_bytes_of("hers"));
    const int calls = disk.calls();
    ASSERT_GE(calls, 6);
    for (int call = 1; call <= calls; ++call) {
        disk.fail_call(call);
        EXPECT_THROW(write_once(disk, folder / "a", as_bytes_of("hers")), DiskError) << call;
        EXPECT_EQ(files_in(folder.path()).size(), 1U) << call;
    }
}

TEST(WriteOnce, TakesUpWhatAPowerCutLeft) {
    const TemporaryFolder folder;
    FailingDisk disk;
    disk.fail_from_call(4);  // written, and then nothing more could be done
    EXPECT_THROW(write_once(disk, folder / "a", as_bytes_of("half")), DiskError);
    EXPECT_EQ(files_in(folder.path()).size(), 1U);
    write_once(real_file_system(), folder / "a", as_bytes_of("hers"));
    EXPECT_EQ(files_in(folder.path()).size(), 1U);
    EXPECT_TRUE(std::ranges::equal(read_bytes(folder / "a"), as_bytes_of("hers")));
}

}  // namespace
}  // namespace quarterturn
