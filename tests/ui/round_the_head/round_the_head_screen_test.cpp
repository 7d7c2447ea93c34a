#include "ui/round_the_head/round_the_head_screen.h"

#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>

#include "tests/ui/round_the_head/round_fixture.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/head_plan.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/sentence_link.h"

namespace quarterturn {
namespace {

TEST_F(RoundTest, TwentyFourPhotosAreEachPlacedWithOneKey) {
    add_photos(24);
    show();
    const std::array keys{Qt::Key_Up, Qt::Key_Left, Qt::Key_Down, Qt::Key_Right};
    const std::array angles{Angle::front, Angle::left, Angle::back, Angle::right};
    for (std::size_t i = 0; i < ids.size(); ++i) press(keys[i % 4]);
    for (std::size_t i = 0; i < ids.size(); ++i) {
        EXPECT_EQ(tags(ids[i]).angle, angles[i % 4]);
        EXPECT_EQ(tags(ids[i]).stage, Stage::before);
    }
    EXPECT_TRUE(waiting().empty());
}

TEST_F(RoundTest, WithShiftTheKeysReachTheFurtherAngles) {
    add_photos(4);
    show();
    for (const int key : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
        press(key, Qt::ShiftModifier);
    }
    EXPECT_EQ(tags(ids[0]).angle, Angle::left_three_quarter);
    EXPECT_EQ(tags(ids[1]).angle, Angle::right_three_quarter);
    EXPECT_EQ(tags(ids[2]).angle, Angle::crown);
    EXPECT_EQ(tags(ids[3]).angle, Angle::detail);
}

TEST_F(RoundTest, UndoBringsTheLastPhotosBackIntoTheHandOneByOne) {
    add_photos(3);
    show();
    press(Qt::Key_Up);
    press(Qt::Key_Left);
    open.session.undo();
    open.session.undo();
    EXPECT_EQ(waiting(), ids);
    press(Qt::Key_Down);
    EXPECT_EQ(tags(ids[0]).angle, Angle::back);
    EXPECT_FALSE(tags(ids[1]).angle);
    open.session.undo();
    open.session.redo();
    EXPECT_EQ(tags(ids[0]).angle, Angle::back);
}

TEST_F(RoundTest, ABurstIsOneTileAndAllItsFramesArePlacedTogether) {
    std::vector<PhotoId> burst;
    for (int i = 0; i < 3; ++i) {
        Photo photo =
            example_photo("B" + std::to_string(i) + ".jpg", taken_at("2026-11-07T10:20:00"));
        photo.file.taken->local += std::chrono::seconds(i);
        photo.file.device = open.example.phone;
        photo.fingerprint = 0x1234'5678'9abc'def0;
        photo.measures.focus = i == 1 ? 9 : 5;
        burst.push_back(add(photo));
    }
    show();
    EXPECT_EQ(waiting(), std::vector{burst[1]});
    press(Qt::Key_Left);
    for (const PhotoId frame : burst) EXPECT_EQ(tags(frame).angle, Angle::left);
    open.session.undo();
    for (const PhotoId frame : burst) EXPECT_FALSE(tags(frame).angle);
}

TEST_F(RoundTest, TheSuggestionIsAQuestionAndOneKeyTakesIt) {
    Photo photo = example_photo("left.jpg", taken_at("2026-11-07T10:20:00"));
    photo.suggestion.angle = Angle::left;
    photo.suggestion.angle_source = "file name";
    photo.suggestion.stage = Stage::after;
    const PhotoId id = add(photo);
    show();
    EXPECT_NE(with_text<QPushButton>(QStringLiteral("it is the left")), nullptr);
    EXPECT_FALSE(tags(id).angle);
    press(Qt::Key_Y);
    EXPECT_EQ(tags(id).angle, Angle::left);
    EXPECT_EQ(tags(id).stage, Stage::after);
    EXPECT_EQ(tags(id).look, open.example.look);
}

TEST_F(RoundTest, WhatSheSaidInsteadOfASuggestedStageHoldsForThePhotosAfterIt) {
    for (const char* name : {"a.jpg", "b.jpg"}) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:20:00"));
        photo.suggestion.stage = Stage::during;
        ids.push_back(add(photo));
    }
    show();
    press(Qt::Key_A);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    EXPECT_EQ(tags(ids[0]).stage, Stage::after);
    EXPECT_EQ(tags(ids[1]).stage, Stage::after);
}

TEST_F(RoundTest, TheOtherLookGetsThePhotosPlacedAfterItsKey) {
    Look evening;
    evening.client = open.example.mira;
    evening.name = "let down";
    evening.sittings = {open.example.trial};
    evening.id = library().looks().add(evening);
    add_photos(1);
    show();
    press(Qt::Key_A);
    press(Qt::Key_L);
    press(Qt::Key_Up);
    EXPECT_EQ(tags(ids[0]).look, evening.id);
}

TEST_F(RoundTest, MirroredTurnsThePictureAtOnce) {
    add_photos(1);
    show();
    press(Qt::Key_M);
    EXPECT_TRUE(tags(ids[0]).mirrored);
    for (const PhotoTile* tile : screen.findChildren<PhotoTile*>()) {
        EXPECT_TRUE(!tile->isVisible() || tile->look().mirrored);
    }
    press(Qt::Key_M);
    EXPECT_FALSE(tags(ids[0]).mirrored);
}

TEST_F(RoundTest, AFlawedPhotoIsUsedAnywayWithAReasonOnly) {
    Photo photo = example_photo("soft.jpg", taken_at("2026-11-07T10:20:00"));
    photo.flaws = {Flaw::out_of_focus};
    const PhotoId id = add(photo);
    show();
    press(Qt::Key_W);
    press(Qt::Key_Return);
    EXPECT_EQ(tags(id).accepted_because, "");
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("bad light, all the same"));
    EXPECT_FALSE(tags(id).stage) << "letters typed into the field are no keys of the screen";
    press(Qt::Key_Return);
    EXPECT_EQ(tags(id).accepted_because, "bad light, all the same");
}

