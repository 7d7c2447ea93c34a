// What she did to her records is undone and done again out of the library file.

#include "indexer/store/journal.h"

#include <gtest/gtest.h>

#include <fstream>

#include "indexer/store/days_opened.h"
#include "indexer/store/erasure_table.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

constexpr auto noon = "2026-11-07T12:00";

class Journal : public testing::Test, public ExampleLibrary {
  protected:
    void rename(const std::string& name) {
        library.history().record("renamed her", [&] {
            Client client = *library.clients().find(mira);
            client.name = name;
            library.clients().change(client);
        });
    }
    std::string her_name() { return library.clients().find(mira)->name; }

    // What the undoing complains of; empty when it does not.
    std::string refused() {
        const RecordsDump before = dump_of(library.database());
        try {
            library.history().undo();
        } catch (const StoreError& error) {
            EXPECT_EQ(difference(dump_of(library.database()), before), "");
            return error.what();
        }
        return {};
    }

    void sql(const std::string& statements) { library.database().handle().exec(statements); }
};

TEST_F(Journal, UndoesAcrossARestartAndFindsByTheWordsOfThen) {
    rename("Mira Vale");
    reopen();
    EXPECT_TRUE(library.history().can_undo());
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Okonjo-Lindqvist");
    EXPECT_EQ(library.clients().named("mira okonjo-lindqvist").size(), 1U);
    reopen();
    EXPECT_EQ(library.history().redo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Vale");
}

TEST_F(Journal, KeepsTheOrderBesideWhatIsSaidOfPhotos) {
    const PhotoId photo = library.photos().add(example_photo("one.jpg"));
    Tags left;
    left.angle = Angle::left;
    rename("Mira Vale");
    library.history().apply({"tagged it", {{photo, left}}, {}});
    rename("Mira V.");
    reopen();
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Vale");
    EXPECT_EQ(library.history().undo(), "tagged it");
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_EQ(library.history().undo(), std::nullopt);
}

TEST_F(Journal, AnEditThatFailsOrChangesNothingIsNone) {
    EXPECT_THROW(rename(""), StoreError);
    rename("Mira Okonjo-Lindqvist");
    EXPECT_FALSE(library.history().can_undo());
}

TEST_F(Journal, MembersOfAPartyChangePlaces) {
    const ClientId ada = library.clients().add(client_called("Ada"));
    Wedding day = *library.weddings().find(wedding);
    day.party = {{mira, "bride"}, {ada, "mother"}};
    library.weddings().change(day);
    Wedding turned = day;
    std::swap(turned.party[0], turned.party[1]);
    library.history().record("turned", [&] { library.weddings().change(turned); });
    library.history().undo();
    EXPECT_EQ(library.weddings().find(wedding), day);
    library.history().redo();
    EXPECT_EQ(library.weddings().find(wedding), turned);
}

TEST_F(Journal, WhatWasChangedAgainSinceStaysAndWhatWasDoneBeforeIsStillUndone) {
    rename("Mira Vale");
    rename("Mira V.");
    Client client = *library.clients().find(mira);
    client.name = "Mira Vale-Okonjo";
    library.clients().change(client);
    EXPECT_EQ(refused(),
              "Not undone: renamed her. It was changed again since, and was left as it is. What "
              "was done before it can still be undone.");
    client.name = "Mira Vale";
    library.clients().change(client);
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Okonjo-Lindqvist");
}

TEST_F(Journal, ARecordThatOthersHangOnStays) {
    LookId bun;
    library.history().record("added a look", [&] {
        const ClientId ada = library.clients().add(client_called("Ada"));
        bun = library.looks().add({{}, ada, {}, "bun", Worn::evening, {}});
    });
    Recipe recipe;
    recipe.parting = "left";
    library.recipes().keep_draft(bun, recipe, at(noon));
    EXPECT_EQ(
        refused(),
        "Not undone: added a look. Other records belong to it by now: take those back first.");
    library.recipes().drop_draft(bun);
    EXPECT_EQ(library.history().undo(), "added a look");
    EXPECT_FALSE(library.looks().find(bun));
    EXPECT_EQ(library.history().redo(), "added a look");
    EXPECT_EQ(library.looks().find(bun)->name, "bun");
}

TEST_F(Journal, ASittingGoesWithPhotosThatLieInItByTheirTimeAndNotWithOthers) {
    SittingId added;
    library.history().record("added a sitting", [&] {
        Sitting sitting = *library.sittings().find(trial);
        added = library.sittings().add(sitting);
    });
    const PhotoId photo = library.photos().add(example_photo("one.jpg"));
    library.photos().set_sitting_by_time(photo, added);
    EXPECT_EQ(library.history().undo(), "added a sitting");
    EXPECT_FALSE(library.photos().find(photo)->tags.sitting);
    library.history().redo();
    sql("UPDATE photo SET sitting = " + std::to_string(added.value) + ", placed_by_hand = 1");
    EXPECT_NE(refused(), "");
    EXPECT_TRUE(library.sittings().find(added));
}

TEST_F(Journal, ANameThatIsTakenByNowIsNotGivenTwice) {
    const auto keep = [&](const std::string& name) { library.selections().keep({name, {}}); };
    keep("Website");
    library.history().record("forgot it", [&] { library.selections().remove("Website"); });
    keep("Other");
    keep("website");
    EXPECT_NE(refused(), "");
    EXPECT_EQ(library.selections().all().size(), 2U);
}

TEST_F(Journal, WhatWasTakenOutOfADraftComesBackBesideWhatWasWrittenSince) {
    Recipe with;
    with.prep = {{"mousse", "two walnuts", "lengths"}};
    Recipe without;
    library.recipes().keep_draft(look, with, at(noon));
    library.history().record("took out the prep",
                             [&] { library.recipes().keep_draft(look, without, at(noon)); });
    Recipe later = without;
    later.finish = "mist";
    library.recipes().keep_draft(look, later, at("2026-11-07T12:05"));
    EXPECT_EQ(library.history().undo(), "took out the prep");
    EXPECT_EQ(library.recipes().draft(look)->recipe.prep, with.prep);
    EXPECT_EQ(library.recipes().draft(look)->recipe.finish, "mist");
    library.history().redo();
    EXPECT_EQ(library.recipes().draft(look)->recipe, later);
}

TEST_F(Journal, EditsFromMoreThanADayAgoGoWhenTheLibraryIsOpenedAndTaggingsStay) {
    const PhotoId photo = library.photos().add(example_photo("one.jpg"));
    Tags left;
    left.angle = Angle::left;
    library.history().apply({"tagged it", {{photo, left}}, {}});
    rename("Mira Vale");
    rename("Mira V.");
    sql("UPDATE records_change SET done_at = unixepoch() - 86400 - 60 WHERE action = "
        "(SELECT min(action) FROM records_change)");
    reopen();
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Vale");
    EXPECT_EQ(library.history().undo(), "tagged it");
    EXPECT_FALSE(library.history().can_undo());
}

TEST_F(Journal, AClockThatIsMonthsAheadLetsNoEditGoAndTheDaysDo) {
    rename("Mira Vale");
    rename("Mira V.");
    const auto ahead = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    note_day_opened(library.database(), Date(ahead - std::chrono::days(100)));
    sql("UPDATE records_change SET done_at = unixepoch() - 100 * 86400");
    reopen();
    note_day_opened(library.database(), Date(ahead));
    reopen();
    EXPECT_EQ(library.history().undo(), "renamed her");
    for (int later = 1; later <= 7; ++later) {
        note_day_opened(library.database(), Date(ahead + std::chrono::days(later)));
    }
    reopen();
    EXPECT_FALSE(library.history().can_undo());
}

TEST_F(Journal, TwoProgramsUndoWhatWasDoneLastWhoeverDidIt) {
    Library other = Library::open(folder / "library");
    rename("Mira Vale");
    other.history().record("changed the venue", [&] {
        Wedding day = *other.weddings().find(wedding);
        day.venue = "Mill";
        other.weddings().change(day);
    });
    EXPECT_EQ(library.history().undo(), "changed the venue");
    EXPECT_EQ(other.history().undo(), "renamed her");
    EXPECT_FALSE(library.history().can_undo());
    EXPECT_EQ(library.history().redo(), "renamed her");
    EXPECT_EQ(her_name(), "Mira Vale");
}

TEST_F(Journal, HoldsNothingOfWhomWasErased) {
    rename("Ottoline Quillfeather");
    rename("Mira");
    library.history().undo();
    ToErase what;
    what.client = *library.clients().find(mira);
    what.client.name = "Ottoline Quillfeather";
    what.on = parse_date("2026-11-08").value();
    ErasureTable erasures(library.database());
    erasures.erase(what);
    erasures.finish({});
    EXPECT_FALSE(library.history().can_undo());
    EXPECT_FALSE(library.history().can_redo());
    EXPECT_EQ(text_of(folder / "library" / "records.sqlite").find("Ottoline"), std::string::npos);
}

TEST_F(Journal, APictureThatOnlyItKnewIsListedToGo) {
    Inspiration picture;
    picture.client = mira;
    picture.name = "veil.jpg";
    picture.path = "inspiration/veil.jpg";
    picture.sha256 = sha256("veil");
    const auto keep = [&] {
        library.history().record("kept it", [&] { library.inspirations().add(picture); });
    };
    keep();
    library.history().undo();
    EXPECT_TRUE(ErasureTable(library.database()).files_left().empty());
    rename("Mira Vale");  // drops what was undone
    EXPECT_EQ(ErasureTable(library.database()).files_left(),
              std::vector<std::string>{"inspiration/veil.jpg"});
    keep();
    EXPECT_TRUE(ErasureTable(library.database()).files_left().empty());
}

TEST_F(Journal, IsNotTakenOverWhereOneClientIsLeft) {
    const ClientId ada = library.clients().add(client_called("Ada"));
    library.history().record("kept it", [&] {
        Inspiration picture;
        picture.client = mira;
        picture.name = "veil.jpg";
        picture.path = "inspiration/Mira/veil.jpg";
        picture.sha256 = sha256("veil");
        library.inspirations().add(picture);
    });
    ToErase other;
    other.client = *library.clients().find(mira);
    ErasureTable(library.database()).leave_one(std::array{other}, {});
    EXPECT_TRUE(library.clients().find(ada));
    EXPECT_FALSE(library.history().can_undo());
    EXPECT_TRUE(ErasureTable(library.database()).files_left().empty());
}

TEST_F(Journal, WhatItSaysOfAPhotoGoesForGoodWithThePhoto) {
    const PhotoId photo = library.photos().add(example_photo("one.jpg"));
    library.history().record("said whose it is", [&] {
        library.credits().set(std::array{photo}, {Whose::photographer, "Ib Fennimore", {}, {}, {}});
    });
    rename("Mira Vale");
    library.history().apply({.said = "binned it", .binned = {{photo, parse_date("2026-10-01")}}});
    ErasureTable(library.database()).let_go(std::array{photo}, {});
    EXPECT_EQ(library.history().undo(), "renamed her");
    EXPECT_FALSE(library.history().can_undo());
}

}  // namespace
}  // namespace quarterturn
