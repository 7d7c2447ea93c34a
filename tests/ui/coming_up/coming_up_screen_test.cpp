#include "ui/coming_up/coming_up_screen.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/looks/consents.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/coming_up/occasion_card.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

class ComingUpScreenTest : public testing::Test {
  protected:
    ComingUpScreenTest() {
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    template <class Widget>
    Widget* called(const QString& name) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->accessibleName() == name) return widget;
        }
        return nullptr;
    }
    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text() == text) return found;
        }
        return nullptr;
    }
    void press(const QString& text) {
        ASSERT_NE(button(text), nullptr) << text.toStdString();
        QTest::mouseClick(button(text), Qt::LeftButton);
        show_active(screen);
    }
    QList<OccasionCard*> cards() { return screen.findChildren<OccasionCard*>(); }
    Library& library() { return open.session.library(); }

    OpenSession open;
    ComingUpScreen screen{open.session};
};

TEST_F(ComingUpScreenTest, ShowsTodaysTrialFirstThenTheWedding) {
    ASSERT_EQ(cards().size(), 2);
    EXPECT_EQ(cards()[0]->accessibleName(), QStringLiteral("Trial, Mira Okonjo-Lindqvist"));
    EXPECT_EQ(cards()[1]->accessibleName(), QStringLiteral("Wedding of Okonjo-Lindqvist and Vale"));
}

TEST_F(ComingUpScreenTest, AClickOnWhatIsLackingGoesThere) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    auto* link = called<SentenceLink>(QStringLiteral("No photos yet."));
    ASSERT_NE(link, nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    const auto place = asked.front().front().value<Place>();
    EXPECT_EQ(place.moment, Moment::bringing_in);
    EXPECT_EQ(place.look, open.example.look);
    EXPECT_EQ(place.sitting, open.example.trial);
}

TEST_F(ComingUpScreenTest, RemindsOfWhatEndsSoonAndOfWhatHasToBeTakenDown) {
    ConsentEntry entry;
    entry.client = open.example.mira;
    entry.said = ConsentSaid::granted;
    entry.said_on = parse_date("2026-11-01").value();
    entry.until = parse_date("2026-12-01").value();
    entry.recorded_at = at("2026-11-01T10:00");
    record_consent(library(), entry, std::array{Use::website});
    Exported gone;
    gone.photo = PhotoId{99};
    gone.at = at("2026-11-02T10:00");
    library().ledger().add(gone);
    screen.refresh();
    show_active(screen);
    EXPECT_NE(called<SentenceLink>("1 picture went out and may not be shown any longer."), nullptr);
    auto* ends = called<SentenceLink>(
        "Mira Okonjo-Lindqvist allows to be shown on a website until 2026-12-01.");
    ASSERT_NE(ends, nullptr);
    QSignalSpy asked(&open.session, &Session::asked_for);
    QTest::mouseClick(ends, Qt::LeftButton);
    EXPECT_EQ(asked.at(0).front().value<Place>().moment, Moment::portfolio);
    EXPECT_EQ(problems_with(screen), QStringList());
}

// What she waits for first are her weddings.
TEST_F(ComingUpScreenTest, RemindsTheFirstTimeOnceItIsPaintedAndThenOfWhatChanges) {
    const auto reminders = [](const ComingUpScreen& of) {
        const auto links = of.findChildren<SentenceLink*>();
        return std::ranges::count_if(links, [](const SentenceLink* link) {
            return link->text().contains(QStringLiteral("may not be shown any longer"));
        });
    };
    Exported gone;
    gone.photo = PhotoId{99};
    gone.at = at("2026-11-02T10:00");
    library().ledger().add(gone);
    ComingUpScreen first(open.session);
    first.refresh();
    EXPECT_EQ(reminders(first), 0);
    show_active(first);
    EXPECT_TRUE(QTest::qWaitFor([&] { return reminders(first) == 1; }));
    first.refresh();
    EXPECT_EQ(reminders(first), 1) << "nothing has changed";
    gone.photo = PhotoId{98};
    library().ledger().add(gone);
    first.refresh();
    const auto links = first.findChildren<SentenceLink*>();
    EXPECT_TRUE(std::ranges::any_of(links, [](const SentenceLink* link) {
        return link->text().startsWith(QStringLiteral("2 pictures"));
    }));
}

TEST_F(ComingUpScreenTest, TheNextThingToDoIsAButton) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    press(QStringLiteral("Bring photos in"));
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked.front().front().value<Place>().moment, Moment::bringing_in);
}

TEST_F(ComingUpScreenTest, OnTheDayTheBoardIsTheNextThing) {
    const auto kind = [&] {
        return button(QStringLiteral("The wedding morning"))->property("kind").toString();
    };
    EXPECT_NE(kind(), QStringLiteral("next"));
    Wedding wedding = *library().weddings().find(open.example.wedding);
    wedding.date = open.session.today();
    library().weddings().change(wedding);
    screen.refresh();
    show_active(screen);
    EXPECT_EQ(kind(), QStringLiteral("next"));
}

