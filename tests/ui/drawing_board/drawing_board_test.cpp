#include "ui/drawing_board/drawing_board.h"

#include <QAccessible>
#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/rules/drawing_on_head.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/drawing_board/drawing_words.h"
#include "ui/painter/head_drawing.h"

namespace quarterturn {
namespace {

class DrawingBoardTest : public testing::Test {
  protected:
    DrawingBoardTest() {
        board.resize(800, 560);
        canvas = board.findChild<HeadCanvas*>();
        show_active(board);
    }

    QPoint at(PlanPoint point) const { return in_head_box(canvas->head_box(), point).toPoint(); }

    void draw(const std::vector<PlanPoint>& way) {
        QTest::mousePress(canvas, Qt::LeftButton, {}, at(way.front()));
        for (std::size_t i = 1; i < way.size(); ++i) {
            for (int step = 1; step <= 10; ++step) {
                const double share = step / 10.0;
                QTest::mouseMove(canvas, at({std::lerp(way[i - 1].x, way[i].x, share),
                                             std::lerp(way[i - 1].y, way[i].y, share)}));
            }
        }
        QTest::mouseRelease(canvas, Qt::LeftButton, {}, at(way.back()));
    }

    void choose_tool(const QString& name) {
        for (auto* button : board.findChildren<QPushButton*>()) {
            if (button->text() == name) QTest::mouseClick(button, Qt::LeftButton);
        }
    }

    void press(Qt::Key key, int times = 1, Qt::KeyboardModifiers with = {}) {
        for (int i = 0; i < times; ++i) QTest::keyClick(canvas, key, with);
    }

    static void expect_near(PlanPoint is, PlanPoint wanted) {
        EXPECT_NEAR(is.x, wanted.x, 0.03);
        EXPECT_NEAR(is.y, wanted.y, 0.03);
    }

    HeadDrawing example() const {
        return {{{StrokeKind::parting, {{-0.3, -0.9}, {-0.25, 0}}},
                 {StrokeKind::section, {{-0.9, 0}, {0, 0.3}, {0.9, 0}}}},
                {{1, {0, 0.6}, "comb"}}};
    }

    DrawingBoard board;
    HeadCanvas* canvas;
};

TEST_F(DrawingBoardTest, APartingDrawnWithTheMouseLiesWhereTheHandWent) {
    QSignalSpy changed(&board, &DrawingBoard::changed);
    draw({{-0.3, -0.9}, {-0.3, 0}});
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    const Stroke stroke = board.drawing().strokes.front();
    EXPECT_EQ(stroke.kind, StrokeKind::parting);
    ASSERT_EQ(stroke.points.size(), 2U);
    expect_near(stroke.points.front(), {-0.3, -0.9});
    expect_near(stroke.points.back(), {-0.3, 0});
    EXPECT_EQ(changed.size(), 1);
}

TEST_F(DrawingBoardTest, ASectionDrawnAllTheWayRoundCloses) {
    choose_tool(QStringLiteral("Section"));
    draw({{-0.4, 0.2}, {0.4, 0.2}, {0.4, 0.7}, {-0.4, 0.7}, {-0.4, 0.25}});
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    EXPECT_EQ(board.drawing().strokes.front().kind, StrokeKind::section);
    EXPECT_TRUE(goes_round(board.drawing().strokes.front()));
    EXPECT_EQ(drawing_words(board.drawing()), QStringLiteral("section round the back"));
}

TEST_F(DrawingBoardTest, LeftStaysLeftWhereTextRunsFromRightToLeft) {
    board.setLayoutDirection(Qt::RightToLeft);
    show_active(board);
    EXPECT_LT(at({-1, 0}).x(), at({1, 0}).x());
    draw({{-0.9, 0}, {-0.3, 0}});
    EXPECT_LT(board.drawing().strokes.at(0).points.front().x, -0.8);
}

TEST_F(DrawingBoardTest, AMarkIsDroppedAndItsWordsAreWrittenAtOnce) {
    choose_tool(QStringLiteral("Mark"));
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at({0.5, 0.5}));
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("comb, from above"));
    ASSERT_EQ(board.drawing().marks.size(), 1U);
    EXPECT_EQ(board.drawing().marks[0].number, 1);
    EXPECT_EQ(board.drawing().marks[0].words, "comb, from above");
    expect_near(board.drawing().marks[0].at, {0.5, 0.5});
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(canvas->hasFocus());
    EXPECT_TRUE(canvas->accessibleName().contains(
        QStringLiteral("mark 1 at back right: comb, from above")));
}

TEST_F(DrawingBoardTest, WhatIsTouchedIsTakenOut) {
    board.show_drawing(example());
    choose_tool(QStringLiteral("Take out"));
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at({0, 0.6}));
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at({-0.28, -0.5}));
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at({0.6, -0.6}));
    EXPECT_TRUE(board.drawing().marks.empty());
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    EXPECT_EQ(board.drawing().strokes[0].kind, StrokeKind::section);
}

