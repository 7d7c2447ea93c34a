#include "ui/shell/main_window.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/moment_button.h"

namespace quarterturn {
namespace {

ScreenEntry entry(Moment moment, const QString& title) {
    return {moment, title, [](Session&) -> Screen* { return new SayingScreen; }};
}

class MainWindowTest : public testing::Test {
  protected:
    SayingScreen* screen(Moment moment) {
        return static_cast<SayingScreen*>(window.screen(moment));
    }
    MomentButton* button(const QString& title) {
        for (auto* found : window.findChildren<MomentButton*>()) {
            if (found->text() == title) return found;
        }
        return nullptr;
    }

    OpenSession open;
    MainWindow window{open.session,
                      {entry(Moment::coming_up, QStringLiteral("What's coming up")),
                       entry(Moment::round_the_head, QStringLiteral("Round the head"))},
                      [](Session&) -> QWidget* { return new QLabel(QStringLiteral("welcome")); }};
};

TEST_F(MainWindowTest, ShowsTheFirstMomentAndRefreshesIt) {
    EXPECT_EQ(window.moment(), Moment::coming_up);
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, 1);
}

TEST_F(MainWindowTest, AClickOnAMomentGoesThere) {
    show_active(window);
    QTest::mouseClick(button(QStringLiteral("Round the head")), Qt::LeftButton);
    EXPECT_EQ(window.moment(), Moment::round_the_head);
    EXPECT_TRUE(screen(Moment::round_the_head)->isVisible());
    EXPECT_FALSE(screen(Moment::coming_up)->isVisible());
}

TEST_F(MainWindowTest, ASentenceLeadsToALookAndItsShot) {
    const Place place{.moment = Moment::round_the_head,
                      .look = open.example.look,
                      .shot = Shot{Stage::after, Angle::back}};
    open.session.go_to(place);
    ASSERT_TRUE(screen(Moment::round_the_head)->arrived);
    EXPECT_EQ(screen(Moment::round_the_head)->arrived->look, open.example.look);
    EXPECT_EQ(screen(Moment::round_the_head)->arrived->shot, (Shot{Stage::after, Angle::back}));
    EXPECT_TRUE(button(QStringLiteral("Round the head"))->isChecked());
}

TEST_F(MainWindowTest, OnlyTheScreenThatIsSeenIsRefreshed) {
    window.go_to({.moment = Moment::round_the_head});
    const int before = screen(Moment::coming_up)->refreshed;
    open.session.touch();
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before);
    EXPECT_EQ(screen(Moment::round_the_head)->refreshed, 2);
}

TEST_F(MainWindowTest, TheStandardKeysUndoAndRedo) {
    show_active(window);
    const Client before = *open.session.library().clients().find(open.example.mira);
    Client after = before;
    after.name = "Mira Vale";
    open.session.change_records({"renamed her",
                                 [after](Library& library) { library.clients().change(after); },
                                 [before](Library& library) { library.clients().change(before); }});
    QTest::keySequence(&window, QKeySequence::Undo);
    EXPECT_EQ(open.session.library().clients().find(open.example.mira), before);
    QTest::keySequence(&window, QKeySequence::Redo);
    EXPECT_EQ(open.session.library().clients().find(open.example.mira), after);
}

TEST_F(MainWindowTest, ArrowKeysWalkAlongTheMoments) {
    show_active(window);
    button(QStringLiteral("What's coming up"))->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_TRUE(button(QStringLiteral("Round the head"))->hasFocus());
}

TEST_F(MainWindowTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(window), QStringList());
}

TEST(MainWindowWithoutLibrary, ShowsTheWelcomeUntilOneIsOpen) {
    const ExampleLibrary example;
    NoDecoder decoder;
    Session session(real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); });
    MainWindow window(session, {entry(Moment::coming_up, QStringLiteral("What's coming up"))},
                      [](Session&) -> QWidget* { return new QLabel(QStringLiteral("welcome")); });
    show_active(window);
    EXPECT_EQ(window.screen(Moment::coming_up), nullptr);
    EXPECT_EQ(session.open(example.folder / "library"), QString());
    QApplication::processEvents();
    EXPECT_NE(window.screen(Moment::coming_up), nullptr);
}

}  // namespace
}  // namespace quarterturn