TEST_F(RoundTest, ADisagreementStandsThereAsAQuestion) {
    Photo photo = example_photo("side.jpg", taken_at("2026-11-07T10:20:00"));
    HeadSigns signs;
    signs.profile_to_left = true;
    photo.head_signs = signs;
    const PhotoId id = add(photo);
    show();
    press(Qt::Key_Right);
    screen.arrive({.moment = Moment::round_the_head, .photo = id});
    screen.refresh();
    show_active(screen);
    const auto* notice = screen.findChild<Notice*>();
    ASSERT_NE(notice, nullptr);
    EXPECT_TRUE(notice->said().contains(QStringLiteral("mirror"))) << notice->said().toStdString();
}

TEST_F(RoundTest, APhotoDroppedOnThePlanLiesThere) {
    add_photos(2);
    show();
    QWidget* place = screen.findChild<HeadPlan*>()->place(Angle::back);
    const std::unique_ptr<QMimeData> data(carry_photos({ids[1]}));
    QDragEnterEvent enter(QPoint(10, 10), Qt::MoveAction, data.get(), Qt::LeftButton,
                          Qt::NoModifier);
    QApplication::sendEvent(place, &enter);
    QDropEvent drop(QPointF(10, 10), Qt::MoveAction, data.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(place, &drop);
    EXPECT_EQ(tags(ids[1]).angle, Angle::back);
    EXPECT_FALSE(tags(ids[0]).angle);
}

TEST_F(RoundTest, AClickOnWhatIsMissingGoesThere) {
    add_photos(1);
    show();
    press(Qt::Key_A);
    auto* link = with_text<SentenceLink>(QStringLiteral("No after photo of the back."));
    ASSERT_NE(link, nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    EXPECT_EQ(QApplication::focusWidget(), screen.findChild<HeadPlan*>()->place(Angle::back));
    press(Qt::Key_Space);
    EXPECT_EQ(tags(ids[0]).angle, Angle::back);
    EXPECT_EQ(tags(ids[0]).stage, Stage::after);
}

TEST_F(RoundTest, APlacedPhotoIsTakenUpMovedAndTakenOff) {
    add_photos(1);
    show();
    press(Qt::Key_Left);
    QTest::mouseClick(screen.findChild<HeadPlan*>()->place(Angle::left), Qt::LeftButton);
    press(Qt::Key_Right);
    EXPECT_EQ(tags(ids[0]).angle, Angle::right);
    QTest::mouseClick(screen.findChild<HeadPlan*>()->place(Angle::right), Qt::LeftButton);
    press(Qt::Key_Backspace);
    EXPECT_FALSE(tags(ids[0]).angle);
    EXPECT_EQ(waiting(), ids);
}

TEST_F(RoundTest, DeletePutsThePhotoInHandIntoTheBinAndUndoBringsItBackIntoTheHand) {
    add_photos(3);
    show();
    press(Qt::Key_Delete);
    EXPECT_EQ(waiting(), (std::vector{ids[1], ids[2]}));
    EXPECT_FALSE(library().photos().find(ids[0]));
    open.session.undo();
    EXPECT_EQ(waiting(), ids);
    press(Qt::Key_Right);
    EXPECT_EQ(tags(ids[0]).angle, Angle::right);
}

TEST_F(RoundTest, HasNoProblemsAtAnySize) {
    add_photos(12);
    Photo flawed = example_photo("flawed left.jpg", taken_at("2026-11-07T10:00:30"));
    flawed.flaws = {Flaw::out_of_focus, Flaw::too_dark};
    flawed.suggestion.angle = Angle::left;
    flawed.suggestion.angle_source = "file name";
    add(flawed);
    show();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(RoundTest, WithoutALookItSaysWhatBelongsHere) {
    const TemporaryFolder folder;
    { Library::create(folder / "empty"); }
    ASSERT_EQ(open.session.open(folder / "empty"), QString());
    RoundTheHeadScreen empty(open.session);
    empty.refresh();
    show_active(empty);
    EXPECT_EQ(problems_with(empty), QStringList());
    QSignalSpy asked(&open.session, &Session::asked_for);
    QTest::mouseClick(empty.findChild<EmptyPage*>()->findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_EQ(asked.size(), 1);
}

}  // namespace
}  // namespace quarterturn
