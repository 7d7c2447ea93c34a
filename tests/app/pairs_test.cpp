#include "tests/app/program.h"

namespace quarterturn {
namespace {

using nlohmann::json;
using Lines = std::vector<std::string>;

// Ada's trial: two photos of one wall, before and after, and a third; made by tools outside of the
// program. They are noise, so that they are sharp.
class PairsTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        const std::filesystem::path card = folder / "card";
        std::filesystem::create_directories(card);
        make(card / "IMG_1.jpg", 1, "2026:11:07 10:12:03");
        make(card / "IMG_2.jpg", 2, "2026:11:07 12:02:00");
        make(card / "IMG_3.jpg", 3, "2026:11:07 12:03:00");
        said({"client", "add", "Ada Lindqvist"});
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        said({"look", "add", "1", "Low twisted bun", "--sitting", "1"});
        said({"recipe", "set", "1", "--part", "hair_on_the_day.colour=chestnut", "--part",
              "parting=side, on her left"});
        answer({"import", card});
        said({"sort"});
        said({"tag", "IMG_1.jpg", "--angle", "back", "--stage", "before"});
        said({"tag", "IMG_2.jpg", "IMG_3.jpg", "--angle", "back", "--stage", "after", "--look",
              "1"});
    }

    static void make(const std::filesystem::path& file, int seed, const std::string& taken) {
        output_of("convert -size 1200x1600 -seed " + std::to_string(seed) +
                  " xc:gray50 +noise Gaussian " + shell_word(file));
        output_of("exiftool -q -overwrite_original -DateTimeOriginal=" + shell_word(taken) + ' ' +
                  shell_word(file));
    }

    json pairs(Arguments arguments = {}) {
        arguments.insert(arguments.begin(), {"pairs", "list"});
        return answer(arguments)["pairs"];
    }

    // The number of the only pair.
    std::string only() {
        const json all = pairs();
        EXPECT_EQ(all.size(), 1U);
        return std::to_string(all.at(0)["id"].get<int>());
    }
};

TEST_F(PairsTest, MakeThemselvesAndAreFoundByFactsAndWords) {
    const json pair = pairs().at(0);
    EXPECT_EQ(pair["kind"], "before and after");
    EXPECT_EQ(pair["angle"], "back");
    EXPECT_EQ(pair["first"]["name"], "IMG_1.jpg");
    EXPECT_EQ(pair["worn_on"], "2026-11-07");
    EXPECT_EQ(pairs({"--family", "Low-Bun", "--colour", "brown", "--season", "autumn"}).size(), 1U);
    EXPECT_EQ(pairs({"--colour", "red", "--colour", "brown"}).size(), 1U);
    EXPECT_EQ(pairs({"--colour", "red"}).size(), 0U);
    EXPECT_EQ(pairs({"twist", "ada"}).size(), 1U);
    EXPECT_EQ(pairs({"twist", "nobody"}).size(), 0U);
    const json counts = answer({"pairs", "count", "--colour", "red"});
    EXPECT_EQ(counts["found"], 0);
    EXPECT_EQ(counts["facts"]["colour"], (json{{{"value", "brown"}, {"pairs", 1}}}));
    EXPECT_EQ(counts["facts"]["parting"], (json{{{"value", "left"}, {"pairs", 0}}}));
}

TEST_F(PairsTest, FollowHerChoiceAndHerTags) {
    const std::string number = only();
    EXPECT_TRUE(pairs().at(0)["second"]["note"].is_null());
    const auto second = [&] { return pairs().at(0)["second"]["name"].get<std::string>(); };
    for (const char* name : {"IMG_2.jpg", "IMG_3.jpg"}) {
        said({"pairs", "choose", number, "--second", name});
        EXPECT_EQ(second(), name);
    }
    EXPECT_NE(complained({"pairs", "choose", number, "--second", "IMG_1.jpg"}, 1).find("Tag it"),
              std::string::npos);
    EXPECT_NE(said({"pairs", "pin", number}).find("To take it back: qturn undo"),
              std::string::npos);
    EXPECT_NE(said({"undo"}).find("Undone: pinned pair " + number), std::string::npos);
    said({"redo"});
    said({"tag", "IMG_3.jpg", "--stage", "during"});
    EXPECT_EQ(second(), "IMG_3.jpg");
    EXPECT_EQ(pairs().at(0)["second"]["note"], "tagged otherwise");
    EXPECT_NE(said({"pairs", "show", number}, 3).find("IMG_3.jpg is tagged during and back now"),
              std::string::npos);
    said({"pairs", "pin", number, "--take-back"});
    EXPECT_EQ(second(), "IMG_2.jpg");
    said({"tag", "IMG_3.jpg", "--stage", "after"});
    said({"pairs", "choose", number, "--second", "IMG_3.jpg"});
    said({"tag", "IMG_3.jpg", "--stage", "during"});
    EXPECT_EQ(second(), "IMG_2.jpg");
    EXPECT_NE(said({"pairs", "show", number}, 3)
                  .find("The second photo that you chose is tagged otherwise now"),
              std::string::npos);
    said({"tag", "IMG_2.jpg", "--stage", "during"});
    EXPECT_NE(said({"pairs", "list"}, 3).find("is not there now"), std::string::npos);
    said({"tag", "IMG_2.jpg", "--stage", "after"});
    said({"pairs", "choose", number, "--second", "best"});
    said({"pairs", "refuse", number});
    EXPECT_TRUE(pairs().empty());
    EXPECT_EQ(pairs({"--refused"}).size(), 1U);
    said({"pairs", "refuse", number, "--take-back"});
    EXPECT_EQ(only(), number);
}

