#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/pairs/wall_page.h"

namespace quarterturn {
namespace {

TEST_F(PairsScreenTest, AfterLooksLikeAPairAllIsAsItWasBefore) {
    add_pairs();
    show();
    auto& field = *showing<QLineEdit>(screen, QString());
    QTest::keyClicks(&field, QStringLiteral("mira"));
    tick(QStringLiteral("low bun"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("2 pairs found")); }));
    const QString back = QStringLiteral("Back to the pairs");
    for (const bool by_key : {true, false}) {
        open_pair(1);
        press(Qt::Key_Escape);
        ASSERT_TRUE(wall().hasFocus());
        const PairsOnWall like{library().pairs().all()};
        screen.findChild<WallPage*>()->show_like(QStringLiteral("Like it"), {}, like);
        show_active(screen);
        EXPECT_TRUE(says(QStringLiteral("3 looks")));
        EXPECT_EQ(field.text(), QString()) << "words that do not count";
        showing<QPushButton>(screen, back)->setFocus();
        by_key ? press(Qt::Key_Escape) : click(back);
        EXPECT_TRUE(says(QStringLiteral("2 pairs found")));
        EXPECT_EQ(field.text(), QStringLiteral("mira"));
        EXPECT_TRUE(value(QStringLiteral("low bun"))->isChecked());
        EXPECT_TRUE(wall().hasFocus());
        EXPECT_EQ(wall().currentIndex().row(), 1);
    }
}

TEST_F(PairsScreenTest, WhoGoesBackIsNotFetchedToWhatIsLikeThePair) {
    add_pairs();
    show();
    open_pair(1);
    QTest::mouseClick(showing<QPushButton>(screen, QStringLiteral("More like this")),
                      Qt::LeftButton);
    press(Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.session.work() == nullptr; }, 20000));
    show_active(screen);
    EXPECT_FALSE(says(QStringLiteral("Looks most like")));
    EXPECT_TRUE(wall().hasFocus());
    EXPECT_EQ(wall().currentIndex().row(), 1);
}

TEST_F(PairsScreenTest, WhatIsLikeAPairTakesTheKeysAndEscapeLeadsBackToThePair) {
    add_pairs();
    show();
    open_pair(1);
    click(QStringLiteral("More like this"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Looks most like")); }, 20000));
    show_active(screen);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(screen.isAncestorOf(QApplication::focusWidget()));
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("3 pairs")));
    EXPECT_TRUE(wall().hasFocus());
    EXPECT_EQ(wall().currentIndex().row(), 1);
}

TEST_F(PairsScreenTest, OfWhatIsLikeAPairReturnOpensTheMostAlikeAndEscapeKnowsWhoAsked) {
    add_pairs();
    show();
    const std::vector<Pair> pairs = library().pairs().all();
    const QString asked = words_of(2);
    PairId from;
    const PairsOnWall like{pairs};
    wall().setCurrentIndex(wall().model()->index(2, 0));
    auto* page = screen.findChild<WallPage*>();
    for (const Pair& pair : pairs) {
        page->show_pair(pair.id);
        if (wall().currentIndex().row() == 2) from = pair.id;
    }
    wall().setCurrentIndex(wall().model()->index(0, 0));
    page->show_like(QStringLiteral("Like it"), {}, like, from);
    show_active(screen);
    EXPECT_EQ(wall().currentIndex().row(), 0);
    press(Qt::Key_Return);
    EXPECT_NE(showing<QPushButton>(screen, QStringLiteral("More like this")), nullptr);
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_EQ(words_of(wall().currentIndex().row()), asked);
}

}  // namespace
}  // namespace quarterturn
