#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Date day(const char* iso) {
    return parse_date(iso).value();
}

struct Consents : testing::Test, ExampleLibrary {
    ConsentEntry whole_entry() {
        ConsentEntry entry;
        entry.client = mira;
        entry.use = Use::social_media;
        entry.said = ConsentSaid::granted;
        entry.said_on = day("2026-11-07");
        entry.shown = ShownAs::with_her_face;
        entry.from = day("2026-12-01");
        entry.until = day("2028-02-29");
        entry.how = HowGiven::spoken;
        entry.giver = ConsentGiver::guardian;
        entry.guardian = "Ines Okonjo";
        entry.witness = "Tove Berg";
        entry.age = AgeBand::at_16;
        entry.note = "at the trial";
        entry.recorded_at = at("2026-11-07T12:00");
        return entry;
    }
    ConsentPaper scan() {
        return {{},
                "scan.pdf",
                "consents/client 1/scan.pdf",
                sha256("scan"),
                4,
                at("2026-11-07T12:01")};
    }
    Exported whole_export(ConsentId under) {
        Exported exported;
        exported.photo = PhotoId{7};
        exported.photo_name = "a.jpg";
        exported.photo_sha256 = sha256("a");
        exported.use = Use::social_media;
        exported.at = at("2026-12-02T09:00");
        exported.file = "/elsewhere/social-media-0001.jpg";
        exported.sha256 = sha256("out");
        exported.bytes = 3;
        exported.under = {under};
        return exported;
    }
    void expect_refused(const std::string& sql) {
        EXPECT_THROW(library.database().handle().exec(sql), SQLite::Exception) << sql;
    }
};

TEST_F(Consents, AreKeptWithTheirPapers) {
    ConsentEntry entry = whole_entry();
    entry.id = library.consents().add(entry);
    ConsentPaper paper = scan();
    paper.id = library.consents().add_paper(paper);
    library.consents().attach(paper.id, std::vector{entry.id});
    library.consents().attach(paper.id, std::vector{entry.id});  // once is enough
    reopen();
    entry.papers = {paper};
    EXPECT_EQ(library.consents().find(entry.id), entry);
    EXPECT_EQ(library.consents().of(mira), std::vector{entry});
    EXPECT_EQ(library.consents().all(), std::vector{entry});
    EXPECT_EQ(library.consents().papers(), std::vector{paper});
    EXPECT_EQ(library.consents().find(ConsentId{99}), std::nullopt);
}

TEST_F(Consents, AreOnlyAddedToByWhateverStatement) {
    const ConsentId id = library.consents().add(whole_entry());
    library.consents().attach(library.consents().add_paper(scan()), std::vector{id});
    const ExportId out = library.ledger().add(whole_export(id));
    library.ledger().add_place(out, "third page");
    library.ledger().take_down(out, {day("2027-01-01"), "taken off"});
    const auto before = library.consents().all();
    const auto ledger = library.ledger().all();
    for (const std::string table : {"consent", "consent_paper", "consent_paper_of", "export",
                                    "export_under", "export_place", "export_taken_down"}) {
        expect_refused("DELETE FROM " + table);
    }
    expect_refused("UPDATE consent SET said = 'granted'");
    expect_refused("UPDATE consent SET valid_until = NULL");
    expect_refused("UPDATE consent_paper SET sha256 = ''");
    expect_refused("UPDATE consent_paper_of SET paper = 2");
    expect_refused("UPDATE export SET use = 'print'");
    expect_refused("UPDATE export_under SET consent = 2");
    expect_refused("UPDATE export_place SET place = ''");
    expect_refused("UPDATE export_taken_down SET note = ''");
    for (const std::string table :
         {"consent", "consent_paper", "export", "export_place", "export_taken_down"}) {
        expect_refused("INSERT OR REPLACE INTO " + table + " SELECT * FROM " + table);
    }
    expect_refused("DELETE FROM client WHERE id = 1");
    EXPECT_EQ(library.consents().all(), before);
    EXPECT_EQ(library.ledger().all(), ledger);
}