TEST_F(PairsTest, WhatSheSaysOfALookGoesBeforeItsRecipe) {
    said({"pairs", "facts", "1", "--colour", "Copper", "--length", "to the waist"});
    EXPECT_EQ(pairs({"--colour", "copper"}).size(), 1U);
    EXPECT_EQ(pairs({"--colour", "brown"}).size(), 0U);
    said({"pairs", "facts", "1", "--as-read", "colour"});
    EXPECT_EQ(pairs({"--colour", "brown", "--length", "to the waist"}).size(), 1U);
    complained({"pairs", "facts", "1", "--as-read", "year"}, 1);
    complained({"pairs", "facts", "1", "--as-read", "shape"}, 2);
}

TEST_F(PairsTest, FiltersAreKeptUnderHerNames) {
    said({"pairs", "keep", "Autumn buns", "--family", "low bun", "--season", "autumn"});
    EXPECT_EQ(pairs({"--filter", "autumn buns"}).size(), 1U);
    EXPECT_EQ(pairs({"--filter", "autumn buns", "--angle", "left"}).size(), 0U);
    EXPECT_EQ(answer({"pairs", "filters"})["filters"].at(0)["name"], "Autumn buns");
    said({"pairs", "forget", "Autumn buns"});
    complained({"pairs", "list", "--filter", "autumn buns"}, 2);
    complained({"pairs", "keep", "Everything"}, 2);
    complained({"pairs", "list", "--angle", "above"}, 2);
    complained({"pairs", "list", "--kind", "trial"}, 2);
    complained({"pairs", "show", "99"}, 2);
}

TEST_F(PairsTest, NoPictureLeavesTheLibraryUntilBothPhotosMayGo) {
    const std::string out = folder / "pair.jpg";
    const Arguments make{"pairs", "picture", only(), "--for", "website", "--out", out};
    const auto against = [&] { return answer(make, 1)["against"].get<Lines>(); };
    EXPECT_EQ(against().size(), 2U) << "she was not asked, and it is not recorded whose they are";
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
          "signed form"});
    said({"photo", "whose", "IMG_1.jpg", "--own"});
    const std::string second = pairs().at(0)["second"]["name"];
    EXPECT_EQ(against(), Lines{second + ": It is not recorded whose photo it is."});
    EXPECT_TRUE(pairs({"--use", "website"}).empty());
    said({"photo", "whose", second, "--own"});
    EXPECT_EQ(pairs({"--use", "website"}).size(), 1U);
    EXPECT_TRUE(pairs({"--use", "print"}).empty());
    EXPECT_TRUE(against().empty());
    EXPECT_NE(said(make, 1).find("business name"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(out));
    EXPECT_TRUE(answer({"ledger", "list"})["exports"].empty());
}

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

TEST_F(PairsTest, ABroughtPictureIsKeptWithTheClientAndInNoExport) {
    const std::filesystem::path brought = folder / "from a magazine.jpg";
    output_of("convert -size 300x400 radial-gradient:black-white " + shell_word(brought));
    const std::string bytes = text_of(brought);
    for (int time = 0; time < 2; ++time) {
        said({"pairs", "like", brought, "--client", "Ada Lindqvist"});
    }
    std::filesystem::remove(brought);
    const json kept = answer({"inspiration", "list", "--client", "Ada Lindqvist"})["inspirations"];
    ASSERT_EQ(kept.size(), 1U) << "kept once, though nothing is like it";
    EXPECT_EQ(kept.at(0)["name"], "from a magazine.jpg");
    EXPECT_EQ(answer({"photos"})["photos"].size(), 3U) << "it is none of her photos";

    const std::filesystem::path record = folder / "record";
    said({"client", "export", "1", "--to", record});
    for (const auto& entry : std::filesystem::recursive_directory_iterator(record)) {
        if (!entry.is_regular_file()) continue;
        EXPECT_EQ(text_of(entry).find(bytes), std::string::npos) << entry.path();
    }
    said({"inspiration", "remove", std::to_string(kept.at(0)["id"].get<int>())});
    EXPECT_TRUE(answer({"inspiration", "list"})["inspirations"].empty());
    complained({"inspiration", "remove", "1"}, 2);
    complained({"pairs", "like", "--inspiration", "1"}, 2);
    complained({"pairs", "like", "--pair", only(), "--client", "Ada Lindqvist"}, 2);
}

TEST_F(PairsTest, ProgressOfAClientStandsByDateAngleByAngle) {
    const json back = answer({"pairs", "progress", "Ada Lindqvist"})["angles"]["back"];
    ASSERT_EQ(back.size(), 2U) << "the sharpest of each stage";
    EXPECT_EQ(back[0]["name"], "IMG_1.jpg");
    EXPECT_EQ(back[0]["sitting_kind"], "trial");
    EXPECT_EQ(back[1]["stage"], "after");
    EXPECT_EQ(answer({"pairs", "progress", "1", "--angle", "left"})["angles"], json::object());
}

}  // namespace
}  // namespace quarterturn
