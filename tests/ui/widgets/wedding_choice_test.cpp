#include "ui/widgets/wedding_choice.h"

#include <QGuiApplication>

#include <gtest/gtest.h>

#include "indexer/record/time.h"

namespace quarterturn {
namespace {

std::vector<Wedding> two_boathouses() {
    std::vector<Wedding> weddings;
    for (const char* date : {"2027-05-15", "2026-05-15"}) {
        Wedding wedding;
        wedding.id = WeddingId{std::ssize(weddings) + 1};
        wedding.name = "Boathouse";
        wedding.date = parse_date(date).value();
        weddings.push_back(wedding);
    }
    return weddings;
}

TEST(WeddingChoice, TellsWeddingsApartByTheirYear) {
    WeddingChoice choice;
    choice.show_weddings(two_boathouses(), std::nullopt);
    ASSERT_EQ(choice.count(), 2);
    EXPECT_TRUE(choice.itemText(0).contains(QStringLiteral("2027")));
    EXPECT_TRUE(choice.itemText(1).contains(QStringLiteral("2026")));
}

TEST(WeddingChoice, TakesTheOneWishedForElseTheFirst) {
    WeddingChoice choice;
    EXPECT_EQ(choice.show_weddings({}, WeddingId{2}), std::nullopt);
    EXPECT_EQ(choice.show_weddings(two_boathouses(), WeddingId{2}), WeddingId{2});
    EXPECT_EQ(choice.currentIndex(), 1);
    EXPECT_EQ(choice.show_weddings(two_boathouses(), WeddingId{9}), WeddingId{1});
}

// UAX 9: a day that leads a line from right to left would be torn from its month.
TEST(WeddingChoice, KeepsTheDayTogetherWhereLinesRunToTheLeft) {
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    WeddingChoice choice;
    choice.show_weddings(two_boathouses(), std::nullopt);
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    constexpr QChar isolate(0x2068);
    EXPECT_EQ(choice.itemText(0).front(), isolate);
    EXPECT_EQ(choice.itemText(0).count(isolate), 2);
}

}  // namespace
}  // namespace quarterturn