TEST_F(ComingUpScreenTest, ANameLeadsToHerRecordsAndAWeddingToWhatToPack) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    SentenceLink* name = nullptr;
    for (auto* link : screen.findChildren<SentenceLink*>()) {
        if (link->text().contains(QStringLiteral("Mira Okonjo-Lindqvist"))) name = link;
    }
    ASSERT_NE(name, nullptr);
    EXPECT_TRUE(name->accessibleName().startsWith(QStringLiteral("Records of")));
    name->setFocus();
    QTest::keyClick(name, Qt::Key_Return);
    press(QStringLiteral("What to pack"));
    press(QStringLiteral("The wedding morning"));
    ASSERT_EQ(asked.size(), 3);
    const auto record = asked[0].front().value<Place>();
    EXPECT_EQ(record.moment, Moment::client_record);
    EXPECT_EQ(record.client, open.example.mira);
    const auto kit = asked[1].front().value<Place>();
    EXPECT_EQ(kit.moment, Moment::kit_list);
    EXPECT_EQ(kit.wedding, open.example.wedding);
    const auto board = asked[2].front().value<Place>();
    EXPECT_EQ(board.moment, Moment::wedding_morning);
    EXPECT_EQ(board.wedding, open.example.wedding);
}

TEST_F(ComingUpScreenTest, AddsAWeddingWithANewBrideAndTakesItBack) {
    press(QStringLiteral("Add a wedding"));
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Wedding of")), "Adeyemi and Sato");
    called<QDateEdit>(QStringLiteral("Day"))->setDate(QDate(2026, 11, 9));
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Ready by")), "9.30");
    called<QComboBox>(QStringLiteral("Name"))->setCurrentText(QStringLiteral("Ngozi Adeyemi"));
    press(QStringLiteral("Save"));

    const auto weddings = library().weddings().named("Adeyemi and Sato");
    ASSERT_EQ(weddings.size(), 1u);
    EXPECT_EQ(weddings[0].ready_by, "09:30");
    EXPECT_EQ(iso_text(weddings[0].date), "2026-11-09");
    ASSERT_EQ(weddings[0].party.size(), 1u);
    EXPECT_EQ(library().clients().find(weddings[0].party[0].client)->name, "Ngozi Adeyemi");
    EXPECT_EQ(cards().size(), 3);

    open.session.undo();
    EXPECT_TRUE(library().weddings().named("Adeyemi and Sato").empty());
    EXPECT_TRUE(library().clients().named("Ngozi Adeyemi").empty());
    open.session.redo();
    EXPECT_EQ(library().weddings().named("Adeyemi and Sato"), weddings);
}

TEST_F(ComingUpScreenTest, SaysBesideTheFieldsWhatIsWrongAndKeepsWhatWasTyped) {
    press(QStringLiteral("Add a wedding"));
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Wedding of")), "Adeyemi and Sato");
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Ready by")), "noonish");
    press(QStringLiteral("Save"));
    auto* notice = screen.findChild<Notice*>();
    ASSERT_NE(notice, nullptr);
    EXPECT_TRUE(notice->isVisible());
    EXPECT_TRUE(notice->said().contains(QStringLiteral("noonish")));
    EXPECT_EQ(called<QLineEdit>(QStringLiteral("Wedding of"))->text(),
              QStringLiteral("Adeyemi and Sato"));
    EXPECT_EQ(library().weddings().all().size(), 1u);
}

TEST_F(ComingUpScreenTest, ChangesAWeddingInItsCard) {
    press(QStringLiteral("Change the wedding"));
    auto* venue = called<QLineEdit>(QStringLiteral("Venue"));
    ASSERT_NE(venue, nullptr);
    EXPECT_EQ(venue->text(), QStringLiteral("The Old Granary"));
    venue->setText(QStringLiteral("The Boat House"));
    press(QStringLiteral("Save"));
    EXPECT_EQ(library().weddings().find(open.example.wedding)->venue, "The Boat House");
    EXPECT_EQ(library().weddings().find(open.example.wedding)->party.size(), 1u);
}

TEST_F(ComingUpScreenTest, TellsTwoClientsOfOneNameApart) {
    const Wedding before = library().weddings().find(open.example.wedding).value();
    const Client bride = library().clients().find(before.party.front().client).value();
    Client namesake;
    namesake.name = bride.name;
    Wedding both = before;
    both.party.push_back({library().clients().add(namesake), "cousin"});
    library().weddings().change(both);
    screen.refresh();
    show_active(screen);
    press(QStringLiteral("Change the wedding"));
    called<QLineEdit>(QStringLiteral("Venue"))->setText(QStringLiteral("The Boat House"));
    press(QStringLiteral("Save"));
    EXPECT_EQ(library().weddings().find(before.id)->party, both.party);
}

