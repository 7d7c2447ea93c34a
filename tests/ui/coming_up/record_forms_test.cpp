// Records added and changed where they are shown.

#include "tests/ui/coming_up/coming_up_fixture.h"

namespace quarterturn {
namespace {

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

}  // namespace
}  // namespace quarterturn
