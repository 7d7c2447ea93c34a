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
        std::vector<PairOnWall> like;
        for (const Pair& pair : library().pairs().all()) like.push_back({pair});
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

}  // namespace
}  // namespace quarterturn
