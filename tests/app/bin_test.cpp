// The bin through the whole program: no command names what lies in it, all answer as before when it
// is taken out, and what went for good is gone from the disk.

#include <map>

#include "tests/app/noise_photo.h"
#include "tests/app/program.h"

namespace quarterturn {
namespace {

using nlohmann::json;
using Answers = std::map<std::string, std::string>;  // by command

std::string day(const std::string& when) {
    return output_of("date -d " + shell_word(when) + " +%F").substr(0, 10);
}

// Ada's trial: before and twice after, from the back. The pictures are noise, so that they are
// sharp; they are made by tools outside of the program.
class BinTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        std::filesystem::create_directories(card);
        make_noise_photo(card / "IMG_1.jpg", 1, "2026:11:07 10:12:03");
        make_noise_photo(card / "IMG_2.jpg", 2, "2026:11:07 12:02:00");
        make_noise_photo(card / "IMG_3.jpg", 3, "2026:11:07 12:02:01");
        said({"client", "add", "Ada Lindqvist"});
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        said({"look", "add", "1", "Low twisted bun", "--sitting", "1"});
        answer({"import", card});
        said({"sort"});
        said({"tag", "IMG_1.jpg", "--angle", "back", "--stage", "before"});
        said({"tag", "IMG_2.jpg", "IMG_3.jpg", "--angle", "back", "--stage", "after", "--look", "1",
              "--note", "the comb sits low"});
        said({"photo", "whose", "IMG_2.jpg", "IMG_3.jpg", "--own"});
        said({"portfolio", "select", "Spring page", "IMG_2.jpg", "IMG_3.jpg"});
    }

    // Of every command that tells of photos.
    Answers lists() {
        const std::vector<Arguments> commands{{"photos"},
                                              {"photos", "--look", "1"},
                                              {"photos", "--sitting", "1"},
                                              {"find", "comb"},
                                              {"find", "--client", "1"},
                                              {"find", "--stage", "after"},
                                              {"coverage", "1"},
                                              {"look", "show", "1"},
                                              {"sitting", "show", "1"},
                                              {"check"},
                                              {"bursts"},
                                              {"pairs", "list"},
                                              {"pairs", "count"},
                                              {"portfolio", "candidates", "--for", "own record"},
                                              {"portfolio", "selections"}};
        Answers answers;
        for (const Arguments& command : commands) {
            std::string line;
            for (const std::string& word : command) line += word + ' ';
            Arguments asked = command;
            asked.emplace_back("--json");
            answers[line] = run(asked).out;
            EXPECT_TRUE(json::accept(answers[line])) << line << answers[line];
        }
        answers["pairs list "] = without_numbers(json::parse(answers["pairs list "])).dump();
        return answers;
    }

    // A pair that is made anew gets a new number.
    static json without_numbers(json listed) {
        for (json& pair : listed["pairs"]) pair.erase("id");
        return listed;
    }

    json photo_called(const std::string& name) {
        const json told = answer({"photos"});
        for (const json& photo : told["photos"]) {
            if (photo["name"] == name) return photo;
        }
        return {};
    }

    std::size_t photos_listed() { return answer({"photos"})["photos"].size(); }
    std::size_t photos_in_bin() { return answer({"bin", "list"})["photos"].size(); }

    std::size_t files_called(const std::string& part) const {
        std::size_t count = 0;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(library)) {
            count += entry.path().filename().string().find(part) == std::string::npos ? 0 : 1;
        }
        return count;
    }

    std::string sql(const std::string& statement) const {
        return output_of("sqlite3 " + shell_word(library + "/records.sqlite") + ' ' +
                         shell_word(statement));
    }

    std::filesystem::path card = folder / "card";
};

TEST_F(BinTest, NoCommandNamesAPhotoInTheBinAndAllAnswerAsBeforeWhenItIsTakenOut) {
    const Answers before = lists();
    for (const std::string name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
        EXPECT_NE(before.at("photos ").find(name), std::string::npos);
        said({"bin", "add", name});
        for (const auto& [command, told] : lists()) {
            EXPECT_EQ(told.find(name), std::string::npos) << command << told;
        }
        said({"bin", "take-out", name});
        EXPECT_EQ(lists(), before);
    }
}

