// Every way out of the program that needs no window, each tried with a photo that may not go.

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class WaysOutTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"settings", "business name", "Pins and Paper"});
        said({"client", "add", "Ada Lindqvist"});
        said({"wedding", "add", "Boathouse", "--date", "2026-11-21", "--party", "1=bride"});
        said({"sitting", "add", "Ada Lindqvist", "--starts", "2026-10-03T10:00", "--ends",
              "2026-10-03T13:00", "--wedding", "Boathouse"});
        said({"look", "add", "Ada Lindqvist", "Low bun", "--sitting", "1", "--wedding",
              "Boathouse"});
        make_photo(card / "DCIM/bun.jpg", 1, "'-DateTimeOriginal=2026:10:03 11:00:00'");
        said({"import", card});
        said({"tag", "bun.jpg", "--look", "Low bun", "--angle", "back", "--stage", "after"});
        said({"accept", "bun.jpg", "--because", "small on purpose"});
        said({"photo", "whose", "bun.jpg", "--own"});
        said({"portfolio", "select", "Page", "bun.jpg"});
    }

    void say(const char* what, const char* use) {
        Arguments arguments{"consent", what, "Ada Lindqvist", "--for", use, "--how", "message"};
        if (std::string(what) == "grant") arguments.emplace_back("--face");
        said(arguments);
    }

    std::filesystem::path to(const char* name) { return folder / name; }
    bool is_there(const char* name) { return std::filesystem::exists(folder / name); }
};

TEST_F(WaysOutTest, ASheetForOthersThatShowsNoPhotoIsNotWritten) {
    said({"look", "add", "Ada Lindqvist", "Plait"});
    const Arguments sheet{"sheet", "Plait", "--for", "teaching", "--out", to("sheet.pdf")};
    EXPECT_NE(complained(sheet, 1).find("no photo would stand on it"), std::string::npos);
    EXPECT_FALSE(is_there("sheet.pdf"));
}

TEST_F(WaysOutTest, WhatStandsAgainstManyPhotosIsSaidOnce) {
    make_photo(card / "DCIM/side.jpg", 2, "'-DateTimeOriginal=2026:10:03 11:30:00'");
    said({"import", card});
    said({"tag", "side.jpg", "--look", "Low bun", "--angle", "left", "--stage", "after"});
    const Arguments sheet{"sheet", "--sitting", "1", "--for", "teaching", "--out", to("a.pdf")};
    const std::string told = said(sheet, 1);
    const auto first = told.find("  2 files: Ada Lindqvist");
    EXPECT_NE(first, std::string::npos) << told;
    EXPECT_EQ(told.find("Ada Lindqvist", first + std::string("  2 files: Ada Lindqvist").size()),
              std::string::npos)
        << told;
    EXPECT_NE(told.find("\n    bun.jpg\n    side.jpg\n"), std::string::npos) << told;
    EXPECT_GE(answer(sheet, 1)["against"].size(), 2U) << "each photo by its name";
}

TEST_F(WaysOutTest, ForOthersEachIsRefusedUntilSheAllowsIt) {
    const std::vector<Arguments> ways{
        {"portfolio", "export", "bun.jpg", "--for", "website", "--to", to("exported")},
        {"portfolio", "gallery", "--selection", "Page", "--to", to("gallery")},
        {"sheet", "Low bun", "--for", "website", "--out", to("sheet.pdf")},
        {"sheet", "--sitting", "1", "--for", "website", "--out", to("sitting.pdf")}};
    for (const Arguments& way : ways) said(way, 1);
    say("decline", "website");
    for (const Arguments& way : ways) said(way, 1);
    for (const char* name : {"sheet.pdf", "sitting.pdf", "gallery/index.html"}) {
        EXPECT_FALSE(is_there(name)) << name;
    }
    EXPECT_FALSE(is_there("exported")) << "nor an empty folder";
    EXPECT_FALSE(is_there("gallery"));
    EXPECT_TRUE(answer({"ledger", "list"})["exports"].empty());
    say("grant", "website");
    for (const Arguments& way : ways) said(way);
    EXPECT_EQ(answer({"ledger", "list"})["exports"].size(), ways.size());
    const json sheet = answer({"ledger", "list"})["exports"][2];
    EXPECT_EQ(sheet["sha256"], output_of("sha256sum " + shell_word(to("sheet.pdf"))).substr(0, 64));
    complained({"sheet", "Low bun", "--for", "website", "--out", to("sheet.png")}, 2);
}

TEST_F(WaysOutTest, HerOwnWorkGoesUnlessTheClientRefusesThatToo) {
    const std::vector<Arguments> ways{
        {"sheet", "Low bun", "--replace", "--out", to("own.pdf")},
        {"sheet", "Low bun", "--replace", "--out", to("own.png")},
        {"board", "Boathouse", "--replace", "--out", to("board.pdf")},
        {"board", "Boathouse", "--replace", "--out", to("board.html")}};
    // A board says with its exit code that her minutes are not written yet.
    const auto done = [](const Arguments& way) { return way.front() == "board" ? 3 : 0; };
    for (const Arguments& way : ways) said(way, done(way));  // nobody asked her yet
    for (const char* what : {"decline", "grant"}) {
        say(what, "own record");
        for (const Arguments& way : ways) said(way, std::string(what) == "grant" ? done(way) : 1);
    }
    said({"consent", "withdraw", "Ada Lindqvist", "--for", "own record", "--how", "message"});
    for (const Arguments& way : ways) {
        EXPECT_NE(complained(way, 1).find("bun.jpg"), std::string::npos) << way.front();
    }
    said({"client", "export", "Ada Lindqvist", "--to", to("copy")});  // it is hers to have
}

