#include "indexer/looks/consents.h"
#include "indexer/looks/photo_gate.h"

#include <gtest/gtest.h>

#include "indexer/looks/consent_form.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

Date on(const char* iso) {
    return parse_date(iso).value();
}

struct ConsentWork : testing::Test, ExampleLibrary {
    ConsentWork() {
        photo = library.photos().add(example_photo("a.jpg"));
        library.credits().set(std::vector{photo}, Credit{});
        tag([&](Tags& tags) { tags.look = look; });
    }

    template <class Change>
    void tag(Change change) {
        Tags tags = library.photos().find(photo)->tags;
        change(tags);
        library.history().apply({"tagged", {{photo, tags}}, {}});
    }
    ConsentEntry said(ConsentSaid what, const char* day, ClientId client) {
        ConsentEntry entry;
        entry.client = client;
        entry.said = what;
        entry.said_on = on(day);
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = at("2027-06-01T10:00");
        return entry;
    }
    ConsentEntry grant(ClientId client, std::optional<Date> until = {}) {
        ConsentEntry entry = said(ConsentSaid::granted, "2026-11-07", client);
        entry.until = until;
        return record_consent(library, entry, std::vector{Use::website}).front();
    }
    std::vector<std::string> against(const char* day = "2026-11-08") {
        std::vector<std::string> words;
        const Photo found = library.photos().find(photo).value();
        for (const Against& each :
             PhotoGate(library).may_go(found, Use::website, on(day)).against) {
            words.emplace_back(word(each.obstacle));
        }
        return words;
    }
    ExportId send_out(const std::vector<ConsentId>& under) {
        Exported exported;
        exported.photo = photo;
        exported.use = Use::website;
        exported.under = under;
        return library.ledger().add(exported);
    }

    using Words = std::vector<std::string>;
    PhotoId photo;
};

TEST_F(ConsentWork, TheGateAsksEveryoneWhoIsShown) {
    EXPECT_EQ(against(), Words{"not asked"});
    grant(mira);
    EXPECT_EQ(against(), Words{});
    const ClientId pippa = library.clients().add(client_called("Pippa Vale"));
    tag([&](Tags& tags) { tags.shown = {pippa, mira}; });
    EXPECT_EQ(against(), Words{"not asked"});
    grant(pippa);
    EXPECT_EQ(against(), Words{});
    Wedding day = library.weddings().find(wedding).value();
    day.party.push_back({pippa, "flower girl"});
    library.weddings().change(day);
    EXPECT_EQ(against(), Words{"child's age"});
}

TEST_F(ConsentWork, TheGateAsksTheClientOfTheSittingTooAndKnowsNobodyOtherwise) {
    const ClientId other = library.clients().add(client_called("Tove"));
    Sitting sitting = library.sittings().find(trial).value();
    sitting.client = other;
    const SittingId hers = library.sittings().add(sitting);
    grant(mira);
    tag([&](Tags& tags) { tags.sitting = hers; });
    EXPECT_EQ(against(), Words{"not asked"});
    tag([&](Tags& tags) {
        tags.sitting.reset();
        tags.look.reset();
    });
    EXPECT_EQ(against(), Words{"nobody named"});
    library.credits().set_seen(photo, {{}, false, true});
    EXPECT_EQ(against(), Words{});
    library.credits().set_seen(photo, {{}, true, true});
    EXPECT_EQ(against(), Words{"strangers"});
}

TEST_F(ConsentWork, AllOrNoneIsRecorded) {
    ConsentEntry entry = said(ConsentSaid::granted, "2026-11-07", mira);
    entry.how = HowGiven::spoken;  // before nobody
    EXPECT_THROW(record_consent(library, entry, all_uses), StoreError);
    EXPECT_TRUE(library.consents().all().empty());
    entry.witness = "Tove";
    EXPECT_EQ(record_consent(library, entry, all_uses).size(), all_uses.size());
}

TEST_F(ConsentWork, OnlyWhatWasGrantedCanBeWithdrawn) {
    grant(mira);
    const ConsentEntry declined = said(ConsentSaid::declined, "2026-11-07", mira);
    record_consent(library, declined, std::vector{Use::print});
    EXPECT_EQ(uses_to_withdraw(library, mira), std::vector{Use::website});
}

// The computer's clock, or its time zone, was a day ahead when she said yes.
TEST_F(ConsentWork, ANoThatIsRecordedLaterHoldsWhateverTheClockSaid) {
    grant(mira);
    ConsentEntry no = said(ConsentSaid::withdrawn, "2026-11-05", mira);
    EXPECT_EQ(uses_to_withdraw(library, mira), std::vector{Use::website});
    record_consent(library, no, std::vector{Use::website});
    EXPECT_EQ(uses_to_withdraw(library, mira), std::vector<Use>{});
    for (const char* day : {"2026-11-05", "2026-11-07", "2099-01-01"}) {
        EXPECT_EQ(consent_on(library.consents().of(mira), Use::website, on(day)).standing,
                  Standing::withdrawn)
            << day;
    }
}