TEST_F(BinTest, UndoAndRedoMoveItOutAndIn) {
    const Answers before = lists();
    said({"bin", "add", "IMG_2.jpg", "IMG_3.jpg"});
    EXPECT_EQ(answer({"pairs", "list"})["pairs"].size(), 0U);
    EXPECT_EQ(photos_listed(), 1U);
    EXPECT_EQ(answer({"undo"})["done"], "put 2 photos into the bin");
    EXPECT_EQ(lists(), before);
    said({"redo"});
    EXPECT_EQ(photos_in_bin(), 2U);
    EXPECT_EQ(photos_listed(), 1U);
}

TEST_F(BinTest, ErasingAClientTakesHerPhotosInTheBinToo) {
    said({"bin", "add", "IMG_2.jpg"});
    EXPECT_EQ(answer({"client", "erase", "1", "--show-only"})["photos"].size(), 3U);
    answer({"client", "erase", "1", "--yes-erase", "Ada Lindqvist"});
    EXPECT_EQ(photos_in_bin(), 0U);
    EXPECT_EQ(files_called("IMG_2"), 0U);
}

TEST_F(BinTest, TheCopyOfAClientsRecordSaysWhatIsNotInIt) {
    said({"bin", "add", "IMG_2.jpg"});
    const json copy = answer({"client", "export", "1", "--to", folder / "copy"});
    ASSERT_EQ(copy["left_out"].size(), 1U) << copy;
    EXPECT_EQ(copy["left_out"].at(0).get<std::string>().find("1 photo of hers lies in the bin"),
              0U);
}

TEST_F(BinTest, APinnedPairIsLeftOutWhileOneOfItsPhotosLiesThere) {
    const std::string pair =
        std::to_string(answer({"pairs", "list"})["pairs"].at(0)["id"].get<int>());
    said({"pairs", "pin", pair});
    const json before = answer({"pairs", "list"});
    const std::string second = before["pairs"].at(0)["second"]["name"];
    said({"bin", "add", second});
    EXPECT_EQ(answer({"pairs", "list"})["pairs"].size(), 0U);
    said({"bin", "take-out", second});
    EXPECT_EQ(answer({"pairs", "list"}), before);
    said({"bin", "add", second});
    EXPECT_EQ(answer({"bin", "empty", "--yes"})["gone"], 1) << "also while its pair is noted anew";
    EXPECT_EQ(answer({"pairs", "list"})["pairs"].at(0)["second"]["note"], "removed");
}

TEST_F(BinTest, BroughtInAgainItStaysInTheBinAndTheImportSaysSo) {
    said({"bin", "add", "IMG_2.jpg"});
    for (const bool under_another_name : {false, true}) {
        if (under_another_name) {
            std::filesystem::rename(card / "IMG_2.jpg", card / "renamed.jpg");
        }
        EXPECT_EQ(answer({"import", card, "--preview"})["in_bin"], 1);
        const json again = answer({"import", card});
        EXPECT_EQ(again["imported"], 0);
        EXPECT_EQ(again["already_here"], 3);
        EXPECT_EQ(again["in_bin"], 1);
    }
    EXPECT_NE(said({"import", card}).find("1 photo of these lies in the bin"), std::string::npos);
    EXPECT_EQ(photos_listed(), 2U);
}

TEST_F(BinTest, AFileThatWasLostIsPutBackBesideItsRecordInTheBin) {
    const std::string path = photo_called("IMG_2.jpg")["path"];
    said({"bin", "add", "IMG_2.jpg"});
    std::filesystem::remove(library + '/' + path);
    EXPECT_EQ(answer({"import", card})["put_back"], 1);
    EXPECT_TRUE(std::filesystem::exists(library + '/' + path));
    EXPECT_EQ(photos_in_bin(), 1U);
}

