// What is read at the mirror is read whole on the smallest laptop, with the largest text.

#include <QLineEdit>

#include "tests/ui/support/largest_text.h"
#include "tests/ui/wedding_morning/board_fixture.h"
#include "ui/wedding_morning/board_photos.h"
#include "ui/wedding_morning/client_cautions.h"

namespace quarterturn {
namespace {

class SmallBoardTest : LargestText, public BoardTest {
  protected:
    void shrink() {
        window->resize(1024, 640);
        (void)QTest::qWaitFor([&] { return problems().isEmpty(); });
    }
    QStringList problems() {
        show_active(*window);
        QStringList found = wider_than_their_pages(*window) + clipped_text(*window);
        if (window->width() != 1024) found << QStringLiteral("the window is wider");
        return found;
    }
    QRect in_window(const QWidget& part) { return {part.mapTo(&*window, QPoint()), part.size()}; }
};

TEST_F(SmallBoardTest, WhatToBewareOfIsReadWholeBeforeThePhotos) {
    Recipe recipe = board_recipe();
    recipe.cautions =
        "Allergic to the gum in strong sprays and to two colours, tender above both ears since "
        "the last sitting; a wound at the nape that heals: ask before every comb.";
    open.session.library().recipes().save(open.example.look, recipe, at("2026-11-08T12:00"));
    open.session.touch();
    shrink();
    EXPECT_EQ(problems(), QStringList());
    ASSERT_EQ(seen<ClientCautions>().size(), 1);
    const QRect cautions = in_window(*seen<ClientCautions>().front());
    EXPECT_LE(cautions.right(), window->width());
    EXPECT_LT(cautions.bottom(), in_window(*seen<BoardPhotos>().front()).top());
    EXPECT_GE(photo(Angle::front)->height(), 200);
}

TEST_F(SmallBoardTest, SoItIsOfAClientWithoutALook) {
    go_to(tilda);
    shrink();
    EXPECT_EQ(problems(), QStringList());
}

TEST_F(SmallBoardTest, InAWideWindowPhotosStandBesideTheRecipeAgain) {
    shrink();
    window->resize(1600, 900);
    ASSERT_TRUE(QTest::qWaitFor([&] {
        show_active(*window);
        return in_window(*seen<ClientCautions>().front()).left() >
               in_window(*seen<BoardPhotos>().front()).right();
    }));
    EXPECT_EQ(wider_than_their_pages(*window), QStringList());
}

TEST_F(SmallBoardTest, LongNamesOfLooksStepsAndTimersBreakIntoLines) {
    Look evening;
    evening.client = open.example.mira;
    evening.wedding = open.example.wedding;
    evening.worn = Worn::evening;
    evening.name = "let down in soft waves that are pinned behind the left ear with the leaf comb";
    open.session.library().looks().add(evening);
    open.session.touch();
    QTest::mouseClick(button(QStringLiteral("Timer")), Qt::LeftButton);
    QLineEdit* name = nullptr;
    for (QLineEdit* field : seen<QLineEdit>()) {
        if (field->accessibleName() == QStringLiteral("Name of the timer")) name = field;
    }
    ASSERT_NE(name, nullptr);
    name->setText(
        QStringLiteral("the large rollers at the back and those at both her sides, which "
                       "have to be quite cold before they are taken out"));
    QTest::keyClick(name, Qt::Key_Return);
    ASSERT_EQ(seen<TimerPill>().size(), 1);
    shrink();
    EXPECT_EQ(problems(), QStringList());
}

}  // namespace
}  // namespace quarterturn