TEST_F(ConsentWork, AChildSaysNoByHerselfAndNeverYes) {
    const std::vector uses{Use::website};
    ConsentEntry yes = said(ConsentSaid::granted, "2026-11-08", mira);
    yes.age = AgeBand::at_15;
    EXPECT_THROW(record_consent(library, yes, uses), StoreError) << "by the age given";
    ConsentEntry no = said(ConsentSaid::declined, "2026-11-08", mira);
    no.age = AgeBand::at_15;
    record_consent(library, no, uses);
    yes.age.reset();
    EXPECT_THROW(record_consent(library, yes, uses), StoreError) << "by the age told before";
    yes.said_on = on("2026-11-01");
    EXPECT_THROW(record_consent(library, yes, uses), StoreError) << "she was younger still";
    EXPECT_EQ(library.consents().all().size(), 1U);
    yes.said_on = on("2026-11-08");
    yes.giver = ConsentGiver::guardian;
    yes.guardian = "Ines Berg";
    yes.age = AgeBand::at_15;
    record_consent(library, yes, uses);
    record_consent(library, said(ConsentSaid::withdrawn, "2026-11-09", mira), uses);
    yes.said_on = on("2029-11-08");
    yes.recorded_at = at("2029-11-08T10:00");
    yes.giver = ConsentGiver::herself;
    yes.guardian.clear();
    yes.age = AgeBand::from_18;
    EXPECT_EQ(record_consent(library, yes, uses).size(), 1U) << "she is grown";
}

TEST_F(ConsentWork, APaperIsCopiedInAndWatched) {
    const Path scan = folder / "scan.pdf";
    write_bytes(scan, std::as_bytes(std::span("signed", 6)));
    const ConsentEntry entry = grant(mira);
    const ConsentPaper paper =
        attach_paper(library, scan, std::vector{entry.id}, at("2026-11-08T09:00"));
    EXPECT_EQ(library.consents().find(entry.id)->papers, std::vector{paper});
    EXPECT_EQ(paper.sha256, sha256("signed"));
    EXPECT_EQ(read_bytes(library.folder() / paper.path), read_bytes(scan));
    EXPECT_EQ(problem_with_paper(library, paper), "");
    const ConsentPaper second =
        attach_paper(library, scan, std::vector{entry.id}, at("2026-11-08T09:00"));
    EXPECT_NE(second.path, paper.path) << "nothing is written over";
    write_bytes(library.folder() / paper.path, std::as_bytes(std::span("forged", 6)));
    EXPECT_NE(problem_with_paper(library, paper).find("no longer the file"), std::string::npos);
    std::filesystem::remove(library.folder() / paper.path);
    EXPECT_NE(problem_with_paper(library, paper).find("not there"), std::string::npos);
    const ConsentEntry hers = grant(library.clients().add(client_called("Tove")));
    EXPECT_THROW(attach_paper(library, scan, std::vector{entry.id, hers.id}, entry.recorded_at),
                 StoreError);
    EXPECT_THROW(attach_paper(library, scan, std::vector{ConsentId{99}}, entry.recorded_at),
                 StoreError);
}

TEST_F(ConsentWork, APaperThatAnInterruptedAttemptLeftIsTakenUp) {
    const Path scan = folder / "scan.pdf";
    write_bytes(scan, std::as_bytes(std::span("signed", 6)));
    const std::vector<ConsentId> entries{grant(mira).id};
    const Path left =
        library.folder() / attach_paper(library, scan, entries, at("2026-11-08T09:00")).path;
    const auto attached = library.consents().papers().size();
    const Path other = left.parent_path() / "other.pdf";
    std::filesystem::copy_file(scan, other);
    const ConsentPaper again = attach_paper(library, scan, entries, at("2026-11-08T09:01"));
    EXPECT_NE(library.folder() / again.path, left) << "that one is recorded";
    std::filesystem::copy_file(scan, folder / "other.pdf");
    const ConsentPaper taken_up =
        attach_paper(library, folder / "other.pdf", entries, at("2026-11-08T09:02"));
    EXPECT_EQ(library.folder() / taken_up.path, other);
    EXPECT_EQ(library.consents().papers().size(), attached + 2);
}

TEST_F(ConsentWork, APaperThatCannotBeWrittenLeavesNothing) {
    const Path scan = folder / "scan.pdf";
    write_bytes(scan, std::as_bytes(std::span("signed", 6)));
    const std::vector<ConsentId> entries{grant(mira).id};
    FailingDisk disk;
    library = Library::open(folder / "library", disk);
    disk.heal();
    attach_paper(library, scan, entries, at("2026-11-08T09:00"));
    const int calls = disk.calls();
    const auto kept = library.consents().papers();
    for (int call = 1; call <= calls; ++call) {
        disk.fail_call(call);
        EXPECT_THROW(attach_paper(library, scan, entries, at("2026-11-08T09:00")), DiskError)
            << call;
        disk.heal();
        EXPECT_EQ(library.consents().papers(), kept) << call;
    }
    library = Library::create(folder / "elsewhere");  // before its disk goes
}

