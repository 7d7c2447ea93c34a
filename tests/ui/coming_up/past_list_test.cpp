// What is past: found by name and opened by month, with the place and the keyboard kept.

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/coming_up/coming_up_screen.h"
#include "ui/coming_up/date_block.h"
#include "ui/coming_up/occasion_card.h"
#include "ui/coming_up/past_list.h"

namespace quarterturn {
namespace {

class PastListTest : public testing::Test {
  protected:
    // Sittings of one client, one a month, the last of them in October 2026.
    PastListTest() {
        Sitting old;
        old.client = library().clients().add(client_called("Ama Quaye"));
        for (int back = 0; back < 20; ++back) {
            const Date day =
                (std::chrono::year(2026) / 10 - std::chrono::months(back)) / std::chrono::day(2);
            old.starts = LocalTime(std::chrono::local_days(day)) + std::chrono::hours(10);
            old.ends = old.starts + std::chrono::hours(2);
            library().sittings().add(old);
        }
        screen.resize(1280, 500);
        screen.refresh();
        show_active(screen);
    }

    Library& library() { return open.session.library(); }
    QList<OccasionCard*> cards() { return screen.findChildren<OccasionCard*>(); }
    QPushButton* month(const QString& words) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text().contains(words)) return found;
        }
        return nullptr;
    }

    QWidget& field() { return *screen.findChild<PastList*>()->findChild<QLineEdit*>(); }
    QScrollArea& page() { return *screen.findChild<QScrollArea*>(); }
    int height_in_sight(const QWidget& widget) {
        return widget.mapTo(page().viewport(), QPoint()).y();
    }

    OpenSession open;
    ComingUpScreen screen{open.session};
};

TEST_F(PastListTest, TypingWaitsForAPauseAndWhatIsFoundStaysAsItIs) {
    Sitting old;
    old.client = library().clients().add(client_called("Noor Achterberg"));
    old.starts = at("2025-03-02T10:00");
    old.ends = at("2025-03-02T12:00");
    library().sittings().add(old);
    screen.refresh();
    show_active(screen);
    EXPECT_EQ(cards().size(), 2);
    QTest::keyClicks(&field(), "achter");
    EXPECT_EQ(cards().size(), 2) << "she is still typing";
    ASSERT_TRUE(QTest::qWaitFor([&] { return cards().size() == 3; }));
    const OccasionCard* found = cards().constLast();
    QTest::keyClicks(&field(), "b");
    QTest::keyClick(&field(), Qt::Key_Return);
    show_active(screen);
    ASSERT_EQ(cards().size(), 3);
    EXPECT_EQ(cards().constLast(), found);
    QTest::keyClicks(&field(), "zz");
    QTest::keyClick(&field(), Qt::Key_Return);
    show_active(screen);
    EXPECT_EQ(cards().size(), 2);
}

TEST_F(PastListTest, WhatIsFoundIsInSightBelowTheFieldWhichStays) {
    field().setFocus();
    page().ensureWidgetVisible(&field());
    QTest::keyClicks(&field(), "quay");
    QTest::keyClick(&field(), Qt::Key_Return);
    show_active(screen);
    ASSERT_TRUE(QTest::qWaitFor([&] { return height_in_sight(field()) <= 500 / 3; }));
    const int place = height_in_sight(field());
    ASSERT_EQ(cards().size(), 22);
    EXPECT_LT(height_in_sight(*cards()[2]), page().viewport()->height());
    QTest::keyClicks(&field(), "zz");
    QTest::keyClick(&field(), Qt::Key_Return);
    show_active(screen);
    EXPECT_EQ(cards().size(), 2);
    EXPECT_EQ(height_in_sight(field()), place);
}

TEST_F(PastListTest, EscapeEndsTheSearch) {
    field().setFocus();
    QTest::keyClicks(&field(), "nobody of this name");
    QTest::keyClick(&field(), Qt::Key_Return);
    EXPECT_EQ(month(QStringLiteral("October 2026")), nullptr);
    QTest::keyClick(&field(), Qt::Key_Escape);
    show_active(screen);
    EXPECT_EQ(static_cast<QLineEdit&>(field()).text(), QString());
    EXPECT_NE(month(QStringLiteral("October 2026")), nullptr);
    EXPECT_TRUE(field().hasFocus());
}

TEST_F(PastListTest, TheKeyboardStaysOnTheMonthThatWasPressed) {
    month(QStringLiteral("October 2026"))->setFocus();
    for (const int shown : {3, 2}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        show_active(screen);
        EXPECT_EQ(cards().size(), shown);
        EXPECT_EQ(QApplication::focusWidget()->accessibleName(),
                  QStringLiteral("October 2026: 1 sitting"));
    }
    month(QStringLiteral("Show 8 earlier months"))->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    show_active(screen);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(),
              QStringLiteral("October 2025: 1 sitting"));
}

TEST(DistanceInWords, TellsYearsOnceThereAreAny) {
    const Date today = parse_date("2026-11-27").value();
    const auto words = [&](const char* day) {
        return distance_in_words(parse_date(day).value(), today).toStdString();
    };
    EXPECT_EQ(words("2026-11-20"), "7 days ago");
    EXPECT_EQ(words("2026-11-06"), "3 weeks ago");
    EXPECT_EQ(words("2025-11-28"), "52 weeks ago");
    EXPECT_EQ(words("2025-11-27"), "1 year ago");
    EXPECT_EQ(words("2021-04-05"), "5 years ago");
}

}  // namespace
}  // namespace quarterturn
