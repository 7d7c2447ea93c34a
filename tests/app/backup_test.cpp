// Backup, verify, restore and what may be deleted from a card, as a person runs them.

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class BackupCommandTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"client", "add", "Ada Lindqvist"});
        said({"client", "add", "Bea Holm"});
        said({"sitting", "add", "Ada Lindqvist", "--starts", "2026-10-03T10:00", "--ends",
              "2026-10-03T13:00"});
        make_photo(card / "DCIM/bun.jpg", 1, "'-DateTimeOriginal=2026:10:03 11:00:00'");
        make_photo(card / "DCIM/other.jpg", 2, "'-DateTimeOriginal=2026:11:30 11:30:00'");
        said({"import", card});
    }

    std::filesystem::path photo_file(const std::string& name) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(library)) {
            if (entry.path().filename() == name) return entry.path();
        }
        return {};
    }

    std::string drive = folder / "drive";
};

TEST_F(BackupCommandTest, TheWholeWayFromABackupToALibraryAgain) {
    EXPECT_EQ(answer({"backups", "--on", "2026-12-01"}, 3)["backups"], json::array());
    EXPECT_EQ(answer({"safe-to-delete", card}, 3)["safe"], json::array());
    const json made = answer({"backup", drive});
    EXPECT_EQ(made["copied"], 2);
    EXPECT_EQ(made["backup"]["photos"], 2);
    EXPECT_EQ(answer({"backup", drive})["copied"], 0);
    EXPECT_EQ(answer({"backups"})["backups"].size(), 1U);
    const json deletable = answer({"safe-to-delete", card}, 3);
    EXPECT_EQ(deletable["safe"], json::array()) << "the drive of this test is no disk of its own";
    EXPECT_EQ(deletable["on_own_disk"], 2);
    EXPECT_EQ(deletable["keep"].at(0).at("lacks"), "in a backup on the library's own disk");
    EXPECT_NE(said({"safe-to-delete", card}, 3).find("make one on another drive"),
              std::string::npos);
    EXPECT_TRUE(std::filesystem::exists(card / "DCIM/bun.jpg"));

    const auto bun = photo_file("bun.jpg");
    std::filesystem::resize_file(bun, std::filesystem::file_size(bun) - 1);
    const json verified = answer({"verify"}, 3);
    EXPECT_EQ(verified["troubles"][0]["trouble"], "changed");
    EXPECT_EQ(verified["troubles"][0]["healed_from"], drive);
    std::filesystem::remove(std::string(verified["troubles"][0]["set_aside"]));
    EXPECT_EQ(answer({"verify"})["whole"], true);

    const std::string again = folder / "again";
    EXPECT_EQ(answer({"restore", drive, "--to", again})["files"], 2);
    const std::string first = library;
    library = again;
    EXPECT_EQ(photos().size(), 2U);
    EXPECT_EQ(answer({"verify", "--from-start"})["whole"], true);
    library = first;
    const std::string hers = folder / "hers";
    EXPECT_EQ(answer({"restore", drive, "--to", hers, "--client", "Ada Lindqvist"})["files"], 1);
    library = hers;
    EXPECT_EQ(answer({"client", "list"})["clients"].size(), 1U);
    EXPECT_EQ(photos().size(), 1U);
}

TEST_F(BackupCommandTest, AnErasureNamesTheBackupAndTheNextOneLosesHer) {
    said({"backup", drive});
    const json erased =
        answer({"client", "erase", "Ada Lindqvist", "--yes-erase", "Ada Lindqvist"}, 3);
    EXPECT_EQ(erased["backups"], json::array({drive}));
    EXPECT_NE(said({"client", "erasures"}).find(drive), std::string::npos);
    EXPECT_NE(said({"backups"}, 3).find("An erasure is not finished there"), std::string::npos);
    const json made = answer({"backup", drive});
    EXPECT_EQ(made["removed"], 1);
    said({"backups"});
    EXPECT_EQ(made["records_erased"], 1);
    EXPECT_EQ(said({"client", "erasures"}).find(drive), std::string::npos);
    EXPECT_EQ(output_of("grep -r -l 'Ada Lindqvist' " + shell_word(drive) + " || true"), "");
}

