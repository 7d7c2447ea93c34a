#include "ui/sign_off/sign_off_screen.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/indexer/looks/whole_look.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/sign_off/files_part.h"
#include "ui/sign_off/seal_mark.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/sentence_link.h"

namespace quarterturn {
namespace {

class SignOffScreenTest : public testing::Test {
  protected:
    SignOffScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
    }

    void show() {
        screen.arrive({.moment = Moment::sign_off, .look = whole.look});
        screen.refresh();
        show_active(screen);
    }

    template <class Widget>
    Widget* with_text(const QString& part) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->text().contains(part)) return widget;
        }
        return nullptr;
    }

    void press(const QString& text) {
        auto* button = with_text<QPushButton>(text);
        ASSERT_NE(button, nullptr) << text.toStdString();
        button->setFocus();
        QTest::keyClick(button, Qt::Key_Return);
        show_active(screen);
    }

    void sign() {
        press(QStringLiteral("Sign it off"));
        ASSERT_TRUE(QTest::qWaitFor([this] { return screen.findChild<SealMark*>() != nullptr; }));
        show_active(screen);
    }

    void give_reason(const QString& reason) {
        QTest::keyClicks(QApplication::focusWidget(), reason);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        show_active(screen);
    }

    bool may_be_signed() {
        QPushButton* button = nullptr;
        const auto is_there = [&] {
            button = with_text<QPushButton>(QStringLiteral("Sign it off"));
            return button != nullptr;
        };
        if (!QTest::qWaitFor(is_there)) throw std::runtime_error("no button to sign with");
        return button->isEnabled();
    }

    std::optional<SignOff> standing() { return session.library().sign_offs().standing(whole.look); }

    WholeLook whole;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T13:30:00"); }};
    const QString problem = session.open(whole.folder / "library");
    SignOffScreen screen{session};  // as in the window: made once a library is open
};

TEST_F(SignOffScreenTest, SignsAWholeLookAndShowsTheSeal) {
    show();
    sign();
    ASSERT_TRUE(standing());
    EXPECT_EQ(standing()->signed_at, at("2026-11-07T13:30:00"));
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Signed off on")), nullptr);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("8 photos and the recipe are sealed")), nullptr);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Nothing has changed since")), nullptr);
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(SignOffScreenTest, AChangeAfterwardsIsToldAndItIsOpenedAgainWithAReasonOnly) {
    show();
    sign();
    whole.tag(whole.photos[0], [](Tags& tags) { tags.mirrored = true; });
    screen.refresh();
    show_active(screen);
    bool told = false;
    for (const auto* notice : screen.findChildren<Notice*>()) {
        told = told || (notice->isVisible() && notice->said().contains(QStringLiteral("IMG_411")));
    }
    EXPECT_TRUE(told);
    press(QStringLiteral("Open it again…"));
    give_reason({});
    EXPECT_TRUE(standing());
    give_reason(QStringLiteral("the veil sits higher"));
    EXPECT_FALSE(standing());
    EXPECT_NE(with_text<QLabel>(QStringLiteral("the veil sits higher")), nullptr);
}

TEST_F(SignOffScreenTest, AGapStandsInTheWayUntilItIsWaivedWithAReason) {
    whole.tag(whole.photos[0], [](Tags& tags) { tags.angle = Angle::detail; });
    show();
    EXPECT_FALSE(may_be_signed());
    QSignalSpy asked(&session, &Session::asked_for);
    auto* gap = with_text<SentenceLink>(QStringLiteral("No before photo of"));
    ASSERT_NE(gap, nullptr);
    QTest::mouseClick(gap, Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked.front().front().value<Place>().moment, Moment::round_the_head);
    press(QStringLiteral("Waive it…"));
    give_reason(QStringLiteral("as the other side"));
    EXPECT_EQ(session.library().looks().waivers(whole.look).size(), 1U);
    EXPECT_TRUE(may_be_signed());
    session.undo();
    EXPECT_TRUE(session.library().looks().waivers(whole.look).empty());
    session.redo();
    EXPECT_EQ(session.library().looks().waivers(whole.look).front().reason, "as the other side");
    show_active(screen);
    press(QStringLiteral("Take the waiver back"));
    EXPECT_TRUE(session.library().looks().waivers(whole.look).empty());
}

TEST_F(SignOffScreenTest, AReasonBeingWrittenIsKeptWhenRecordsChangeMeanwhile) {
    whole.tag(whole.photos[0], [](Tags& tags) { tags.angle = Angle::detail; });
    show();
    press(QStringLiteral("Waive it…"));
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("as the "));
    session.touch();
    QApplication::processEvents();
    give_reason(QStringLiteral("other side"));
    ASSERT_EQ(session.library().looks().waivers(whole.look).size(), 1U);
    EXPECT_EQ(session.library().looks().waivers(whole.look)[0].reason, "as the other side");
}

TEST_F(SignOffScreenTest, APhotoFileThatChangedOnTheDiskIsToldAtOnce) {
    const Photo photo = *session.library().photos().find(whole.photos[2]);
    whole.write_file(photo, "other bytes");
    show();
    const auto* files = screen.findChild<FilesPart*>();
    const auto* notice = files->findChild<Notice*>();
    EXPECT_TRUE(QTest::qWaitFor([&] { return notice->isVisible(); }));
    EXPECT_TRUE(notice->said().contains(QString::fromStdString(photo.file.path)));
}

TEST_F(SignOffScreenTest, APhotoFileThatChangedOnTheDiskIsNotSigned) {
    const Photo photo = *session.library().photos().find(whole.photos[2]);
    whole.write_file(photo, "other bytes");
    show();
    press(QStringLiteral("Sign it off"));
    const auto told = [&] {
        for (const auto* notice : screen.findChildren<Notice*>()) {
            if (!notice->said().startsWith(QStringLiteral("It is not signed off"))) continue;
            return notice->said().contains(QString::fromStdString(photo.file.path));
        }
        return false;
    };
    EXPECT_TRUE(QTest::qWaitFor(told));
    EXPECT_FALSE(standing());
}

TEST_F(SignOffScreenTest, WhatTheRecipeLacksIsSaidInWords) {
    Recipe recipe = whole_recipe();
    recipe.accessory.clear();
    session.library().recipes().save(whole.look, recipe, at("2026-11-07T12:30"));
    show();
    bool told = false;
    for (const auto* notice : screen.findChildren<Notice*>()) {
        told = told || notice->said().contains(QStringLiteral("accessory"));
    }
    EXPECT_TRUE(told);
    EXPECT_FALSE(may_be_signed());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
