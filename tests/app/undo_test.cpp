// What commands change is undone in the order it was done, and what can never be undone says so.

#include "indexer/looks/pairs.h"
#include "indexer/store/library.h"
#include "tests/app/boathouse.h"
#include "tests/app/card_test.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class UndoTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"settings", "business name", "Pins and Paper"});
        said({"client", "add", "Ada Lindqvist"});
        said({"client", "add", "Berit Lindqvist"});
        said({"wedding", "add", "Boathouse", "--date", "2027-05-15", "--ready-by", "12:30",
              "--party", "1=bride", "--party", "2=mother"});
        said({"sitting", "add", "1", "--starts", "2026-10-03T10:00", "--ends", "2026-10-03T13:00",
              "--wedding", "Boathouse"});
        said({"look", "add", "1", "Low bun", "--sitting", "1", "--wedding", "Boathouse"});
        said({"look", "add", "2", "Soft roll", "--wedding", "Boathouse"});
        done({"recipe", "set", "Low bun", "--step", "25mm tongs away, 4 pins crossed"});
        done({"recipe", "set", "Low bun", "--part", "build.1.minutes=22"});
        make_photo(card / "DCIM/one.jpg", 1, "'-DateTimeOriginal=2026:10:03 10:10:00'");
        make_photo(card / "DCIM/two.jpg", 2, "'-DateTimeOriginal=2026:10:03 12:50:00'");
        said({"import", card});
        said({"tag", "one.jpg", "two.jpg", "--look", "Low bun", "--angle", "left"});
        done({"photo", "people", "one.jpg"});  // looks for faces, which is no action
        done({"sort"});
    }

    RecordsDump records() {
        Library opened = Library::open(library);
        bring_pairs_up_to_date(opened);
        return dump_of(opened.database());
    }

    // Done, some of them with a word on what is missing still.
    void done(const Arguments& command) {
        const Ran ran = run(command);
        EXPECT_TRUE(ran.code == 0 || ran.code == 3) << ran.out << ran.error;
    }

    // Does it, takes it back, does it again and takes it back.
    void expect_undone(const Arguments& command, const std::string& what) {
        SCOPED_TRACE(what);
        const RecordsDump before = records();
        done(command);
        const RecordsDump after = records();
        EXPECT_NE(difference(before, after), "") << "it changed nothing";
        EXPECT_EQ(answer({"undo"})["done"], what);
        EXPECT_EQ(difference(records(), before), "");
        EXPECT_EQ(answer({"redo"})["done"], what);
        EXPECT_EQ(difference(records(), after), "");
        EXPECT_EQ(answer({"undo"})["done"], what);
        EXPECT_EQ(difference(records(), before), "");
    }
};

TEST_F(UndoTest, PeopleDaysAndLooks) {
    expect_undone({"client", "add", "Cleo Marsh"}, "added the client Cleo Marsh");
    expect_undone({"client", "change", "1", "--note", "fine hair"},
                  "changed the client Ada Lindqvist");
    expect_undone({"wedding", "add", "Orangery", "--date", "2027-06-01"},
                  "added the wedding Orangery");
    expect_undone({"wedding", "change", "Boathouse", "--venue", "by the water"},
                  "changed the wedding Boathouse");
    expect_undone({"sitting", "add", "2", "--starts", "2027-01-02T10:00", "--ends",
                   "2027-01-02T11:00", "--kind", "consultation"},
                  "added the consultation");
    expect_undone({"sitting", "change", "1", "--note", "came late"}, "changed the trial");
    expect_undone({"look", "add", "1", "Let down"}, "added the look Let down");
    expect_undone({"look", "change", "Low bun", "--worn", "evening"}, "changed the look Low bun");
    write_bytes(folder / "day.json", std::as_bytes(std::span(std::string_view(
                                         R"({"clients": [{"key": "c", "name": "Cleo Marsh"}]})"))));
    expect_undone({"scenario", folder / "day.json"}, "loaded a scenario");
}

TEST_F(UndoTest, ShotsRecipesAndSettings) {
    expect_undone({"shot-list", "Low bun", "--require", "during, detail"},
                  "changed the shot list of Low bun");
    expect_undone({"shot-list", "--require", "during, detail"}, "changed your own shot list");
    expect_undone({"shot-list", "Low bun", "--drop", "before, back", "--save-as-default"},
                  "changed the shot list of Low bun");
    expect_undone({"waive", "Low bun", "before, back", "--because", "wet hair"},
                  "waived before, back");
    said({"waive", "Low bun", "before, left", "--because", "wet hair"});
    expect_undone({"waive", "Low bun", "before, left", "--take-back"},
                  "took back the waiver of before, left");
    expect_undone({"recipe", "set", "Low bun", "--part", "parting=left"},
                  "saved the recipe of Low bun");
    expect_undone({"recipe", "set", "Low bun", "--part", "parting=left", "--draft"},
                  "kept a draft of the recipe of Low bun");
    expect_undone({"recipe", "from", "Soft roll", "Low bun"}, "saved the recipe of Soft roll");
    expect_undone({"recipe", "save-template", "Low bun", "Bun"}, "saved the template Bun");
    said({"recipe", "save-template", "Low bun", "Roll"});
    expect_undone({"recipe", "remove-template", "Roll"}, "removed the template Roll");
    expect_undone({"settings", "business line", "by appointment"},
                  "changed the setting business line");
}