TEST_F(WaysOutTest, SomebodyElsesPhotoLeavesByNone) {
    said({"photo", "whose", "bun.jpg", "--somebody-else"});
    for (const char* what : {"own.pdf", "own.png"}) {
        complained({"sheet", "Low bun", "--out", to(what)}, 1);
        EXPECT_FALSE(is_there(what));
    }
    for (const char* what : {"board.pdf", "board.html"}) {
        EXPECT_NE(complained({"board", "Boathouse", "--out", to(what)}, 1)
                      .find("bun.jpg: The photo is somebody else's"),
                  std::string::npos);
        EXPECT_FALSE(is_there(what));
    }
    const json copied = answer({"client", "export", "Ada Lindqvist", "--to", to("copy")});
    ASSERT_EQ(copied["left_out"].size(), 1U);
    EXPECT_NE(copied["left_out"][0].get<std::string>().find("bun.jpg is somebody else's"),
              std::string::npos);
    EXPECT_FALSE(is_there("copy/data/photos"));
    EXPECT_EQ(
        output_of("pdfimages -list " + shell_word(to("copy/data/record.pdf")) + " | tail -n +3"),
        "");
}

TEST_F(WaysOutTest, ACaptionThatNamesHerIsRefusedHoweverItIsSpelt) {
    say("grant", "website");
    for (const char* caption : {"Ada in a bun", "LINDQVIST", "lìndqvist's day"}) {
        EXPECT_NE(complained({"portfolio", "export", "bun.jpg", "--for", "website", "--to",
                              to("exported"), "--caption", caption},
                             1)
                      .find("names Ada Lindqvist"),
                  std::string::npos)
            << caption;
    }
    EXPECT_FALSE(is_there("exported"));
    EXPECT_TRUE(answer({"ledger", "list"})["exports"].empty());
}

TEST_F(WaysOutTest, HairOnlyGoesAsThePictureThatWasLookedAt) {
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--hair-only", "--how",
          "message"});
    said({"tag", "bun.jpg", "--angle", "left"});
    const Arguments ask{"may", "bun.jpg", "--for", "website"};
    const Arguments keep{"photo", "hair-only", "bun.jpg", "--keep", "0.5,0,0.5,1"};
    const auto with = [](Arguments before, const Arguments& after) {
        before.insert(before.end(), after.begin(), after.end());
        return before;
    };
    said(ask, 1);
    const json proposed = answer(with(keep, {"--to", to("look")}));
    ASSERT_EQ(proposed["pictures"].size(), 1U);
    EXPECT_EQ(proposed["pictures"][0]["face_found"], false);
    const std::string file = proposed["pictures"][0]["file"];
    EXPECT_EQ(proposed["pictures"][0]["sha256"],
              output_of("sha256sum " + shell_word(file)).substr(0, 64));
    said(ask, 1);  // not yet confirmed
    complained(with(keep, {"--confirm", card / "DCIM/bun.jpg"}), 2);
    said(with(keep, {"--confirm", file}));
    said(ask);
    said({"sheet", "Low bun", "--for", "website", "--out", to("sheet.pdf")}, 1);  // whole photos
    const json sent =
        answer({"portfolio", "export", "bun.jpg", "--for", "website", "--to", to("exported")});
    const json out = sent["photos"][0]["export"];
    EXPECT_EQ(out["hair_only"], true);
    EXPECT_EQ(output_of("identify -format '%wx%h' " + shell_word(out["file"].get<std::string>())),
              "80x200");
    EXPECT_TRUE(answer({"ledger", "tasks"})["to_take_down"].empty());

    said({"tag", "bun.jpg", "--mirrored"});
    said(ask, 1);  // it was another picture that she looked at
    said({"tag", "bun.jpg", "--not-mirrored"});
    said(ask);
    said({"photo", "hair-only", "bun.jpg", "--forget"});
    said(ask, 1);
    EXPECT_EQ(answer({"undo"}, 1)["stands"], "took back a picture without her face");
    said(ask, 1);
    complained({"photo", "hair-only", "bun.jpg", "--keep", "0.5,0,0.6,1"}, 2);
}

// Poppler reads it back.
TEST_F(WaysOutTest, TheLedgerIsPrinted) {
    say("grant", "website");
    said({"portfolio", "export", "bun.jpg", "--for", "website", "--to", to("exported")});
    said({"ledger", "place", "1", "gallery, third page"});
    said({"ledger", "print", "--out", to("ledger.pdf")});
    const std::string text = output_of("pdftotext -raw " + shell_word(to("ledger.pdf")) + " -");
    const std::string sum = answer({"ledger", "list"})["exports"][0]["sha256"];
    for (const std::string& part :
         {std::string("What went out"), std::string("website"), std::string("bun.jpg"), sum,
          std::string("gallery, third page"), std::string("Under consent 1")}) {
        EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
    }
}

}  // namespace
}  // namespace quarterturn