TEST_F(ConsentWork, WhatMayNotBeOutThereAnyLongerIsATaskUntilItIsTickedOff) {
    const ConsentEntry entry = grant(mira, on("2027-05-31"));
    const ExportId out = send_out({entry.id});
    EXPECT_TRUE(ledger_tasks(library, on("2027-05-31"), 0).to_take_down.empty());
    const LedgerTasks ended = ledger_tasks(library, on("2027-06-01"), 0);
    ASSERT_EQ(ended.to_take_down.size(), 1U);
    EXPECT_EQ(ended.to_take_down.front().exported.id, out);
    EXPECT_NE(ended.to_take_down.front().why.front().find("until 2027-05-31"), std::string::npos);
    record_consent(library, said(ConsentSaid::withdrawn, "2027-01-10", mira),
                   std::vector{Use::website});
    EXPECT_EQ(ledger_tasks(library, on("2027-01-10"), 0).to_take_down.size(), 1U);
    library.ledger().take_down(out, {on("2027-01-11"), ""});
    EXPECT_TRUE(ledger_tasks(library, on("2027-06-01"), 0).to_take_down.empty());
}

TEST_F(ConsentWork, WhatEndsSoonIsSaidTheSoonestFirst) {
    grant(mira, on("2027-05-31"));
    library.credits().set(
        std::vector{photo},
        Credit{Whose::photographer, "Wren Aldous", {Use::website}, on("2027-05-20"), ""});
    EXPECT_TRUE(ledger_tasks(library, on("2027-05-01"), 18).ending_soon.empty());
    EXPECT_EQ(ledger_tasks(library, on("2027-05-01"), 19).ending_soon.size(), 1U);
    const auto ending = ledger_tasks(library, on("2027-05-01"), 30).ending_soon;
    ASSERT_EQ(ending.size(), 2U);
    EXPECT_EQ(ending[0].words, "The licence of Wren Aldous for 1 photo ends on 2027-05-20.");
    EXPECT_EQ(ending[1].words,
              "Mira Okonjo-Lindqvist allows to be shown on a website until 2027-05-31.");
    EXPECT_TRUE(ledger_tasks(library, on("2027-06-01"), 30).ending_soon.empty());
}

TEST_F(ConsentWork, TheFormsWordingIsHersOnceItIsWritten) {
    EXPECT_EQ(consent_form_wording(library), usual_consent_form());
    const Path file = write_consent_form_wording(library);
    EXPECT_THROW(write_consent_form_wording(library), DiskError) << "hers is never written over";
    const std::string own =
        "\xEF\xBB\xBF# Yes or no\r\n\r\nDear {client},\r\nplease tick.\r\n"
        "[uses]\r\n! Ask {business}.\r\n\r\nAge: ____ of {client}\r\n\r\n[sign]\r\n";
    write_bytes(file, std::as_bytes(std::span(own)));
    const auto blocks =
        form_blocks(consent_form_wording(library), {"Mira", "Pins and Paper", "", {}});
    const std::vector<FormBlock> expected{{FormPart::heading, "Yes or no"},
                                          {FormPart::paragraph, "Dear Mira, please tick."},
                                          {FormPart::uses, ""},
                                          {FormPart::framed, "Ask Pins and Paper."},
                                          {FormPart::paragraph, "Age: ____ of Mira", true},
                                          {FormPart::sign, ""}};
    EXPECT_EQ(blocks, expected);
}

// A fact that is not known is a line to fill in, and the sentence stays on the screen.
TEST_F(ConsentWork, AFactThatIsNotKnownMakesNoParagraphOneToFillInByHand) {
    const auto blocks = form_blocks("Call: {contact}\n", {});
    ASSERT_EQ(blocks.size(), 1U);
    EXPECT_NE(blocks[0].words.find("____"), std::string::npos);
    EXPECT_FALSE(blocks[0].by_hand);
}

TEST_F(ConsentWork, AFormOnWhichNothingCanBeSaidIsRefusedByItsName) {
    const Path file = library.folder() / consent_form_name;
    for (const char* wording : {"", "\n\n", "[uses]\n", "[sign]\n", "[uses]\n[sign]\n\xff"}) {
        write_bytes(file, std::as_bytes(std::span(std::string_view(wording))));
        try {
            consent_form_wording(library);
            ADD_FAILURE() << wording;
        } catch (const StoreError& refused) {
            EXPECT_NE(std::string(refused.what()).find(consent_form_name), std::string::npos);
        }
    }
}

}  // namespace
}  // namespace quarterturn
