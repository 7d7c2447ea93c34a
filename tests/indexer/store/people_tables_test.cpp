#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class PeopleTables : public testing::Test, public ExampleLibrary {};

std::vector<std::string> names(const auto& records) {
    std::vector<std::string> result;
    for (const auto& record : records) result.push_back(record.name);
    return result;
}

using Names = std::vector<std::string>;

Sitting sitting_of(ClientId client, const char* starts, const char* ends) {
    Sitting sitting;
    sitting.client = client;
    sitting.starts = at(starts);
    sitting.ends = at(ends);
    return sitting;
}

TEST_F(PeopleTables, KeepAClientOverARestart) {
    Client client{{}, "Łucja 美咲", "rings before nine"};
    client.id = library.clients().add(client);
    reopen();
    EXPECT_EQ(library.clients().find(client.id), client);
    client.name = "Łucja Tarn";
    client.note.clear();
    library.clients().change(client);
    EXPECT_EQ(library.clients().find(client.id), client);
    EXPECT_EQ(names(library.clients().named("łucja tarn")), Names{"Łucja Tarn"});
    EXPECT_TRUE(library.clients().named("Łucja 美咲").empty());
}

TEST_F(PeopleTables, ListClientsByNameInAnyScript) {
    for (const char* name : {"zoe Abel", "Åse Brekk", "Astrid Fenn", "Bela Corr", "Ωmega Dal"}) {
        library.clients().add(client_called(name));
    }
    // UTS #10, root order: accents and case matter only between names that are else equal, and
    // Greek follows Latin.
    EXPECT_EQ(names(library.clients().all()),
              (Names{"Åse Brekk", "Astrid Fenn", "Bela Corr", "Mira Okonjo-Lindqvist", "zoe Abel",
                     "Ωmega Dal"}));
}

TEST_F(PeopleTables, FindEveryClientOfAName) {
    library.clients().add(client_called("ZOË STRAßE"));
    library.clients().add(client_called("Zoe\u0308 Strasse"));  // the accent as a sign of its own
    library.clients().add(client_called("Zoe Strasse"));
    EXPECT_EQ(library.clients().named("zoë strasse").size(), 2U);
    EXPECT_TRUE(library.clients().named("zoë").empty()) << "only the whole name counts";
}

TEST_F(PeopleTables, RefuseNamesThatAreNone) {
    EXPECT_THROW(library.clients().add(client_called("")), StoreError);
    EXPECT_THROW(library.clients().add(client_called(" \u3000\t")), StoreError);
    EXPECT_THROW(library.clients().add(client_called("\xff\xfe")), StoreError);
    EXPECT_THROW(library.clients().add(client_called(std::string("a\0b", 3))), StoreError);
    EXPECT_EQ(library.clients().all().size(), 1U);
}

TEST_F(PeopleTables, SayWhatIsNotThereToChange) {
    Client nobody = client_called("Nobody");
    nobody.id = ClientId{77};
    try {
        library.clients().change(nobody);
        FAIL() << "there is no such client";
    } catch (const StoreError& error) {
        EXPECT_STREQ(error.what(), "There is no client 77 in the library.");
    }
    EXPECT_EQ(library.clients().find(ClientId{77}), std::nullopt);
}

TEST_F(PeopleTables, KeepAWeddingWithItsPartyInOrder) {
    const ClientId ada = library.clients().add(client_called("Ada"));
    Wedding day = library.weddings().find(wedding).value();
    day.party = {{ada, "mother"}, {mira, "bride"}};
    day.date = parse_date("2027-02-28").value();
    day.venue = "Hafenhaus";
    library.weddings().change(day);
    reopen();
    EXPECT_EQ(library.weddings().find(wedding), day);
    day.party.clear();
    library.weddings().change(day);
    EXPECT_EQ(library.weddings().all(), std::vector{day});
}

TEST_F(PeopleTables, ListWeddingsByDate) {
    Wedding day = library.weddings().find(wedding).value();
    day.name = "Earlier";
    day.date = parse_date("2026-09-05").value();
    library.weddings().add(day);
    EXPECT_EQ(names(library.weddings().all()), (Names{"Earlier", "Okonjo-Lindqvist and Vale"}));
    EXPECT_EQ(names(library.weddings().named("EARLIER")), Names{"Earlier"});
}

TEST_F(PeopleTables, RefuseAWeddingThatCannotBe) {
    const Wedding day = library.weddings().find(wedding).value();
    Wedding wrong = day;
    wrong.party = {{mira, "bride"}, {mira, "mother"}};
    EXPECT_THROW(library.weddings().change(wrong), StoreError);
    wrong = day;
    wrong.party = {{ClientId{77}, "bride"}};
    EXPECT_THROW(library.weddings().change(wrong), StoreError);
    wrong = day;
    wrong.date = Date{std::chrono::year{2026}, std::chrono::month{2}, std::chrono::day{30}};
    EXPECT_THROW(library.weddings().change(wrong), StoreError);
    EXPECT_EQ(library.weddings().find(wedding), day) << "a refused change changes nothing";
}

TEST_F(PeopleTables, KeepASitting) {
    Sitting sitting = sitting_of(mira, "2026-11-21T07:00", "2026-11-21T11:30:15.5");
    sitting.kind = SittingKind::wedding_day;
    sitting.note = "room 3";
    sitting.id = library.sittings().add(sitting);
    reopen();
    EXPECT_EQ(library.sittings().find(sitting.id), sitting);
    sitting.wedding = wedding;
    sitting.kind = SittingKind::model_shoot;
    library.sittings().change(sitting);
    EXPECT_EQ(library.sittings().find(sitting.id), sitting);
}

TEST_F(PeopleTables, ListSittingsByStart) {
    const ClientId ada = library.clients().add(client_called("Ada"));
    const SittingId late =
        library.sittings().add(sitting_of(ada, "2026-12-01T10:00", "2026-12-01T11:00"));
    const SittingId early =
        library.sittings().add(sitting_of(ada, "2025-12-01T10:00", "2025-12-01T11:00"));
    std::vector<SittingId> all;
    for (const Sitting& sitting : library.sittings().all()) all.push_back(sitting.id);
    EXPECT_EQ(all, (std::vector{early, trial, late}));
    EXPECT_EQ(library.sittings().of_client(ada).size(), 2U);
    EXPECT_EQ(library.sittings().of_client(mira).size(), 1U);
}

TEST_F(PeopleTables, RefuseASittingThatCannotBe) {
    EXPECT_THROW(library.sittings().add(sitting_of(mira, "2026-12-01T10:00", "2026-12-01T09:59")),
                 StoreError);
    try {
        library.sittings().add(sitting_of(ClientId{77}, "2026-12-01T10:00", "2026-12-01T11:00"));
        FAIL() << "there is no such client";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("not in the library"), std::string::npos);
    }
    EXPECT_EQ(library.sittings().all().size(), 1U);
}

}  // namespace
}  // namespace quarterturn