TEST_F(UndoTest, TheWeddingMorning) {
    expect_undone({"kit", "Boathouse", "--spare", "35"}, "changed the pins to spare");
    expect_undone({"kit", "Boathouse", "--tick", "1"}, "changed what is ticked as packed");
    expect_undone({"board", "Boathouse", "--tick", "Low bun=1"},
                  "changed what is done on the board");
    expect_undone({"board", "Boathouse", "--done", "Berit Lindqvist"},
                  "changed what is done on the board");
    done({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30"});
    expect_undone({"running-order", "Boathouse", "--stylists", "2"}, "changed the running order");
    expect_undone({"running-order", "Boathouse", "--move", "Ada Lindqvist", "--at", "08:00"},
                  "moved a client in the running order");
    expect_undone({"timer", "start", "Boathouse", "15", "cooling"}, "started the timer cooling");
    said({"timer", "start", "Boathouse", "15", "waiting"});
    expect_undone({"timer", "stop", "Boathouse", "waiting"}, "put the timer waiting away");
}

TEST_F(UndoTest, PhotosPairsAndSelections) {
    expect_undone({"photo", "whose", "one.jpg", "two.jpg", "--own"}, "said whose 2 photos are");
    expect_undone({"photo", "people", "one.jpg", "--face", "no"}, "said who is seen in 1 photo");
    expect_undone({"portfolio", "select", "Page", "one.jpg", "two.jpg"},
                  "changed the selection Page");
    said({"portfolio", "select", "Other page", "one.jpg"});
    expect_undone({"portfolio", "select", "Other page", "--forget"},
                  "forgot the selection Other page");
    expect_undone({"pairs", "keep", "Buns", "--family", "low bun"}, "kept the filter Buns");
    said({"pairs", "keep", "Rolls", "--family", "plait"});
    expect_undone({"pairs", "forget", "Rolls"}, "forgot the filter Rolls");
    expect_undone({"pairs", "facts", "Low bun", "--family", "low bun"},
                  "changed what Low bun is found by");
    std::filesystem::copy_file(QUARTERTURN_SOURCE "/demo_photos/photos/phone/20260822_153002.jpg",
                               folder / "liked.jpg");
    expect_undone({"pairs", "like", folder / "liked.jpg", "--client", "Ada Lindqvist"},
                  "kept a picture with a client");
}

TEST_F(UndoTest, NothingIsSteppedOverAndWhatChangesNothingIsNone) {
    said({"shot-list", "Low bun", "--require", "during, detail"});
    for (const Arguments& command :
         {Arguments{"shot-list", "Low bun"}, Arguments{"client", "change", "1"},
          Arguments{"settings", "business name", "Pins and Paper"}, Arguments{"kit", "Boathouse"},
          Arguments{"board", "Boathouse"}, Arguments{"photo", "people", "one.jpg"}}) {
        done(command);
    }
    EXPECT_EQ(said({"undo"}), "Undone: changed the shot list of Low bun\n");
    EXPECT_EQ(photos()[0]["angle"], "left");
    EXPECT_TRUE(says(said({"undo"}), "Undone: tagged 2 photos left"));
}

TEST_F(UndoTest, WhatCanNeverBeUndoneSaysSoAndTheNextUndoGoesOn) {
    write_bytes(folder / "scan.pdf", std::as_bytes(std::span("signed", 6)));
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how", "signed form",
          "--attach", folder / "scan.pdf"});
    const json history = answer({"consent", "history", "Ada Lindqvist"})["entries"];
    const json stop = answer({"undo"}, 1);
    EXPECT_EQ(stop, (json{{"done", nullptr}, {"stands", "recorded what Ada Lindqvist allows"}}));
    EXPECT_EQ(answer({"consent", "history", "Ada Lindqvist"})["entries"], history);
    said({"consent", "withdraw", "Ada Lindqvist", "--how", "message"});
    EXPECT_EQ(said({"undo"}, 1),
              "What you did last cannot be undone: recorded what Ada Lindqvist allows. Undo again "
              "takes back what was before it.\n");
    EXPECT_TRUE(says(said({"undo"}), "Undone: tagged 2 photos left"));
}

TEST_F(UndoTest, PicturesThatWentOutAreOneStop) {
    said({"photo", "whose", "one.jpg", "two.jpg", "--own"});
    said({"accept", "one.jpg", "two.jpg", "--because", "small on purpose"});
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how", "message"});
    done({"portfolio", "export", "one.jpg", "two.jpg", "--for", "website", "--to",
          folder / "website"});
    ASSERT_EQ(answer({"ledger", "list"})["exports"].size(), 2U);
    said({"ledger", "place", "1", "gallery"});
    for (const char* said : {"noted where a picture was put", "sent pictures out (website)",
                             "recorded what Ada Lindqvist allows"}) {
        EXPECT_EQ(answer({"undo"}, 1)["stands"], said);
    }
    EXPECT_EQ(answer({"undo"})["stands"], nullptr);
    EXPECT_EQ(answer({"ledger", "list"})["exports"].size(), 2U);
}

TEST_F(UndoTest, PhotosThatAreGoneAreCountedWhereTheRestOfAnActionIsUndone) {
    said({"bin", "add", "two.jpg"});
    said({"bin", "empty", "--yes"});
    EXPECT_EQ(answer({"undo"}, 1)["stands"], "emptied the bin");
    const std::string undone = said({"undo"});
    EXPECT_TRUE(says(undone, "Undone: tagged 2 photos left")) << undone;
    EXPECT_TRUE(says(undone, "\n1 photo of it gone for good.\n")) << undone;
    EXPECT_EQ(answer({"redo"})["photos_gone"], 1);
}

}  // namespace
}  // namespace quarterturn
