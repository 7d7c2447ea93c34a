// Files that arrive while they are watched for.

#include "indexer/intake/arriving.h"

#include "indexer/intake/cards.h"
#include "tests/indexer/intake/import_fixture.h"

namespace quarterturn {
namespace {

struct ArrivingTest : ImportTest {
    ArrivingTest() { std::filesystem::create_directories(card); }

    std::vector<Path> look() { return arriving.look(library); }

    ArrivingFiles arriving{{card}};
};

TEST_F(ArrivingTest, AFileIsFinishedWhenItIsUnchangedAtTwoLooks) {
    write_file(card / "a.jpg", "half of");
    EXPECT_TRUE(look().empty());
    EXPECT_TRUE(arriving.unfinished());
    write_file(card / "a.jpg", "half of it and the other half");
    EXPECT_TRUE(look().empty());
    EXPECT_EQ(look(), std::vector<Path>{card / "a.jpg"});
    EXPECT_FALSE(arriving.unfinished());
}

TEST_F(ArrivingTest, IsAnsweredUntilItIsSettledAndAgainWhenWrittenAnew) {
    write_file(card / "a.jpg", "whole");
    look();
    EXPECT_EQ(look().size(), 1U);
    EXPECT_EQ(look().size(), 1U);
    arriving.settle({card / "a.jpg"});
    EXPECT_TRUE(look().empty());
    write_file(card / "a.jpg", "whole, and more");
    EXPECT_TRUE(look().empty());
    EXPECT_EQ(look().size(), 1U);
}

TEST_F(ArrivingTest, FindsFilesInFoldersThatArriveToo) {
    look();
    write_file(card / "DCIM" / "101" / "b.jpg", "whole");
    look();
    EXPECT_EQ(look(), std::vector<Path>{card / "DCIM" / "101" / "b.jpg"});
}

TEST_F(ArrivingTest, WaitsForAFolderThatIsNotThereYet) {
    std::filesystem::remove_all(card);
    EXPECT_TRUE(look().empty());
    write_file(card / "a.jpg", "whole");
    look();
    EXPECT_EQ(look().size(), 1U);
}

// JEITA CP-3461 (DCF): photos of a camera lie in a folder DCIM at the top of its card.
TEST(CameraCards, AreThoseWithADcimFolder) {
    const TemporaryFolder folder;
    write_file(folder / "card" / "DCIM" / "100" / "a.jpg", "a");
    write_file(folder / "phone" / "dcim" / "a.jpg", "a");
    write_file(folder / "stick" / "Documents" / "a.txt", "a");
    write_file(folder / "file" / "DCIM", "no folder");
    const std::vector<Path> all{folder / "card", folder / "phone", folder / "stick",
                                folder / "file", folder / "gone"};
    EXPECT_EQ(camera_cards(real_file_system(), all),
              (std::vector<Path>{folder / "card", folder / "phone"}));
}

}  // namespace
}  // namespace quarterturn