// A folder that may not be read would else fill the screen with one reason.
TEST_F(BackupCommandTest, SaysEachReasonOnce) {
    for (int i = 0; i < 22; ++i)
        make_photo(card / ("DCIM/p" + std::to_string(i) + ".jpg"), 10 + i, "-q");
    said({"import", card});
    for (const json& photo : photos()) std::filesystem::remove(photo_file(photo["name"]));
    const std::string told = said({"backup", drive}, 3);
    EXPECT_NE(told.find("Each of "), std::string::npos) << told;
    EXPECT_NE(told.find(" and 23 other files (qturn names them with --json) is not there: qturn"),
              std::string::npos)
        << told;
    EXPECT_EQ(answer({"backup", drive}, 3)["problems"].size(), 24U);
}

TEST_F(BackupCommandTest, NamesAPhotoThatIsGoneFromTheLibrary) {
    said({"backup", drive});
    const auto bun = photo_file("bun.jpg");
    std::filesystem::remove(bun);
    EXPECT_NE(said({"backup", drive}, 3)
                  .find(bun.string() + " is whole in this backup, and qturn verify puts"),
              std::string::npos);
    EXPECT_EQ(answer({"backup", drive}, 3)["gone"], json::array({bun}));
    said({"verify"}, 3);
    EXPECT_EQ(answer({"backup", drive})["gone"], json::array());
}

TEST_F(BackupCommandTest, APhotoThatWasMovedIsPutBackFromWhereItLies) {
    said({"backup", drive});
    const auto bun = photo_file("bun.jpg");
    std::filesystem::create_directory(library + "/hers");
    std::filesystem::rename(bun, library + "/hers/bun.jpg");
    EXPECT_NE(said({"backup", drive}, 3)
                  .find("puts it back: from where it was moved to in the "
                        "library, or else from the backup."),
              std::string::npos);
    const json trouble = answer({"verify"}, 3)["troubles"][0];
    EXPECT_EQ(trouble["moved_back"], true);
    EXPECT_EQ(trouble["healed_from"], nullptr);
    EXPECT_TRUE(std::filesystem::exists(bun));
    EXPECT_FALSE(std::filesystem::exists(library + "/hers/bun.jpg"));
}

TEST_F(BackupCommandTest, SaysWhatTheDriveLost) {
    said({"backup", drive});
    const auto there =
        std::filesystem::path(drive) / std::filesystem::relative(photo_file("bun.jpg"), library);
    std::filesystem::remove(there);
    const std::string told = said({"backup", drive}, 3);
    EXPECT_NE(told.find("Damaged or gone there since the backup before: "), std::string::npos);
    EXPECT_NE(told.find("bun.jpg. If nobody changed it, that drive may be failing"),
              std::string::npos)
        << told;
    EXPECT_TRUE(std::filesystem::exists(there));
    EXPECT_TRUE(answer({"backup", drive})["lost_there"].empty());
}

TEST_F(BackupCommandTest, RefusesWithASentence) {
    complained({"backup", library + "/inside"}, 1);
    complained({"backup", folder.path()}, 1);
    complained({"restore", card, "--to", folder / "again"}, 1);
    said({"backup", drive});
    complained({"restore", drive, "--to", library}, 1);
    complained({"restore", drive, "--to", folder / "again", "--records", "1999"}, 1);
    complained({"backups", "--forget", "7"}, 1);
    std::filesystem::rename(drive, folder / "in the drawer");
    EXPECT_NE(complained({"backup", drive}, 1).find("connect its drive"), std::string::npos);
    EXPECT_EQ(said({"backups", "--forget", "1", "--on", "2026-10-03"}, 3)
                  .find("The backup in " + drive + " is forgotten. Nothing was removed there"),
              0U);
    said({"backup", drive});
}

}  // namespace
}  // namespace quarterturn
