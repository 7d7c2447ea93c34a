#include "ui/all_photos/all_photos_screen.h"

#include <QAccessible>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>

#include "indexer/intake/bin.h"
#include "tests/ui/all_photos/all_photos_fixture.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choice_list.h"
#include "ui/widgets/empty_page.h"

namespace quarterturn {
namespace {

TEST_F(AllPhotosTest, CountsThePhotosAndSaysTheirOrder) {
    add_photos();
    show();
    EXPECT_TRUE(says(QStringLiteral("4 photos; newest first")));
}

TEST_F(AllPhotosTest, TypedWordsFindPhotosAndArrowsAndEnterOpenOne) {
    add_photos();
    show();
    type(QStringLiteral("mira"));
    EXPECT_TRUE(says(QStringLiteral("2 photos found; newest first")));
    QSignalSpy asked(&open.session, &Session::asked_for);
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    const auto place = asked[0][0].value<Place>();
    EXPECT_EQ(place.moment, Moment::round_the_head);
    EXPECT_EQ(place.photo, second);
    EXPECT_EQ(place.sitting, open.example.trial);
}

TEST_F(AllPhotosTest, WordsAreFoundWhileSheTypes) {
    add_photos();
    show();
    QTest::keyClicks(&field(), QStringLiteral("com"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("1 photo found")); }));
}

TEST_F(AllPhotosTest, ANewSearchBeginsAtTheTopAndComingBackKeepsThePlace) {
    Tags noted;
    noted.note = "pinned low";
    for (int i = 0; i < 200; ++i) add(std::to_string(i) + ".jpg", "2026-10-01T12:00:00", noted);
    show();
    QScrollBar& bar = *shelves().verticalScrollBar();
    shelves().setFocus();
    press(Qt::Key_End);
    ASSERT_GT(bar.value(), 0);
    QTest::keyClicks(&field(), QStringLiteral("pinned"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("200 photos found")); }));
    EXPECT_EQ(bar.value(), 0);
    EXPECT_EQ(with_text<QPushButton>(QStringLiteral("Put it into the bin")), nullptr)
        << "the photo she had chosen is out of sight";
    bar.setValue(bar.maximum() / 2);
    const int place = bar.value();
    show();
    constexpr int less_than_a_row = 64;  // the line of words above can be higher or lower then
    EXPECT_NEAR(bar.value(), place, less_than_a_row);
    QTest::keyClick(&field(), Qt::Key_Backspace);
    QTest::keyClick(&field(), Qt::Key_Return);
    EXPECT_EQ(bar.value(), 0);
}

TEST_F(AllPhotosTest, WhatDeleteWouldTakeIsMarkedWhereverTheKeyboardIs) {
    add_photos();
    show();
    shelves().setFocus();
    press(Qt::Key_Home);
    auto* flawed = with_text<QPushButton>(QStringLiteral("Has a flaw"));
    QTest::mouseClick(flawed, Qt::LeftButton);
    flawed->setFocus();
    show_active(screen);
    ASSERT_NE(with_text<QPushButton>(QStringLiteral("Put it into the bin")), nullptr);
    const QImage chosen = shelves().viewport()->grab().toImage();
    shelves().setCurrentIndex({});
    EXPECT_EQ(with_text<QPushButton>(QStringLiteral("Put it into the bin")), nullptr);
    EXPECT_NE(shelves().viewport()->grab().toImage(), chosen);
}

TEST_F(AllPhotosTest, AMatchIsMarkedBelowItsPhoto) {
    add_photos();
    show();
    EXPECT_EQ(washed_pixels(), 0);
    type(QStringLiteral("comb"));
    EXPECT_GT(washed_pixels(), 20);
}

TEST_F(AllPhotosTest, APhotoThatLiesNowhereIsOpenedWherePhotosArePlaced) {
    add_photos();
    show();
    shelves().setFocus();
    press(Qt::Key_End);
    QSignalSpy asked(&open.session, &Session::asked_for);
    press(Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<Place>().moment, Moment::bringing_in);
    EXPECT_EQ(asked[0][0].value<Place>().photo, last);
}

