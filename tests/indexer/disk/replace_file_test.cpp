#include <gtest/gtest.h>

#include "indexer/disk/file_system.h"
#include "tests/support/failing_disk.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

const Bytes old_bytes(100'000, std::byte{'o'});
const Bytes new_bytes(120'000, std::byte{'n'});

class ReplaceFile : public testing::Test {
  protected:
    ReplaceFile() { disk.write_new(file, old_bytes); }

    bool holds(const Bytes& bytes) { return real_file_system().read(file, any_size) == bytes; }
    std::size_t names() { return real_file_system().list(folder.path()).size(); }
    // True when replacing went through.
    bool replaced() {
        try {
            replace_file(disk, file, new_bytes);
            return true;
        } catch (const DiskError&) {
            return false;
        }
    }

    TemporaryFolder folder;
    Path file = folder / "sheet.pdf";
    FailingDisk disk;
};

TEST_F(ReplaceFile, ReplacesAndLeavesNothingElse) {
    EXPECT_TRUE(replaced());
    EXPECT_TRUE(holds(new_bytes));
    EXPECT_EQ(names(), 1U);
}

TEST_F(ReplaceFile, MakesAFileThatIsNotThere) {
    replace_file(disk, folder / "another", new_bytes);
    EXPECT_EQ(real_file_system().read(folder / "another", any_size), new_bytes);
}

TEST_F(ReplaceFile, LeavesOldOrNewWhicheverCallFails) {
    int failures = 0;
    for (disk.fail_call(1); !replaced(); disk.fail_call(++failures + 1)) {
        EXPECT_TRUE(holds(old_bytes) || holds(new_bytes)) << "at call " << failures + 1;
        EXPECT_EQ(names(), 1U) << "at call " << failures + 1;
    }
    EXPECT_GE(failures, 4) << "to write, sync, rename and sync the folder can each fail";
    EXPECT_TRUE(holds(new_bytes));
}

TEST_F(ReplaceFile, LeavesOldOrNewWheneverTheCardIsPulled) {
    int failures = 0;
    for (disk.fail_from_call(1); !replaced(); disk.fail_from_call(++failures + 1)) {
        EXPECT_TRUE(holds(old_bytes) || holds(new_bytes)) << "at call " << failures + 1;
    }
    EXPECT_TRUE(holds(new_bytes)) << "what an earlier try left must not stand in the way";
}

}  // namespace
}  // namespace quarterturn
