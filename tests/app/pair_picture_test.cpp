// A pair as one picture that leaves the library.

#include "indexer/portfolio/inspiration.h"
#include "tests/app/pairs_fixture.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// A pair that may go to the website; one photo is a photographer's.
class PairGoesOutTest : public PairsTest {
  protected:
    void SetUp() override {
        PairsTest::SetUp();
        said({"settings", "business name", "Pins and Paper"});
        said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
              "signed form"});
        said({"photo", "whose", "IMG_1.jpg", "--own"});
        said({"photo", "whose", "IMG_2.jpg", "IMG_3.jpg", "--photographer", "Wren Aldous",
              "--licensed", "website", "--credit", "Photo: Wren Aldous"});
        for (const char* photo : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
            said({"head-points", photo, "--top", "50,20", "--bottom", "50,60"});
        }
    }

    json make_it(Arguments more = {}, int code = 0) {
        Arguments line{"pairs", "picture", only(), "--for", "website", "--out", out};
        line.insert(line.end(), more.begin(), more.end());
        return answer(line, code);
    }

    std::string out = folder / "pair.jpg";
};

// exiftool reads what the picture says of itself, ImageMagick what it is.
TEST_F(PairGoesOutTest, SaysWhoTookItWhatWasDoneAndHowThePhotosDiffer) {
    const json made = make_it(
        {"--shape", "A5", "--line", "--caption", "A low bun", "--say-inside", "--no-data-mining"});
    EXPECT_EQ(made["credit_line"], "Photo: Wren Aldous");
    EXPECT_EQ(output_of("identify -format '%m %wx%h %[colorspace] %x' " + shell_word(out)),
              "JPEG 1748x2480 sRGB 300");
    const json says = json::parse(output_of("exiftool -n -json -G1 " + shell_word(out)))[0];
    EXPECT_EQ(says["XMP-dc:Creator"], (json{"Pins and Paper", "Wren Aldous"}));
    EXPECT_EQ(says["XMP-dc:Rights"], "© 2026 Pins and Paper; © 2026 Wren Aldous");
    EXPECT_EQ(says["XMP-photoshop:Credit"], "Pins and Paper; Photo: Wren Aldous");
    const std::string caption = says["XMP-dc:Description"];
    EXPECT_TRUE(caption.starts_with("A low bun\n")) << caption;
    EXPECT_NE(caption.find("Cropped, and both heads laid equally large"), std::string::npos);
    EXPECT_NE(caption.find("The head is equally large in both photos."), std::string::npos);
    EXPECT_TRUE(says.contains("XMP-plus:DataMining"));
    EXPECT_EQ(says["XMP-plus:ModelReleaseStatus"], "MR-LMR");
    EXPECT_FALSE(says.contains("ExifIFD:DateTimeOriginal"));
    EXPECT_EQ(text_of(out).find("Ada"), std::string::npos) << "her name is nowhere in it";
}

TEST_F(PairGoesOutTest, ACaptionThatNamesHerIsRefused) {
    const json refused = make_it({"--caption", "ADA in a bun"}, 1);
    EXPECT_NE(refused["problem"].get<std::string>().find("names Ada Lindqvist"),
              std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(out));
}

TEST_F(PairGoesOutTest, WithoutBeingAskedItSaysNothingOfWhatWasDone) {
    make_it();
    const std::string caption = output_of("exiftool -s3 -XMP-dc:Description " + shell_word(out));
    EXPECT_EQ(caption.find("Cropped"), std::string::npos) << caption;
    EXPECT_NE(caption.find("low bun, back"), std::string::npos) << caption;
}

TEST_F(PairGoesOutTest, StandsInTheLedgerForBothPhotosAndIsTakenDownOnce) {
    make_it();
    const json listed = answer({"ledger", "list"})["exports"];
    ASSERT_EQ(listed.size(), 2U);
    for (const json& each : listed) {
        EXPECT_EQ(each["file"], out);
        EXPECT_EQ(each["sha256"], output_of("sha256sum " + shell_word(out)).substr(0, 64));
    }
    EXPECT_NE(make_it({}, 1)["problem"], "") << "nothing is written over";
    EXPECT_EQ(answer({"ledger", "list", "--out-there"})["exports"].size(), 2U);
    said({"consent", "withdraw", "Ada Lindqvist", "--how", "message"}, 3);
    EXPECT_EQ(answer({"ledger", "tasks"}, 3)["to_take_down"].size(), 2U);
    EXPECT_TRUE(pairs({"--use", "website"}).empty());
    said({"ledger", "taken-down", "1"});
    EXPECT_TRUE(answer({"ledger", "tasks"})["to_take_down"].empty()) << "it is one picture";
}