TEST_F(Consents, AreRefusedWhereTheyAreNotWhole) {
    const auto refused = [&](auto change) {
        ConsentEntry entry = whole_entry();
        change(entry);
        EXPECT_THROW(library.consents().add(entry), StoreError);
    };
    refused([](ConsentEntry& entry) { entry.witness = " "; });
    refused([](ConsentEntry& entry) { entry.guardian = ""; });
    refused([](ConsentEntry& entry) { entry.age.reset(); });
    refused([](ConsentEntry& entry) { entry.until = day("2026-11-30"); });
    refused([](ConsentEntry& entry) { entry.said_on = day("2026-11-08"); });
    refused([](ConsentEntry& entry) { entry.note = "\xff"; });
    refused([](ConsentEntry& entry) { entry.client = ClientId{99}; });
    EXPECT_TRUE(library.consents().all().empty());
    ConsentEntry withdrawn = whole_entry();
    withdrawn.said = ConsentSaid::withdrawn;
    withdrawn.witness = withdrawn.guardian = "";
    withdrawn.age.reset();
    EXPECT_NO_THROW(library.consents().add(withdrawn)) << "as easily as it can be";
}

TEST_F(Consents, TheLedgerTellsWhereThingsWentAndWhenTheyWereTakenDown) {
    const ConsentId id = library.consents().add(whole_entry());
    EXPECT_EQ(library.ledger().next_id(), ExportId{1});
    Exported out = whole_export(id);
    out.id = library.ledger().add(out);
    EXPECT_EQ(library.ledger().next_id(), ExportId{2});
    library.ledger().add_place(out.id, "third page");
    library.ledger().add_place(out.id, "window");
    library.ledger().take_down(out.id, {day("2027-01-01"), "taken off"});
    EXPECT_THROW(library.ledger().take_down(out.id, {day("2027-01-02"), ""}), StoreError);
    EXPECT_THROW(library.ledger().take_down(ExportId{9}, {day("2027-01-02"), ""}), StoreError);
    EXPECT_THROW(library.ledger().add_place(ExportId{9}, "x"), StoreError);
    reopen();
    out.places = {"third page", "window"};
    out.taken_down = TakenDown{day("2027-01-01"), "taken off"};
    EXPECT_EQ(library.ledger().all(), std::vector{out});
    EXPECT_EQ(library.ledger().find(out.id), out);
}

TEST_F(Consents, CreditsAreKeptAndSetAnew) {
    const PhotoId photo = library.photos().add(example_photo("a.jpg"));
    const PhotoId other = library.photos().add(example_photo("b.jpg"));
    EXPECT_EQ(library.credits().of(photo), std::nullopt);
    const Credit licensed{Whose::photographer,
                          "Wren Aldous",
                          {Use::website, Use::print},
                          day("2028-12-31"),
                          "Photo: Wren Aldous"};
    library.credits().set(std::vector{photo, other}, licensed);
    const Credit nothing_wanted{Whose::photographer, "Wren Aldous", {Use::teaching}, {}, ""};
    library.credits().set(std::vector{other}, nothing_wanted);
    library.credits().set_seen(photo, {true, true, false});
    reopen();
    EXPECT_EQ(library.credits().of(photo), licensed);
    EXPECT_EQ(library.credits().of(other), nothing_wanted);
    EXPECT_EQ(library.credits().all(),
              (std::map<PhotoId, Credit>{{photo, licensed}, {other, nothing_wanted}}));
    EXPECT_EQ(library.credits().seen(photo), (Seen{true, true, false}));
    EXPECT_EQ(library.credits().seen(other), Seen{});
    library.credits().set(std::vector{photo}, Credit{});
    EXPECT_EQ(library.credits().of(photo), Credit{});
    library.credits().forget(std::vector{other});
    EXPECT_EQ(library.credits().all(), (std::map<PhotoId, Credit>{{photo, Credit{}}}));
    EXPECT_THROW(
        library.credits().set(std::vector{photo}, Credit{Whose::photographer, "", {}, {}, {}}),
        StoreError);
    EXPECT_THROW(library.credits().set(std::vector{PhotoId{99}}, Credit{}), StoreError);
}

}  // namespace
}  // namespace quarterturn
