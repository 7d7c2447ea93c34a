#include "indexer/disk/disk_error.h"

#include <gtest/gtest.h>

#include <cerrno>

namespace quarterturn {
namespace {

TEST(DiskError, AlwaysNamesTheFileAndANextStep) {
    const Path file = "/media/card/IMG_0042.jpg";
    for (const Doing doing : {Doing::reading, Doing::writing, Doing::moving, Doing::linking,
                              Doing::removing, Doing::making_folder}) {
        for (int number = 1; number < 134; ++number) {
            const std::string sentence = disk_error(number, file, doing).what();
            EXPECT_NE(sentence.find(file.string()), std::string::npos) << sentence;
            EXPECT_NE(sentence.find(": "), std::string::npos) << sentence;
            EXPECT_EQ(sentence.back(), '.') << sentence;
        }
    }
}

TEST(DiskError, KnowsAFullDiskFromOthers) {
    EXPECT_TRUE(disk_error(ENOSPC, "x", Doing::writing).disk_full());
    EXPECT_TRUE(disk_error(EDQUOT, "x", Doing::writing).disk_full());
    EXPECT_FALSE(disk_error(EIO, "x", Doing::writing).disk_full());
}

TEST(DiskError, TellsAPulledCardFromALockedOne) {
    const std::string pulled = disk_error(EIO, "/media/card/a.jpg", Doing::reading).what();
    const std::string locked = disk_error(EROFS, "/media/card/a.jpg", Doing::writing).what();
    EXPECT_NE(pulled.find("does not answer"), std::string::npos) << pulled;
    EXPECT_NE(locked.find("lock"), std::string::npos) << locked;
}

TEST(DiskError, SpeaksOfNoCardWhereSomethingIsToBeWritten) {
    const std::string nowhere = disk_error(ENOENT, "/proc/key.pdf", Doing::writing).what();
    EXPECT_EQ(nowhere.find("card"), std::string::npos) << nowhere;
    EXPECT_NE(nowhere.find("name another place"), std::string::npos) << nowhere;
}

}  // namespace
}  // namespace quarterturn