TEST_F(PairGoesOutTest, APairThatSheRefusedIsNoPicture) {
    const std::string number = only();
    said({"pairs", "refuse", number});
    EXPECT_NE(said({"pairs", "picture", number, "--for", "website", "--out", out}, 1)
                  .find("pairs refuse " + number + " --take-back"),
              std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(out));
}

TEST_F(PairGoesOutTest, ACaptionThatWouldSwallowThePhotosIsRefusedWithHowMuchFits) {
    std::string long_caption;
    for (int i = 0; i < 400; ++i) long_caption += "low bun with leaves ";
    const std::string problem = make_it({"--caption", long_caption}, 1)["problem"];
    EXPECT_NE(problem.find("of the caption's 8000 characters about "), std::string::npos)
        << problem;
    EXPECT_FALSE(std::filesystem::exists(out));
}

// The second photo is turned: the points stand askew in it.
TEST_F(PairGoesOutTest, WhatWasNotTakenAlikeIsSaidOnceInTheMetadataAndBelow) {
    const std::string second = pairs().at(0)["second"]["name"];
    said({"head-points", second, "--top", "58,20", "--bottom", "50,60"});
    const json made = make_it({"--say-what-was-done"}, 3);
    EXPECT_EQ(made["unfair"].size(), 1U) << made;
    const std::string caption = output_of("exiftool -s3 -XMP-dc:Description " + shell_word(out));
    EXPECT_NE(caption.find("Not taken alike: tilt."), std::string::npos) << caption;
}

TEST_F(PairGoesOutTest, PointsThatShowNoHeadAreRefused) {
    const std::string second = pairs().at(0)["second"]["name"];
    complained({"head-points", second, "--top", "0,0", "--bottom", "1,1"}, 2);
    said({"head-points", second, "--top", "50,50", "--bottom", "50,54.5"});
    EXPECT_NE(make_it({}, 1)["problem"].get<std::string>().find("far larger in one photo"),
              std::string::npos);
}

TEST_F(PairGoesOutTest, ShowAndPictureJudgeAlike) {
    const json shown = answer({"pairs", "show", only()});
    EXPECT_NEAR(shown["figures"]["size"].get<double>(), 1, 1e-6);
    EXPECT_TRUE(make_it()["unfair"].empty());
}

// What a client brought along, and what then came in with the photos.
TEST_F(PairGoesOutTest, AKeptPictureOfSomebodyElseNeverGoesAsHers) {
    const std::string second = pairs().at(0)["second"]["name"];
    {
        Library opened = Library::open(library);
        keep_inspiration(opened, folder / "card" / second, ClientId{1}, LocalTime{});
    }
    EXPECT_EQ(answer({"photo", "whose", second})["photos"].at(0)["credit"]["whose"],
              "somebody else");
    EXPECT_NE(complained({"photo", "whose", second, "--own"}, 1).find("somebody else's work"),
              std::string::npos);
    EXPECT_TRUE(pairs({"--use", "website"}).empty());
    EXPECT_NE(make_it({}, 1)["against"].at(0).get<std::string>().find("somebody else's"),
              std::string::npos);
}

TEST_F(PairGoesOutTest, WrongUseIsRefusedBeforeAnythingIsMade) {
    complained({"pairs", "picture", only(), "--for", "website", "--out", folder / "pair.png"}, 2);
    complained({"pairs", "picture", only(), "--for", "billboard", "--out", out}, 2);
    complained({"pairs", "picture", only(), "--out", out}, 2);
    complained({"pairs", "list", "--use", "billboard"}, 2);
    complained({"pairs", "list", "--year", "20x"}, 2);
    complained({"pairs", "like", out, "--pair", only()}, 2);
    EXPECT_NE(
        answer({"pairs", "picture", only(), "--for", "website", "--out", library + "/pair.jpg"},
               1)["problem"]
            .get<std::string>()
            .find("lies in the library"),
        std::string::npos);
}

}  // namespace
}  // namespace quarterturn
