#include "indexer/backup/backup_words.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct OwnDisk : testing::Test, DriveOnAnotherDisk {};

TEST_F(OwnDisk, IsNamedWhereABackupLiesOnIt) {
    const BackupReport report = back_up_to(folder / "beside");
    ASSERT_EQ(same_disk_lines(report).size(), 1U);
    EXPECT_TRUE(back_up_to(folder / "beside").on_same_disk) << "also when nothing is new";
    EXPECT_TRUE(same_disk_lines(back_up_to(drive)).empty());
}

}  // namespace
}  // namespace quarterturn
