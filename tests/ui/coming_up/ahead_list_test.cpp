#include "ui/coming_up/ahead_list.h"

#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/coming_up/coming_up_screen.h"
#include "ui/coming_up/occasion_card.h"
#include "ui/coming_up/past_list.h"
#include "ui/widgets/page.h"

namespace quarterturn {
namespace {

class AheadListTest : public testing::Test {
  protected:
    void add_trial(const std::string& day) {
        Sitting trial;
        trial.client = open.example.mira;
        trial.starts = at((day + "T10:00").c_str());
        trial.ends = at((day + "T12:00").c_str());
        open.session.library().sittings().add(trial);
    }
    void show() {
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }
    std::vector<Date> days() {
        std::vector<OccasionCard*> cards;
        for (auto* card : screen.findChildren<OccasionCard*>()) cards.push_back(card);
        std::ranges::sort(cards, {}, [](const OccasionCard* card) { return card->y(); });
        std::vector<Date> days;
        for (const OccasionCard* card : cards) days.push_back(card->occasion().date);
        return days;
    }
    OccasionCard* card_of(const char* day) {
        for (auto* card : screen.findChildren<OccasionCard*>()) {
            if (card->occasion().date == parse_date(day)) return card;
        }
        return nullptr;
    }

    OpenSession open;
    ComingUpScreen screen{open.session};
};

TEST_F(AheadListTest, AlsoWhatDoesNotFitIntoTheWindowComesByItselfAndInOrder) {
    for (int day = 10; day < 30; ++day) add_trial("2026-12-" + std::to_string(day));
    show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return days().size() == 22; }));
    show_active(screen);
    const auto shown = days();
    EXPECT_TRUE(std::ranges::is_sorted(shown));
    EXPECT_EQ(iso_text(shown.back()), "2026-12-29");
}

TEST_F(AheadListTest, AlsoALookThatDidNotFitIntoTheWindowSaysWhatItLacks) {
    for (int day = 10; day < 20; ++day) add_trial("2026-11-" + std::to_string(day));
    show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return days().size() == 12; }));
    const OccasionCard* last = card_of("2026-11-21");
    ASSERT_NE(last, nullptr);
    const LookAhead& look = last->occasion().clients.front().looks.front();
    ASSERT_TRUE(look.standing.has_value());
    EXPECT_FALSE(look.standing->lacks.empty());
}

TEST_F(AheadListTest, WhatIsPastComesBelowAllThatIsAhead) {
    for (int day = 10; day < 30; ++day) add_trial("2026-12-" + std::to_string(day));
    add_trial("2026-10-10");
    show();
    auto* past = screen.findChild<PastList*>();
    EXPECT_TRUE(QTest::qWaitFor([&] { return past->isVisible(); }));
    EXPECT_EQ(days().size(), 22U);
}

TEST_F(AheadListTest, EndLeadsToTheEndAlsoWhileCardsFollow) {
    for (int day = 10; day < 30; ++day) add_trial("2026-12-" + std::to_string(day));
    add_trial("2026-10-10");
    screen.resize(1280, 500);
    screen.refresh();
    screen.show();
    auto* bar = screen.findChild<QScrollArea*>()->verticalScrollBar();
    ASSERT_LT(days().size(), 22U) << "some cards still wait";
    ASSERT_TRUE(scroll_by_key(screen, Qt::Key_End));
    auto* past = screen.findChild<PastList*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return days().size() == 22 && past->isVisible(); }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar->value() == bar->maximum(); }));
    show_active(screen);
    EXPECT_EQ(bar->value(), bar->maximum());
}

TEST_F(AheadListTest, TheKeyboardStaysWhereNothingHasChanged) {
    show();
    auto* button = card_of("2026-11-21")->findChild<QPushButton*>();
    button->setFocus();
    add_trial("2026-11-09");
    screen.refresh();
    show_active(screen);
    EXPECT_EQ(QApplication::focusWidget(), button);
    const auto shown = days();
    EXPECT_EQ(shown.size(), 3U);
    EXPECT_TRUE(std::ranges::is_sorted(shown));
}

TEST_F(AheadListTest, ACardFollowsItsRecords) {
    show();
    Wedding wedding = open.session.library().weddings().find(open.example.wedding).value();
    wedding.date = parse_date("2026-11-06").value();
    open.session.library().weddings().change(wedding);
    screen.refresh();
    show_active(screen);
    EXPECT_EQ(card_of("2026-11-21"), nullptr);
}

}  // namespace
}  // namespace quarterturn