TEST_F(ComingUpScreenTest, TheSameNewNameTwiceIsTwoPeople) {
    press(QStringLiteral("Add a wedding"));
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Wedding of")), "Adeyemi and Sato");
    press(QStringLiteral("Add someone to the party"));
    for (auto* name : screen.findChildren<QComboBox*>()) {
        if (name->accessibleName() == QStringLiteral("Name")) {
            name->setCurrentText(QStringLiteral("Ngozi Adeyemi"));
        }
    }
    press(QStringLiteral("Save"));
    const auto weddings = library().weddings().named("Adeyemi and Sato");
    ASSERT_EQ(weddings.size(), 1u);
    ASSERT_EQ(weddings[0].party.size(), 2u);
    EXPECT_NE(weddings[0].party[0].client, weddings[0].party[1].client);
}

TEST_F(ComingUpScreenTest, EscapeLeavesEverythingAsItWas) {
    press(QStringLiteral("Change the wedding"));
    called<QLineEdit>(QStringLiteral("Venue"))->setText(QStringLiteral("nowhere"));
    QTest::keyClick(called<QLineEdit>(QStringLiteral("Venue")), Qt::Key_Escape);
    show_active(screen);
    EXPECT_EQ(library().weddings().find(open.example.wedding)->venue, "The Old Granary");
    EXPECT_NE(button(QStringLiteral("Change the wedding")), nullptr);
}

TEST_F(ComingUpScreenTest, PlansASecondTrialForTheSameWeddingAndLooks) {
    press(QStringLiteral("Plan a second trial"));
    called<QDateEdit>(QStringLiteral("Day"))->setDate(QDate(2026, 11, 12));
    press(QStringLiteral("Save"));
    const auto sittings = library().sittings().of_client(open.example.mira);
    ASSERT_EQ(sittings.size(), 2u);
    EXPECT_EQ(sittings[1].kind, SittingKind::trial);
    EXPECT_EQ(sittings[1].wedding, open.example.wedding);
    EXPECT_EQ(iso_text(date_of(sittings[1].starts)), "2026-11-12");
    EXPECT_EQ(library().looks().find(open.example.look)->sittings,
              (std::vector{open.example.trial, sittings[1].id}));
    open.session.undo();
    EXPECT_EQ(library().sittings().of_client(open.example.mira).size(), 1u);
    EXPECT_EQ(library().looks().find(open.example.look)->sittings, std::vector{open.example.trial});
}

TEST_F(ComingUpScreenTest, AddsALookForAClientOfTheParty) {
    QTest::mouseClick(called<QPushButton>(QStringLiteral("Add a look for Mira Okonjo-Lindqvist")),
                      Qt::LeftButton);
    show_active(screen);
    QTest::keyClicks(called<QLineEdit>(QStringLiteral("Look")), "let down");
    called<QComboBox>(QStringLiteral("Worn"))->setCurrentText(QStringLiteral("evening"));
    press(QStringLiteral("Save"));
    const auto looks = library().looks().named("let down");
    ASSERT_EQ(looks.size(), 1u);
    EXPECT_EQ(looks[0].worn, Worn::evening);
    EXPECT_EQ(looks[0].client, open.example.mira);
    EXPECT_EQ(looks[0].wedding, open.example.wedding);
}

TEST_F(ComingUpScreenTest, TabGoesThroughAFormInReadingOrder) {
    press(QStringLiteral("Change the wedding"));
    press(QStringLiteral("Add someone to the party"));
    ASSERT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Name"));
    QStringList stops;
    for (int i = 0; i < 5; ++i) {
        QTest::keyClick(screen.windowHandle(), Qt::Key_Tab);
        const auto* stop = qobject_cast<QPushButton*>(QApplication::focusWidget());
        stops << (stop ? stop->text() : QApplication::focusWidget()->accessibleName());
    }
    EXPECT_EQ(stops, (QStringList{"Role in the party", "Remove", "Add someone to the party", "Save",
                                  "Leave as it was"}));
}

TEST_F(ComingUpScreenTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press(QStringLiteral("Change the wedding"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(ComingUpScreenTest, LongNamesInOtherScriptsFit) {
    Wedding wedding = *library().weddings().find(open.example.wedding);
    wedding.name =
        "Αλεξάνδρα Παπαδοπούλου-Κωνσταντινοπούλου and عائشة بنت عبد الرحمن and 長谷川 小百合";
    wedding.venue = std::string(120, 'W');
    library().weddings().change(wedding);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(ComingUpScreenWithNothing, TeachesWhatBelongsHere) {
    const TemporaryFolder folder;
    NoDecoder decoder;
    Session session(real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); });
    ASSERT_EQ(session.create(folder / "library"), QString());
    ComingUpScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    EXPECT_EQ(screen.findChildren<OccasionCard*>().size(), 0);
}

}  // namespace
}  // namespace quarterturn
