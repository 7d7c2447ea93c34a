#include "tests/app/pairs_fixture.h"

namespace quarterturn {
namespace {

using nlohmann::json;
using Lines = std::vector<std::string>;

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

TEST_F(PairsTest, AValueThatNoLookHasIsWrongUseThatNamesThoseKnown) {
    EXPECT_NE(complained({"pairs", "list", "--family", "nonsense"}, 2).find("low bun"),
              std::string::npos);
    complained({"pairs", "count", "--season", "monsoon"}, 2);
    EXPECT_NE(complained({"pairs", "facts", "1", "--texture", "nonsense"}, 2).find("curly"),
              std::string::npos);
    said({"settings", "look families", "low bun, rope knot"});
    EXPECT_TRUE(pairs({"--family", "rope knot"}).empty()) << "a family of her own, without a look";
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
    EXPECT_EQ(against(),
              Lines{second + ": It is not recorded whose photo it is: say whether it is your own "
                             "or a photographer's."});
    EXPECT_TRUE(pairs({"--use", "website"}).empty());
    said({"photo", "whose", second, "--own"});
    EXPECT_EQ(pairs({"--use", "website"}).size(), 1U);
    EXPECT_TRUE(pairs({"--use", "print"}).empty());
    EXPECT_TRUE(against().empty());
    EXPECT_NE(said(make, 1).find("business name"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(out));
    EXPECT_TRUE(answer({"ledger", "list"})["exports"].empty());
}

TEST_F(PairsTest, ABroughtFileThatIsNoPictureIsNotKept) {
    const std::filesystem::path brought = folder / "broken.jpg";
    std::ofstream(brought) << "no picture at all";
    EXPECT_NE(run({"pairs", "like", brought, "--client", "Ada Lindqvist"}).code, 0);
    EXPECT_TRUE(answer({"inspiration", "list"})["inspirations"].empty());
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
    const json written = json::parse(text_of(record / "data" / "client.json"));
    EXPECT_EQ(written["brought_pictures"].at(0)["name"], "from a magazine.jpg");
    for (const auto& entry : std::filesystem::recursive_directory_iterator(record)) {
        if (!entry.is_regular_file()) continue;
        EXPECT_EQ(text_of(entry).find(bytes), std::string::npos) << entry.path();
    }
    said({"inspiration", "remove", std::to_string(kept.at(0)["id"].get<int>())});
    EXPECT_EQ(answer({"undo"}, 1)["stands"], "removed a picture that was kept with a client");
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