TEST_F(AllPhotosTest, EscapeShowsAllAgain) {
    add_photos();
    show();
    type(QStringLiteral("comb"));
    EXPECT_TRUE(says(QStringLiteral("1 photo found")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("4 photos; newest first")));
    EXPECT_EQ(field().text(), QString());
    for (const auto& [key, modifier] :
         {std::pair(Qt::Key_F, Qt::ControlModifier), std::pair(Qt::Key_Slash, Qt::NoModifier)}) {
        shelves().setFocus();
        press(key, modifier);
        EXPECT_TRUE(field().hasFocus());
    }
}

TEST_F(AllPhotosTest, WhatWasLookedForInVainIsSaidWithAWayOut) {
    add_photos();
    show();
    type(QStringLiteral("veil"));
    EXPECT_TRUE(says(QStringLiteral("No photo was found for “veil”.")));
    auto* all = with_text<QPushButton>(QStringLiteral("Show all photos"));
    ASSERT_NE(all, nullptr);
    QTest::mouseClick(all, Qt::LeftButton);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("4 photos; newest first")));
}

TEST_F(AllPhotosTest, AChosenClientStandsThereAsAWordThatCanBeTakenAway) {
    add_photos();
    show();
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("Client")), Qt::LeftButton);
    auto* list = screen.findChild<ChoiceList*>();
    ASSERT_NE(list, nullptr);
    QTest::keyClick(list->findChild<QListWidget*>(), Qt::Key_Return);
    show_active(screen);
    auto* word = with_text<QPushButton>(QStringLiteral("Mira Okonjo-Lindqvist"));
    ASSERT_NE(word, nullptr);
    EXPECT_TRUE(says(QStringLiteral("2 photos found")));
    QTest::mouseClick(word, Qt::LeftButton);
    EXPECT_TRUE(says(QStringLiteral("4 photos; newest first")));
}

TEST_F(AllPhotosTest, FlawedAndUnplacedAreOnePressAway) {
    add_photos();
    show();
    auto* flawed = with_text<QPushButton>(QStringLiteral("Has a flaw"));
    QTest::mouseClick(flawed, Qt::LeftButton);
    EXPECT_TRUE(says(QStringLiteral("1 photo found")));
    QTest::mouseClick(flawed, Qt::LeftButton);
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("Not placed yet")), Qt::LeftButton);
    EXPECT_TRUE(says(QStringLiteral("2 photos found")));
}

TEST_F(AllPhotosTest, EachPhotoIsDescribedToThoseWhoCannotSeeIt) {
    add_photos();
    show();
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&shelves());
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->childCount(), 4);
    const QString words = list->child(0)->text(QAccessible::Name);
    for (const char* part : {"Mira Okonjo-Lindqvist", "after", "left", "10:12", "out of focus"}) {
        EXPECT_TRUE(words.contains(QString::fromLatin1(part)))
            << part << " in " << words.toStdString();
    }
    EXPECT_TRUE(list->child(2)->text(QAccessible::Name).contains(QStringLiteral("not placed yet")));
    EXPECT_EQ(list->child(1)->rect().size(),
              shelves().visualRect(shelves().model()->index(1, 0)).size());
}

TEST_F(AllPhotosTest, TheCurrentPhotoStaysWhenRecordsChange) {
    add_photos();
    show();
    shelves().setCurrentIndex(shelves().model()->index(2, 0));
    open.session.change_photos([&](Library& records) {
        Tags tags;
        tags.sitting = open.example.trial;
        records.history().apply({"placed", {{last, tags}}, {}});
    });
    EXPECT_EQ(shelves().currentIndex().row(), 3) << "the placed one lies before it now";
    open.session.undo();
    EXPECT_EQ(shelves().currentIndex().row(), 2);
}

