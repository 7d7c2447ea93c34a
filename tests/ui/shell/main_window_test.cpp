#include "tests/ui/shell/main_window_fixture.h"

namespace quarterturn {
namespace {

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

TEST_F(MainWindowTest, ThePageScrollsByKeyFromTheRowOfMoments) {
    auto* column = new QVBoxLayout(screen(Moment::coming_up));
    ScrollingPage page = make_scrolling_page();
    page.column->addSpacing(5000);
    column->addWidget(page.scroll);
    show_active(window);
    const QScrollBar& bar = *page.scroll->verticalScrollBar();
    button(QStringLiteral("What's coming up"))->setFocus();
    const auto press = [&](Qt::Key key) {
        QTest::keyClick(window.windowHandle(), key);
        return bar.value();
    };
    EXPECT_EQ(press(Qt::Key_PageDown), bar.pageStep());
    EXPECT_EQ(press(Qt::Key_End), bar.maximum());
    EXPECT_EQ(press(Qt::Key_Home), 0);
    EXPECT_TRUE(button(QStringLiteral("What's coming up"))->hasFocus());
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
    open.session.change_records(
        {"renamed her", [after](Library& library) { library.clients().change(after); }});
    QTest::keySequence(&window, QKeySequence::Undo);
    EXPECT_EQ(open.session.library().clients().find(open.example.mira), before);
    QTest::keySequence(&window, QKeySequence::Redo);
    EXPECT_EQ(open.session.library().clients().find(open.example.mira), after);
}

TEST_F(MainWindowTest, UndoAndRedoAreGreyWhileThereIsNothingToDoAndKeepTheKeyboard) {
    show_active(window);
    auto* undo = window.findChild<UndoButtons*>()->findChildren<QPushButton*>()[0];
    auto* redo = window.findChild<UndoButtons*>()->findChildren<QPushButton*>()[1];
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_FALSE(redo->isEnabled());
    EXPECT_EQ(undo->toolTip(), QStringLiteral("There is nothing to undo."));
    const PhotoId photo = open.session.library().photos().add(example_photo("one.jpg"));
    open.session.change_photos([&](Library& library) {
        Tags left;
        left.angle = Angle::left;
        library.history().apply({"tagged it", {{photo, left}}, {}});
    });
    EXPECT_TRUE(undo->isEnabled());
    EXPECT_FALSE(redo->isEnabled());

    QWidget* had_it = QApplication::focusWidget();
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_EQ(QApplication::focusWidget(), had_it);
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(redo->isEnabled());

    redo->setFocus(Qt::TabFocusReason);
    QTest::keyClick(redo, Qt::Key_Space);
    EXPECT_EQ(QApplication::focusWidget(), redo) << "it keeps the keyboard, though nothing is left";
    undo->setFocus(Qt::TabFocusReason);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !redo->isEnabled(); }));
}

TEST_F(MainWindowTest, ArrowKeysWalkAlongTheMoments) {
    show_active(window);
    button(QStringLiteral("What's coming up"))->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_TRUE(button(QStringLiteral("Round the head"))->hasFocus());
}

std::vector<ScreenEntry> many_moments() {
    std::vector<ScreenEntry> entries;
    for (const Moment moment : {Moment::coming_up, Moment::bringing_in, Moment::round_the_head,
                                Moment::sign_off, Moment::contact_sheet, Moment::all_photos}) {
        entries.push_back(entry(
            moment,
            QStringLiteral("A long moment of hers, number %1").arg(static_cast<int>(moment))));
    }
    return entries;
}

