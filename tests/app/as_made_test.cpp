#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// Ada is ready at 12:30 after an hour in the chair; photos were taken at 8:00 and when she was
// done.
class AsMadeCommands : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"client", "add", "Ada Lindqvist"});
        said({"wedding", "add", "Boathouse", "--date", "2026-11-21", "--ready-by", "12:30",
              "--party", "1=bride"});
        said({"look", "add", "1", "Low bun", "--wedding", "Boathouse"});
        said({"running-order", "Boathouse", "--minutes", "Ada Lindqvist=60"});
        make_photo(card / "DCIM" / "A.JPG", 1, "-DateTimeOriginal='2026:11:21 08:00:00'");
        make_photo(card / "DCIM" / "B.JPG", 2, "-DateTimeOriginal='2026:11:21 12:31:00'");
        make_photo(card / "DCIM" / "C.JPG", 3, "-DateTimeOriginal='2026:11:21 12:31:20'");
        said({"import", card.string()});
    }
};

TEST_F(AsMadeCommands, ProposeWhosePhotosOfTheDayAreAndPlaceThemWhenConfirmed) {
    const json proposed = answer({"day-photos", "Boathouse"}, 3);
    ASSERT_EQ(proposed["photos"].size(), 3);
    EXPECT_EQ(proposed["photos"][0]["look"], nullptr) << "she had not sat down at eight";
    EXPECT_EQ(proposed["photos"][1]["look"], "Low bun");
    EXPECT_EQ(proposed["photos"][1]["angle"], "left");
    EXPECT_EQ(proposed["photos"][2]["angle"], "front");
    const json placed = answer({"day-photos", "Boathouse", "--give", "C.JPG=Low bun,back",
                                "--leave", "A.JPG", "--confirm"});
    EXPECT_EQ(placed["placed"], 2);
    const json made = answer({"as-made", "Boathouse"});
    ASSERT_EQ(made["looks"].size(), 1);
    const json pairs = made["looks"][0]["pairs"];
    ASSERT_EQ(pairs.size(), 4);
    EXPECT_EQ(pairs[0]["made"]["name"], "B.JPG");
    EXPECT_EQ(pairs[3]["made"]["name"], "C.JPG");
    EXPECT_EQ(pairs[0]["agreed"], nullptr);
    EXPECT_EQ(pairs[0]["alignment"], nullptr);
    said({"undo"});
    EXPECT_EQ(answer({"day-photos", "Boathouse"}, 3)["photos"].size(), 3);
}

TEST_F(AsMadeCommands, SheetIsWritten) {
    const std::filesystem::path file = folder / "made.pdf";
    said({"day-photos", "Boathouse", "--leave", "A.JPG", "--confirm"});
    EXPECT_EQ(answer({"as-made", "Boathouse", "--out", file.string()})["file"], file.string());
    const std::string text = output_of("pdftotext -layout " + shell_word(file) + " -");
    EXPECT_NE(text.find("Ada Lindqvist"), std::string::npos) << text;
    EXPECT_NE(text.find("No photo from before the day"), std::string::npos) << text;
    complained({"as-made", "Boathouse", "--out", file.string()}, 2);
    complained({"as-made", "Boathouse", "--out", (folder / "made.doc").string()}, 2);
}

TEST_F(AsMadeCommands, NoSheetIsWrittenOfNothing) {
    const std::filesystem::path file = folder / "made.pdf";
    std::ofstream(file) << "hers";
    const std::string told =
        complained({"as-made", "Boathouse", "--out", file.string(), "--replace"}, 1);
    EXPECT_NE(told.find("There are no after photos of the looks of Boathouse yet"),
              std::string::npos)
        << told;
    EXPECT_TRUE(text_of(file) == "hers");
}

TEST_F(AsMadeCommands, HeadPointsAreUndoneLikeWhatElseSheSays) {
    said({"day-photos", "Boathouse", "--leave", "A.JPG", "--confirm"});  // can be undone
    const auto photo = [this] { return answer({"head-points", "B.JPG"}); };
    said({"head-points", "B.JPG", "--top", "48,12.5", "--bottom", "50,61"});
    const json points = photo()["points"];
    const std::string second =
        said({"head-points", "B.JPG", "--top", "40,10", "--bottom", "41,60"});
    EXPECT_NE(second.find("To take it back: qturn undo"), std::string::npos) << second;
    EXPECT_EQ(said({"head-points", "B.JPG"}).find("To take it back"), std::string::npos)
        << "nothing was changed";
    const std::string undone = said({"undo"});
    EXPECT_NE(undone.find("Undone: changed where the head stands in B.JPG"), std::string::npos)
        << undone;
    EXPECT_EQ(photo()["points"], points);
    said({"undo"});
    EXPECT_TRUE(photo()["points"].is_null());
    EXPECT_NE(said({"undo"}).find("Undone: placed "), std::string::npos);
}

TEST_F(AsMadeCommands, HeadPointsAreKeptAndLeftToTheProgramAgain) {
    const json set = answer({"head-points", "B.JPG", "--top", "48,12.5", "--bottom", "50,61"});
    EXPECT_EQ(set["points"]["top"], (json{{"x", 0.48}, {"y", 0.125}}));
    EXPECT_EQ(answer({"head-points", "B.JPG"})["points"], set["points"]);
    EXPECT_EQ(answer({"head-points", "B.JPG", "--find"})["points"], nullptr);
    complained({"head-points", "B.JPG", "--top", "48,12.5"}, 2);
    complained({"head-points", "B.JPG", "--top", "48", "--bottom", "50,61"}, 2);
    EXPECT_NE(complained({"head-points", "B.JPG", "--top", "50,61", "--bottom", "48,12.5"}, 2)
                  .find("the two points are the wrong way round"),
              std::string::npos);
    complained({"head-points", "B.JPG", "--top", "48,120", "--bottom", "50,61"}, 2);
    complained({"day-photos", "Boathouse", "--give", "B.JPG"}, 2);
}

}  // namespace
}  // namespace quarterturn
