#include <unistd.h>

#include "indexer/backup/backup_words.h"
#include "indexer/backup/safe_to_delete.h"
#include "indexer/disk/volume.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct OwnDisk : testing::Test, BackupTest {
    ~OwnDisk() override { std::filesystem::remove_all(elsewhere); }

    bool is_the_only_disk() const {
        return on_one_volume(library.folder(), elsewhere.parent_path());
    }

    const Path elsewhere = "/var/tmp/quarterturn-backup-" + std::to_string(::getpid());
};

TEST_F(OwnDisk, IsNamedWhereABackupLiesOnIt) {
    const BackupReport report = back_up_to(drive);
    ASSERT_EQ(same_disk_lines(report).size(), 1U);
    EXPECT_TRUE(back_up_to(drive).on_same_disk) << "also when nothing is new";
    if (is_the_only_disk()) GTEST_SKIP() << "one disk alone";
    EXPECT_TRUE(same_disk_lines(back_up_to(elsewhere)).empty());
}

TEST_F(OwnDisk, IsNotEnoughForACardToBeDeleted) {
    const Path card = folder / "card";
    for (const char* name : {"one.jpg", "two.jpg"}) {
        write_text(card / name, std::string("photo of ") + name);
    }
    back_up_to(drive);
    const SafeToDelete found = safe_to_delete(library, {.sources = {card}});
    EXPECT_EQ(found.safe.size(), 2U);
    EXPECT_EQ(found.on_own_disk, 2U);
    EXPECT_FALSE(found.all_safe());
    ASSERT_EQ(own_disk_lines(found).size(), 1U);
    EXPECT_TRUE(own_disk_lines(found)[0].starts_with("2 photos are in no backup but on"));
    if (is_the_only_disk()) GTEST_SKIP() << "one disk alone";
    back_up_to(elsewhere);
    const SafeToDelete again = safe_to_delete(library, {.sources = {card}});
    EXPECT_TRUE(again.all_safe());
    EXPECT_TRUE(own_disk_lines(again).empty());
}

}  // namespace
}  // namespace quarterturn