TEST_F(MainWindowTest, MomentsWithoutRoomWaitInAMenuThatNamesTheOneSheIsIn) {
    MainWindow narrow(open.session, many_moments(), welcome);
    narrow.resize(1000, 700);
    show_active(narrow);
    const auto* row = narrow.findChild<MomentsRow*>();
    QStringList seen;
    for (const auto* button : row->findChildren<MomentButton*>()) {
        if (!button->isVisible()) continue;
        seen << button->text();
        EXPECT_TRUE(row->rect().contains(button->geometry())) << button->text().toStdString();
    }
    EXPECT_EQ(seen.last(), QStringLiteral("More"));
    ASSERT_FALSE(row->others().isEmpty());
    EXPECT_EQ(seen.size() - 1 + row->others().actions().size(), 6);

    row->others().actions().last()->trigger();
    EXPECT_EQ(narrow.moment(), Moment::all_photos);
    QApplication::processEvents();
    const auto buttons = row->findChildren<MomentButton*>();
    EXPECT_TRUE(std::ranges::any_of(buttons, [](const MomentButton* button) {
        return button->isVisible() && button->isChecked() &&
               button->accessibleName().startsWith(QStringLiteral("More, now"));
    }));
    narrow.resize(3000, 700);
    QApplication::processEvents();
    EXPECT_TRUE(row->others().isEmpty());
    EXPECT_EQ(problems_at_all_sizes(narrow), QStringList());
}

TEST_F(MainWindowTest, IsMadeAgainWhereAndAsLargeAsItWasOnItsLastScreen) {
    show_active(window);
    window.resize(1000, 700);
    window.go_to({.moment = Moment::round_the_head});
    window.close();
    const MainWindow again(open.session, two_moments(), welcome);
    EXPECT_EQ(again.size(), QSize(1000, 700));
    EXPECT_EQ(again.moment(), Moment::round_the_head);
    QSettings().clear();
}

// A number would mean another screen once one comes in between.
TEST_F(MainWindowTest, RemembersItsLastScreenByAWord) {
    window.go_to({.moment = Moment::round_the_head});
    window.close();
    EXPECT_EQ(QSettings().value(QStringLiteral("window/moment")).toString(),
              QStringLiteral("round_the_head"));
    QSettings().clear();
}

TEST_F(MainWindowTest, AScreenThatIsNoLongerThereIsNotGoneBackTo) {
    QSettings().setValue(QStringLiteral("window/moment"), 99);
    const MainWindow again(open.session, two_moments(), welcome);
    EXPECT_EQ(again.moment(), Moment::coming_up);
    QSettings().clear();
}

// As qturn does it, through a connection of its own.

TEST_F(MainWindowTest, TheKeyboardStaysWhereItWasWhenTheTextSizeChanges) {
    show_active(window);
    button(QStringLiteral("Round the head"))->setFocus();
    MomentButton* small = button(QStringLiteral("Round the head"));
    const QPointer<MomentButton> kept(small);
    open.session.use_theme({.text_size = TextSize::large});
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept.isNull(); }));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return button(QStringLiteral("Round the head"))->hasFocus(); }));
    open.session.use_theme({});
    QApplication::processEvents();
}

TEST_F(MainWindowTest, WorkIsNotTakenFromItsScreenByAnotherTextSize) {
    show_active(window);
    std::promise<void> enough;
    open.session.start<int>(
        [waiting = enough.get_future().share()](Library&, Job&) {
            waiting.wait();
            return 0;
        },
        [](int) {});
    const QPointer<Screen> kept(screen(Moment::coming_up));
    open.session.use_theme({.text_size = TextSize::large});
    QApplication::processEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(kept.isNull());
    enough.set_value();
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept.isNull(); }));
    open.session.use_theme({});
    QApplication::processEvents();
}

TEST_F(MainWindowTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(window), QStringList());
}

TEST(MainWindowWithoutLibrary, ShowsTheWelcomeUntilOneIsOpen) {
    const ExampleLibrary example;
    NoDecoder decoder;
    Session session(real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); });
    MainWindow window(session, two_moments(), welcome);
    show_active(window);
    EXPECT_EQ(window.screen(Moment::coming_up), nullptr);
    EXPECT_EQ(session.open(example.folder / "library"), QString());
    QApplication::processEvents();
    EXPECT_NE(window.screen(Moment::coming_up), nullptr);
}

}  // namespace
}  // namespace quarterturn