TEST_F(AllPhotosTest, DeletePutsTheChosenPhotoIntoTheBinAndEnterTakesItOutThere) {
    add_photos();
    const auto kept = library().photos().find(first);
    show();
    shelves().setFocus();
    press(Qt::Key_Home);
    press(Qt::Key_Delete);
    EXPECT_TRUE(says(QStringLiteral("3 photos; newest first")));
    EXPECT_FALSE(library().photos().find(first));
    EXPECT_EQ(shelves().currentIndex().row(), 0) << "the next one comes";
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("In the bin")), Qt::LeftButton);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("1 photo found")));
    EXPECT_TRUE(says(QStringLiteral("Gone for good: 1 photo on Monday, 7 December 2026.")));
    shelves().setFocus();
    press(Qt::Key_Home);
    press(Qt::Key_Delete);
    EXPECT_EQ(library().bin().all().size(), 1U) << "it is there already";
    press(Qt::Key_Return);
    EXPECT_EQ(library().photos().find(first), kept);
    EXPECT_TRUE(says(QStringLiteral("The bin is empty.")));
    open.session.undo();
    EXPECT_TRUE(says(QStringLiteral("1 photo found")));
    open.session.undo();
    EXPECT_EQ(library().photos().find(first), kept);
}

TEST_F(AllPhotosTest, TheBinIsEmptiedAfterAskingAlone) {
    add_photos();
    put_into_bin(library(), {{first, second, third, last}}, open.session.today());
    show();
    EXPECT_TRUE(says(QStringLiteral("All photos of the library lie in the bin.")));
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("In the bin")), Qt::LeftButton);
    show_active(screen);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    const auto ask = [&] {
        QTest::mouseClick(with_text<QPushButton>(QStringLiteral("Empty the bin…")), Qt::LeftButton);
    };
    ask();
    EXPECT_TRUE(says(QStringLiteral("4 photos of the bin will be gone for good now")));
    press(Qt::Key_Return);  // the button that changes nothing has the keyboard
    EXPECT_EQ(library().bin().all().size(), 4U);
    EXPECT_FALSE(says(QStringLiteral("will be gone for good now")));
    ask();
    for (QPushButton* button : screen.findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Empty the bin")) button->click();
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return !open.session.work(); }));
    EXPECT_TRUE(library().bin().all().empty());
    EXPECT_NE(screen.findChild<EmptyPage*>(), nullptr);
}

TEST_F(AllPhotosTest, RightToLeftTheFirstPhotoStandsAtTheRight) {
    add_photos();
    screen.setLayoutDirection(Qt::RightToLeft);
    show();
    const QRect newest = shelves().visualRect(shelves().model()->index(0, 0));
    const QRect next = shelves().visualRect(shelves().model()->index(1, 0));
    EXPECT_GT(newest.left(), next.right());
    EXPECT_EQ(shelves().indexAt(newest.center()).row(), 0);
    shelves().setFocus();
    shelves().setCurrentIndex(shelves().model()->index(0, 0));
    press(Qt::Key_Left);
    EXPECT_EQ(shelves().currentIndex().row(), 1);
}

TEST_F(AllPhotosTest, HasNoProblemsAtAnySize) {
    add_photos();
    for (int i = 0; i < 60; ++i) {
        add("more " + std::to_string(i) + ".jpg", "2026-10-01T12:00:00", {},
            i % 2 ? std::vector{Flaw::moved, Flaw::too_dark} : std::vector<Flaw>{});
    }
    show();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("Has a flaw")), Qt::LeftButton);
    field().setText(QStringLiteral("comb"));
    QTest::keyClick(&field(), Qt::Key_Return);  // looked for at once, not while Tab is pressed
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    type(QStringLiteral("nothing like it"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(AllPhotosTest, WithoutPhotosItSaysWhatBelongsHere) {
    show();
    EXPECT_EQ(problems_with(screen), QStringList());
    QSignalSpy asked(&open.session, &Session::asked_for);
    QTest::mouseClick(screen.findChild<EmptyPage*>()->findChild<QPushButton*>(), Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<Place>().moment, Moment::bringing_in);
}

}  // namespace
}  // namespace quarterturn
