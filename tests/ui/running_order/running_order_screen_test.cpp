// pdfinfo and pdftotext are Poppler's.

#include "tests/ui/running_order/running_order_fixture.h"

namespace quarterturn {
namespace {

TEST_F(RunningOrderScreenTest, ShowsTheBestPlanWithNamesForThoseWhoCannotSeeIt) {
    EXPECT_TRUE(says("All can be ready in time."));
    EXPECT_TRUE(says("Nobody is late, and every rule is kept."));
    const SeatBar* set = bar(bride, SeatPart::set);
    ASSERT_NE(set, nullptr);
    EXPECT_EQ(set->accessibleName(),
              QStringLiteral("Mira Okonjo-Lindqvist, set, stylist %1, 11:05 to 11:35")
                  .arg(set->seat().stylist + 1));
    EXPECT_EQ(bar(bride, SeatPart::finish)->seat().ends, 12 * 60 + 30);
    EXPECT_FALSE(button(QStringLiteral("Plan it anew"))->isEnabled());
}

TEST_F(RunningOrderScreenTest, WhatIsMissingIsSaidAndGivenRightThere) {
    const ClientId aunt = open.session.library().clients().add(client_called("Aud Vale"));
    wedding.party = {{aunt, "aunt"}};
    wedding.ready_by.clear();
    open.session.library().weddings().change(wedding);
    open.session.touch();
    screen.refresh();
    EXPECT_TRUE(says("Nobody can be planned yet. This is missing:"));
    auto* gaps = screen.findChild<GapsPart*>();
    EXPECT_EQ(gaps->findChildren<SentenceLink*>().size(), 2);
    auto* minutes = gaps->findChild<QSpinBox*>();
    ASSERT_NE(minutes, nullptr);
    minutes->setValue(35);
    QTest::mouseClick(button(QStringLiteral("Plan with these minutes")), Qt::LeftButton);
    screen.refresh();
    auto* time = gaps->findChild<TimeWords*>();
    ASSERT_NE(time, nullptr);
    QTest::keyClicks(time, QStringLiteral("12:00"));
    QTest::keyClick(time, Qt::Key_Return);
    screen.refresh();
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar(aunt, SeatPart::set) != nullptr; }));
    EXPECT_EQ(bar(aunt, SeatPart::set)->seat().begins, 11 * 60 + 25);
    EXPECT_FALSE(gaps->isVisible());
    open.session.undo();
    open.session.undo();
    screen.refresh();
    EXPECT_TRUE(says("Nobody can be planned yet"));
}

TEST_F(RunningOrderScreenTest, AnEmptyPartyIsSaidWithTheWayToAddIt) {
    wedding.party.clear();
    open.session.library().weddings().change(wedding);
    open.session.touch();
    screen.refresh();
    EXPECT_TRUE(says("Nobody is in the party yet"));
    ASSERT_NE(button(QStringLiteral("Add the party")), nullptr);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(RunningOrderScreenTest, WishesChangeThePlanAndAreUndone) {
    auto* stylists = screen.findChild<QSpinBox*>();
    ASSERT_EQ(stylists->accessibleName(), QStringLiteral("Number of stylists"));
    stylists->setValue(1);
    EXPECT_EQ(kept().stylists.size(), 1U);
    ASSERT_TRUE(QTest::qWaitFor([this] { return says("As it is planned"); }));
    EXPECT_EQ(bar(bride, SeatPart::set)->seat().stylist, 0);
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().stylist, 0);
    open.session.undo();
    EXPECT_EQ(kept().stylists.size(), 2U);
}

TEST_F(RunningOrderScreenTest, TakesATimeOfHersAndSaysWhichIsNone) {
    TimeWords* ready_by = nullptr;
    for (auto* field : screen.findChildren<TimeWords*>()) {
        if (field->accessibleName() == QStringLiteral("Ready by")) ready_by = field;
    }
    ASSERT_NE(ready_by, nullptr);
    EXPECT_EQ(ready_by->placeholderText(), QStringLiteral("12:30"));
    ready_by->setFocus();
    QTest::keyClicks(ready_by, QStringLiteral("half past"));
    QTest::keyClick(ready_by, Qt::Key_Return);
    EXPECT_TRUE(says("is no time of day"));
    ready_by->clear();
    QTest::keyClicks(ready_by, QStringLiteral("6:30"));
    QTest::keyClick(ready_by, Qt::Key_Return);
    EXPECT_FALSE(says("is no time of day"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return says("▲  Not all can be ready in time"); }));
    EXPECT_TRUE(consequences().contains(QStringLiteral("Mira Okonjo-Lindqvist is ready at")));
    open.session.undo();
    EXPECT_TRUE(QTest::qWaitFor([this] { return says("All can be ready in time."); }));
    EXPECT_EQ(ready_by->text(), QString());
}

TEST_F(RunningOrderScreenTest, AClientWithoutMinutesIsNamedWithTheWayToHerRecipe) {
    Morning morning = kept();
    wish_of(morning, bride).work.reset();
    open.session.library().mornings().save(wedding.id, morning);
    show();
    std::optional<Place> asked;
    QObject::connect(&open.session, &Session::asked_for, &screen,
                     [&](const Place& place) { asked = place; });
    SentenceLink* link = nullptr;
    for (auto* found : screen.findChildren<SentenceLink*>()) {
        if (found->isVisible() && found->text().contains(QStringLiteral("minutes yet")))
            link = found;
    }
    ASSERT_NE(link, nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    ASSERT_TRUE(asked.has_value());
    EXPECT_EQ(asked->moment, Moment::recipe);
    EXPECT_EQ(asked->look, open.example.look);
    EXPECT_EQ(bar(bride, SeatPart::set), nullptr);
}

TEST_F(RunningOrderScreenTest, SavesThePlanAsAPage) {
    const Path file = open.example.folder / "order.pdf";
    screen.save_to(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says("Saved:"); }));
    const std::string text =
        output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() + " -");
    for (const char* words : {"Running order", "11:05 to 11:35", "Ada Lindqvist", "Stylist 2"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(RunningOrderScreenTest, HasNoProblemsAtAnySize) {
    Morning morning = kept();
    morning.stylists[0].breaks = {{660, 675}};
    wish_of(morning, ada).ready_by = 400;
    open.session.library().mornings().save(wedding.id, morning);
    show();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(RunningOrderScreen, TeachesWhereThereIsNoWedding) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    RunningOrderScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