// From the crown: four steps to the left, then two up.
TEST_F(DrawingBoardTest, ALineIsDrawnFromTheKeyboardAlone) {
    canvas->setFocus(Qt::TabFocusReason);
    press(Qt::Key_2);
    press(Qt::Key_Left, 4);
    press(Qt::Key_Space);
    press(Qt::Key_Up, 2);
    press(Qt::Key_Space);
    press(Qt::Key_Right, 1, Qt::ShiftModifier);
    press(Qt::Key_Return);
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    EXPECT_EQ(board.drawing().strokes[0],
              (Stroke{StrokeKind::section, {{-0.4, 0}, {-0.4, -0.2}, {-0.38, -0.2}}}));
}

TEST_F(DrawingBoardTest, EscapeLeavesALineThatIsOpen) {
    canvas->setFocus(Qt::TabFocusReason);
    press(Qt::Key_Space);
    press(Qt::Key_Up, 3);
    EXPECT_TRUE(canvas->hint().contains(QStringLiteral("begins at crown")));
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    EXPECT_TRUE(board.drawing().strokes.empty());
}

TEST_F(DrawingBoardTest, TabGoesThroughWhatIsDrawnAndDeleteTakesItOut) {
    board.show_drawing(example());
    canvas->setFocus(Qt::TabFocusReason);
    QTest::keyClick(canvas, Qt::Key_Tab);
    EXPECT_TRUE(canvas->hint().contains(QStringLiteral("parting from front to crown")));
    QTest::keyClick(canvas, Qt::Key_Tab);
    EXPECT_TRUE(
        canvas->accessibleDescription().contains(QStringLiteral("section from left to right")));
    press(Qt::Key_Delete);
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    EXPECT_EQ(board.drawing().strokes[0].kind, StrokeKind::parting);
    QTest::keyClick(canvas, Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(canvas->chosen(), 1U);  // the mark
    EXPECT_TRUE(canvas->hasFocus());
}

TEST_F(DrawingBoardTest, TabLeavesAfterTheLast) {
    board.show_drawing(example());
    canvas->setFocus(Qt::TabFocusReason);
    for (int i = 0; i < 4; ++i) QTest::keyClick(canvas, Qt::Key_Tab);
    EXPECT_FALSE(canvas->hasFocus());
    EXPECT_EQ(canvas->chosen(), std::nullopt);
}

TEST_F(DrawingBoardTest, UndoAndRedoGoBackAndForthWithinTheDrawing) {
    draw({{0, -0.9}, {0, 0}});
    choose_tool(QStringLiteral("Mark"));
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at({0, 0.5}));
    const HeadDrawing all = board.drawing();
    canvas->setFocus();
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(board.drawing().marks.empty());
    EXPECT_EQ(board.drawing().strokes.size(), 1U);
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(board.drawing(), HeadDrawing{});
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(board.drawing(), all);
}

TEST_F(DrawingBoardTest, LeavesUndoToTheWindowWhenThereIsNothingToUndo) {
    QAction window_undo;
    window_undo.setShortcut(QKeySequence::Undo);
    board.addAction(&window_undo);
    QSignalSpy undone(&window_undo, &QAction::triggered);
    canvas->setFocus();
    draw({{0, -0.9}, {0, 0}});
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.size(), 0);
    EXPECT_EQ(board.drawing(), HeadDrawing{});
    QTest::keyClick(canvas, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.size(), 1);
}

TEST_F(DrawingBoardTest, AFingerDrawsAsTheMouseDoes) {
    static QPointingDevice* const screen = QTest::createTouchDevice();  // Qt keeps it for ever
    QTest::touchEvent(canvas, screen).press(0, at({0.2, -0.8}), canvas);
    for (int step = 1; step <= 20; ++step) {
        QTest::touchEvent(canvas, screen).move(0, at({0.2, -0.8 + 0.04 * step}), canvas);
    }
    QTest::touchEvent(canvas, screen).release(0, at({0.2, 0}), canvas);
    ASSERT_EQ(board.drawing().strokes.size(), 1U);
    expect_near(board.drawing().strokes[0].points.back(), {0.2, 0});
}

TEST_F(DrawingBoardTest, ShowsADrawingWithoutCallingItAChange) {
    QSignalSpy changed(&board, &DrawingBoard::changed);
    board.show_drawing(example());
    EXPECT_EQ(board.drawing(), example());
    EXPECT_EQ(changed.size(), 0);
    EXPECT_EQ(board.findChild<QLineEdit*>()->text(), QStringLiteral("comb"));
}

TEST_F(DrawingBoardTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_with(board), QStringList());
    board.show_drawing(example());
    EXPECT_EQ(problems_with(board), QStringList());
}

}  // namespace
}  // namespace quarterturn
