#include <unistd.h>

#include "indexer/backup/backup_words.h"
#include "indexer/disk/volume.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct OwnDisk : testing::Test, BackupTest {};

TEST_F(OwnDisk, IsNamedWhereABackupLiesOnIt) {
    const BackupReport report = back_up_to(drive);
    ASSERT_EQ(same_disk_lines(report).size(), 1U);
    EXPECT_TRUE(back_up_to(drive).on_same_disk) << "also when nothing is new";
    const Path elsewhere = "/var/tmp/quarterturn-backup-" + std::to_string(::getpid());
    if (on_one_volume(library.folder(), elsewhere.parent_path())) GTEST_SKIP() << "one disk alone";
    EXPECT_TRUE(same_disk_lines(back_up_to(elsewhere)).empty());
    std::filesystem::remove_all(elsewhere);
}

}  // namespace
}  // namespace quarterturn
