// pdfinfo and pdftotext are Poppler's.

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include "indexer/looks/photo_gate.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/ui/consent/consent_fixture.h"
#include "ui/consent/history_card.h"
#include "ui/consent/said_form.h"

namespace quarterturn {
namespace {

void write_words(const Path& file, const std::string& words) {
    write_bytes(file, std::as_bytes(std::span(words)));
}

std::string words_in(const Path& file) {
    const auto bytes = read_bytes(file);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

Date day(const char* iso) {
    return parse_date(iso).value();
}

TEST_F(ConsentScreenTest, NothingRecordedMeansNo) {
    int not_asked = 0;
    for (const auto* label : screen.findChildren<QLabel*>()) {
        not_asked += label->isVisible() && label->text() == "Not asked" ? 1 : 0;
    }
    EXPECT_EQ(not_asked, 7);
    EXPECT_TRUE(says("What is not granted counts as no."));
    EXPECT_TRUE(says("no legal advice"));
    EXPECT_FALSE(button("Withdraw everything…")->isEnabled());
}

TEST_F(ConsentScreenTest, GrantsWithWhatWasSaid) {
    press("Grant…: website");
    press("Print");
    press("With her face");
    press("Only until");
    field<QLineEdit>("Note")->setText("asks for the back view first");
    press("Record it");
    ASSERT_EQ(entries().size(), 2U);
    EXPECT_EQ(entries()[0].use, Use::website);
    EXPECT_EQ(entries()[1].use, Use::print);
    for (const ConsentEntry& entry : entries()) {
        EXPECT_EQ(entry.said, ConsentSaid::granted);
        EXPECT_EQ(entry.shown, ShownAs::with_her_face);
        EXPECT_EQ(entry.until, day("2028-11-07"));
        EXPECT_EQ(entry.how, HowGiven::signed_form);
        EXPECT_EQ(entry.note, "asks for the back view first");
    }
    EXPECT_TRUE(says("Granted, with her face, until"));
    EXPECT_TRUE(says("Website: granted, with her face"));  // in the history
    EXPECT_EQ(button("Record it"), nullptr);
    EXPECT_TRUE(button("Change…: website")->hasFocus());
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(ConsentScreenTest, HairOnlyUnlessSheSaysMore) {
    press("Grant…: teaching");
    press("Record it");
    EXPECT_EQ(entries().at(0).shown, ShownAs::hair_only);
}

TEST_F(ConsentScreenTest, SpokenWordsNeedAWitness) {
    press("Decline…: competition");
    field<QComboBox>("How she said it")->setCurrentIndex(2);
    press("Record it");
    EXPECT_TRUE(entries().empty());
    EXPECT_TRUE(says("witness"));
    field<QLineEdit>("The witness who heard it")->setText("Ines Berg");
    press("Record it");
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_EQ(entries()[0].said, ConsentSaid::declined);
    EXPECT_EQ(entries()[0].witness, "Ines Berg");
    EXPECT_TRUE(says("Declined"));
    EXPECT_TRUE(says("spoken before Ines Berg"));
}

TEST_F(ConsentScreenTest, AGuardianSpeaksForAChild) {
    press("Grant…: website");
    auto* age = field<QComboBox>("How old she is");
    age->setCurrentIndex(1);
    emit age->activated(1);
    press("Record it");
    EXPECT_TRUE(entries().empty());  // her guardian's name is missing
    auto* giver = field<QComboBox>("Who said it");
    giver->setCurrentIndex(0);
    press("Record it");
    EXPECT_TRUE(entries().empty());
    EXPECT_TRUE(says("is 14 or under: a parent or guardian decides"));
    giver->setCurrentIndex(1);
    field<QLineEdit>("Name of her parent or guardian")->setText("Ines Berg");
    press("Record it");
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_EQ(entries()[0].giver, ConsentGiver::guardian);
    EXPECT_EQ(entries()[0].age, AgeBand::up_to_14);
    EXPECT_TRUE(says("A parent or guardian decides"));
    EXPECT_TRUE(says("by her parent or guardian Ines Berg"));
}

TEST_F(ConsentScreenTest, AScanIsCopiedInAndCheckedAgain) {
    const Path scan = open.example.folder / "signed.pdf";
    write_words(scan, "%PDF scan");
    press("Grant…: website");
    screen.findChild<SaidForm*>()->attach(scan);
    press("Record it");
    ASSERT_EQ(entries().at(0).papers.size(), 1U);
    const ConsentPaper paper = entries()[0].papers[0];
    EXPECT_EQ(words_in(library().folder() / paper.path), "%PDF scan");
    EXPECT_TRUE(says("signed.pdf, attached on"));
    const auto checked = [&](const QString& words) {
        press("Check the attached files");
        return QTest::qWaitFor([&] { return says(words); });
    };
    EXPECT_TRUE(checked("They are all as they were when attached."));
    write_words(library().folder() / paper.path, "%PDF other");
    EXPECT_TRUE(checked("is no longer the file that was attached"));
}

TEST_F(ConsentScreenTest, AScanCanBeAttachedLater) {
    record_consent(library(), granted(), std::array{Use::website});
    open.session.touch();
    const Path scan = open.example.folder / "later.pdf";
    write_words(scan, "%PDF later");
    screen.findChild<HistoryCard*>()->attach(entries()[0].id, scan);
    QCoreApplication::processEvents();
    EXPECT_EQ(entries()[0].papers.size(), 1U);
    EXPECT_TRUE(says("later.pdf, attached on"));
    EXPECT_TRUE(says("1 file attached"));
}

struct Withdrawing : ConsentScreenTest {
    Withdrawing() {
        const auto under =
            record_consent(library(), granted(), std::array{Use::website, Use::print});
        photo = example_photo("bun-back.jpg");
        photo.tags.look = open.example.look;
        photo.id = library().photos().add(photo);
        library().credits().set(std::array{photo.id}, Credit{});
        library().credits().set_seen(photo.id, {false, false, false});
        Exported out;
        out.photo = photo.id;
        out.photo_name = photo.file.name;
        out.use = Use::website;
        out.at = at("2026-11-07T07:00");
        out.file = "/home/website/website-0001.jpg";
        out.under = {under.front().id};
        exported = library().ledger().add(out);
        library().ledger().add_place(exported, "gallery, third page");
        open.session.touch();
    }

    Photo photo;
    ExportId exported;
};

TEST_F(Withdrawing, IsAsEasyAsGrantingAndSaysWhatIsOutThere) {
    EXPECT_FALSE(says("To take down"));
    press("Withdraw…: website");
    press("Record it");
    EXPECT_TRUE(says("Choose how she said it"));
    EXPECT_EQ(entries().size(), 2U);
    field<QComboBox>("How she said it")->setCurrentIndex(1);
    press("Record it");
    ASSERT_EQ(entries().size(), 3U);
    EXPECT_EQ(entries().back().said, ConsentSaid::withdrawn);
    EXPECT_EQ(entries().back().use, Use::website);
    EXPECT_TRUE(says("To take down"));
    EXPECT_TRUE(says("bun-back.jpg"));
    EXPECT_TRUE(says("/home/website/website-0001.jpg"));
    EXPECT_TRUE(says("gallery, third page"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press("bun-back.jpg was taken down");
    EXPECT_FALSE(says("To take down"));
    EXPECT_EQ(library().ledger().find(exported)->taken_down->on, day("2026-11-07"));
}

TEST_F(Withdrawing, EverythingInOneGo) {
    press("Withdraw everything…");
    field<QComboBox>("How she said it")->setCurrentIndex(1);
    press("Record it");
    EXPECT_EQ(uses_to_withdraw(library(), open.example.mira),
              std::vector<Use>{});
    EXPECT_EQ(entries().size(), 4U);
    EXPECT_FALSE(button("Withdraw everything…")->isEnabled());
    EXPECT_EQ(
        PhotoGate(library()).may_go(photo, Use::print, day("2026-11-07")).against.at(0).obstacle,
        Obstacle::withdrawn);
}

TEST_F(Withdrawing, WhatWasSaidStaysInTheHistory) {
    press("Withdraw…: print");
    field<QComboBox>("How she said it")->setCurrentIndex(1);
    press("Record it");
    EXPECT_TRUE(says("Print: granted, hair only"));
    EXPECT_TRUE(says("Print: withdrawn"));
    open.session.undo();
    EXPECT_EQ(entries().size(), 3U);
}

TEST_F(ConsentScreenTest, EscapeLeavesEverythingAsItWas) {
    press("Grant…: website");
    QTest::keyClick(field<QLineEdit>("Note"), Qt::Key_Escape);
    EXPECT_EQ(button("Record it"), nullptr);
    EXPECT_TRUE(entries().empty());
    EXPECT_TRUE(button("Grant…: website")->hasFocus());
}

TEST_F(ConsentScreenTest, WhoIsLedHereIsAskedAboutThatUse) {
    screen.arrive(
        {.moment = Moment::consent, .client = open.example.mira, .use = Use::social_media});
    screen.refresh();
    EXPECT_TRUE(button("Social media")->isChecked());
    EXPECT_FALSE(button("Website")->isChecked());
}

TEST_F(ConsentScreenTest, TheFormIsSavedAsPdf) {
    const Path file = open.example.folder / "form.pdf";
    screen.save_form_to(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says("Saved:"); }));
    const std::string words = output_of("pdftotext -layout " + shell_word(file.string()) + " -");
    EXPECT_NE(words.find("Mira Okonjo-Lindqvist"), std::string::npos);
    EXPECT_NE(words.find("ocial media"), std::string::npos);
    EXPECT_NE(words.find("starting point"), std::string::npos);
}

TEST_F(ConsentScreenTest, SaysWhatTheFormLacksAndLeadsThere) {
    press(
        "The form leaves a line for who keeps the photos and how you are reached: set your "
        "business and its contact.");
    ASSERT_TRUE(went_to);
    EXPECT_EQ(went_to->moment, Moment::settings);
}

TEST_F(ConsentScreenTest, HasNoProblemsWithTheFormOpen) {
    press("Grant…: website");
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(ConsentScreen, TeachesWhereThereIsNoClient) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    ConsentScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