TEST_F(BinTest, EmptiedItIsGoneFromDiskAndRecordsAndTheRestStays) {
    said({"rebuild-cache"});
    const std::string sha256 = photo_called("IMG_2.jpg")["sha256"];
    ASSERT_GE(files_called(sha256), 1U);
    said({"bin", "add", "IMG_2.jpg"});
    EXPECT_NE(complained({"bin", "empty"}, 2).find("would be gone for good"), std::string::npos);
    EXPECT_EQ(photos_in_bin(), 1U);
    EXPECT_EQ(answer({"bin", "empty", "--yes"})["gone"], 1);
    EXPECT_EQ(files_called("IMG_2") + files_called(sha256), 0U);
    EXPECT_EQ(sql(".dump").find(sha256), std::string::npos);
    EXPECT_EQ(text_of(library + "/records.sqlite").find(sha256), std::string::npos)
        << "in a free page";
    EXPECT_EQ(photos_listed(), 2U);
    EXPECT_EQ(files_called("IMG_3"), 1U);
    EXPECT_EQ(answer({"bin", "empty", "--yes"})["gone"], 0);
    EXPECT_EQ(answer({"import", card})["imported"], 1) << "it is a new photo then";
}

TEST_F(BinTest, WhatMayBeOfAPhotoThatWentIsNamedWhenItIsEmptied) {
    const std::filesystem::path other = folder / "other card";
    std::filesystem::create_directories(other);
    make_noise_photo(other / "IMG_2.jpg", 4, "2026:11:08 12:02:00");
    said({"bin", "add", "IMG_2.jpg"});
    answer({"import", other});
    const std::string changed = library + "/photos/IMG_2 (changed) (2).jpg";
    write_bytes(changed, std::as_bytes(std::span("not as it was")));
    const json emptied = answer({"bin", "empty", "--yes"}, 3);
    EXPECT_EQ(emptied["gone"], 1);
    ASSERT_EQ(emptied["left"].size(), 1U) << emptied;
    EXPECT_TRUE(emptied["left"][0].get<std::string>().starts_with(changed + ' ')) << emptied;
    EXPECT_EQ(files_called("IMG_2 (changed)"), 1U);
}

TEST_F(BinTest, WhatLiesThereFor30DaysGoesWhenTheLibraryIsNextUsed) {
    said({"bin", "add", "IMG_2.jpg"});
    EXPECT_EQ(answer({"bin", "list"})["leaving"], (json{{{"on", day("30 days")}, {"photos", 1}}}));
    const auto lies_there_since = [this](const std::string& since) {
        sql("UPDATE photo SET binned = '" + since + "' WHERE binned IS NOT NULL");
    };
    lies_there_since(day("29 days ago"));
    EXPECT_EQ(photos_in_bin(), 1U);
    EXPECT_EQ(files_called("IMG_2"), 1U);
    lies_there_since(day("30 days ago"));
    EXPECT_EQ(photos_in_bin(), 0U);
    EXPECT_EQ(files_called("IMG_2"), 0U);
}

// A seal is written by hand, as a sign-off would: what a sign-off asks for is tested elsewhere.
TEST_F(BinTest, APhotoOfASignedOffLookIsRefusedUntilItIsOpenedAgain) {
    const std::string id = std::to_string(photo_called("IMG_2.jpg")["id"].get<int>());
    sql("INSERT INTO sign_off (look, signed_at, recipe_sha256) VALUES (1, 1, '')");
    sql("INSERT INTO sealed_photo VALUES (1, 0, " + id + ", 'IMG_2.jpg', '', '')");
    const std::string refusal = complained({"bin", "add", "IMG_3.jpg", "IMG_2.jpg"}, 1);
    EXPECT_NE(refusal.find("signed-off look 'Low twisted bun'"), std::string::npos) << refusal;
    EXPECT_EQ(photos_in_bin(), 0U);
    said({"reopen", "1", "--because", "another comb"});
    said({"bin", "add", "IMG_3.jpg", "IMG_2.jpg"});
    EXPECT_EQ(photos_in_bin(), 2U);
}

TEST_F(BinTest, WhatWentOutStaysInTheLedger) {
    const json photo = photo_called("IMG_2.jpg");
    sql("INSERT INTO export (photo, photo_name, photo_sha256, use, at, file, sha256, bytes) VALUES "
        "(" +
        std::to_string(photo["id"].get<int>()) +
        ", 'IMG_2.jpg', 'a', 'website', 1, 'spring.jpg', 'b', 1)");
    const json before = answer({"ledger", "list"});
    said({"bin", "add", "IMG_2.jpg"});
    EXPECT_EQ(answer({"ledger", "list"}), before);
    said({"bin", "empty", "--yes"});
    EXPECT_EQ(answer({"ledger", "list"}), before);
}

}  // namespace
}  // namespace quarterturn
