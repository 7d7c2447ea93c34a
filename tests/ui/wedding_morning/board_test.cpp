#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/wedding_morning/board_fixture.h"
#include "ui/shell/moments_row.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/client_tile.h"
#include "ui/wedding_morning/enlarged_photo.h"

namespace quarterturn {
namespace {

TEST_F(BoardTest, SaysWhoAndWhenAndWhatToBewareOfFirst) {
    EXPECT_TRUE(says(QStringLiteral("Mira Okonjo-Lindqvist")));
    EXPECT_TRUE(says(QStringLiteral("bride · ready by 12:30")));
    EXPECT_TRUE(says(QStringLiteral("allergic to the gum in strong sprays")));
    EXPECT_TRUE(says(QStringLiteral("Not signed off.")));
    EXPECT_TRUE(says(QStringLiteral("leaf comb above the roll")));
    EXPECT_TRUE(says(QStringLiteral("A little softer round the face.")));
}

TEST_F(BoardTest, SpaceTicksAStepAtOnceAndLeadsToTheNext) {
    press_space(0);
    ASSERT_EQ(kept_ticks().size(), 1U);
    EXPECT_TRUE(kept_ticks().front().words.find("Curl the lengths") != std::string::npos);
    EXPECT_TRUE(seen<StepRow>().at(1)->box().hasFocus());
    press(Qt::Key_Space);
    EXPECT_EQ(kept_ticks().size(), 2U);
    EXPECT_TRUE(says(QStringLiteral("Steps: 2 of 3 done")));
    EXPECT_TRUE(says(QStringLiteral("Pins: 8 of 14 in")));
}

TEST_F(BoardTest, TicksAreUndoneAndSurviveARestart) {
    press_space(0);
    press_space(1);
    open.session.undo();
    EXPECT_FALSE(seen<StepRow>().at(1)->box().isChecked());
    make_window();
    go_to(open.example.mira);
    EXPECT_TRUE(seen<StepRow>().at(0)->box().isChecked());
    EXPECT_FALSE(seen<StepRow>().at(1)->box().isChecked());
}

TEST_F(BoardTest, OpensAtTheFirstWhoIsNotDone) {
    Recipe braid;
    braid.build = {{"Braid it.", 20, {}}};
    open.session.library().recipes().save(ada_look, braid, at("2026-11-07T12:00"));
    go_to(open.example.mira);
    for (int step = 0; step < 3; ++step) press_space(step);
    make_window();
    window->go_to({.moment = Moment::wedding_morning, .wedding = open.example.wedding});
    ASSERT_EQ(seen<StepRow>().size(), 1);
    EXPECT_TRUE(seen<StepRow>().front()->step().words.starts_with("Braid it."));
}

TEST_F(BoardTest, APressAnywhereOnAStepTicksIt) {
    StepRow* row = seen<StepRow>().at(1);
    QTest::mouseClick(row, Qt::LeftButton, {}, {row->width() - 8, row->height() - 8});
    EXPECT_EQ(kept_ticks().size(), 1U);
}

TEST_F(BoardTest, ShowsWhatAnotherProgramTicked) {
    Library other = Library::open(open.session.library().folder());
    other.boards().tick(open.example.wedding, open.example.look,
                        {1, seen<StepRow>().at(1)->step().words});
    open.session.touch();
    EXPECT_TRUE(seen<StepRow>().at(1)->box().isChecked());
}

TEST_F(BoardTest, OneStepIsSaidToBeNext) {
    const auto next = [&] {
        QStringList steps;
        for (StepRow* row : seen<StepRow>()) {
            for (const QLabel* label : row->findChildren<QLabel*>()) {
                if (label->isVisible() && label->text() == QStringLiteral("Next")) {
                    steps << QString::fromStdString(row->step().words).left(8);
                }
            }
        }
        return steps;
    };
    EXPECT_EQ(next(), QStringList{QStringLiteral("Curl the")});
    press_space(0);
    EXPECT_EQ(next(), QStringList{QStringLiteral("Roll the")});
}

TEST_F(BoardTest, HeatStandsBesideTheStepThatUsesIt) {
    const auto words_in = [&](int step) {
        QString words;
        for (const QLabel* label : seen<StepRow>().at(step)->findChildren<QLabel*>()) {
            words += label->text();
        }
        return words;
    };
    EXPECT_TRUE(words_in(0).contains(QStringLiteral("Heat burns")));
    EXPECT_FALSE(words_in(1).contains(QStringLiteral("Heat burns")));
}

TEST_F(BoardTest, PageKeysAndButtonsTurnToTheOtherClients) {
    QStringList by_keys;
    while (button(QStringLiteral("Previous"))) press(Qt::Key_PageUp);
    const auto on_board = [&] {
        for (const QString& each :
             {QStringLiteral("Mira Okonjo-Lindqvist"), QStringLiteral("Ada Lindqvist"),
              QStringLiteral("Tilda Vale")}) {
            if (says(each)) return each;
        }
        return QString();
    };
    for (int i = 0; i < 4; ++i) {
        by_keys << on_board();
        press(Qt::Key_PageDown);
    }
    EXPECT_EQ(by_keys.at(2), by_keys.at(3)) << "after the last there is nobody";
    by_keys.removeLast();
    QStringList sorted = by_keys;
    sorted.sort();
    EXPECT_EQ(sorted.join(','), QStringLiteral("Ada Lindqvist,Mira Okonjo-Lindqvist,Tilda Vale"));
    QTest::mouseClick(button(QStringLiteral("Previous")), Qt::LeftButton);
    EXPECT_EQ(on_board(), by_keys.at(1));
    QTest::mouseClick(button(QStringLiteral("Next:")), Qt::LeftButton);
    EXPECT_EQ(on_board(), by_keys.at(2));
}

TEST_F(BoardTest, OfTwoLooksEitherIsShown) {
    Look evening;
    evening.client = open.example.mira;
    evening.wedding = open.example.wedding;
    evening.worn = Worn::evening;
    evening.name = "let down";
    const LookId id = open.session.library().looks().add(evening);
    Recipe recipe;
    recipe.build = {{"Take out the pins above the ear.", 3, {}}};
    open.session.library().recipes().save(id, recipe, at("2026-11-07T12:00"));
    open.session.touch();
    EXPECT_EQ(seen<StepRow>().size(), 3);
    QTest::mouseClick(button(QStringLiteral("Evening: let down")), Qt::LeftButton);
    ASSERT_EQ(seen<StepRow>().size(), 1);
    EXPECT_TRUE(seen<StepRow>().at(0)->step().words.starts_with("Take out the pins"));
}

TEST_F(BoardTest, WithoutARecipeOrALookItLeadsOn) {
    go_to(ada);
    EXPECT_TRUE(says(QStringLiteral("side braid")));
    QTest::mouseClick(button(QStringLiteral("Write the recipe")), Qt::LeftButton);
    EXPECT_EQ(other(Moment::recipe)->arrived->look, ada_look);
    go_to(tilda);
    EXPECT_TRUE(says(QStringLiteral("has no look for this wedding yet")));
    EXPECT_TRUE(seen<BoardPhoto>().isEmpty());
    EXPECT_EQ(problems_with(*window), QStringList());
    QTest::mouseClick(button(QStringLiteral("Plan her look")), Qt::LeftButton);
    EXPECT_EQ(window->moment(), Moment::coming_up);
}

TEST_F(BoardTest, AClientWithoutStepsIsMarkedDoneAndThatIsUndone) {
    go_to(tilda);
    const auto tile = [&] {
        for (ClientTile* found : seen<ClientTile>()) {
            if (found->text() == QStringLiteral("Tilda Vale")) return found->accessibleName();
        }
        return QString();
    };
    EXPECT_TRUE(tile().endsWith(QStringLiteral("not done yet"))) << tile().toStdString();
    ASSERT_NE(button(QStringLiteral("Mark her as done")), nullptr);
    button(QStringLiteral("Mark her as done"))->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(tile().endsWith(QStringLiteral("all done"))) << tile().toStdString();
    EXPECT_NE(button(QStringLiteral("She is done")), nullptr);
    open.session.undo();
    EXPECT_NE(button(QStringLiteral("Mark her as done")), nullptr);
    go_to(open.example.mira);
    EXPECT_EQ(button(QStringLiteral("Mark her as done")), nullptr) << "her steps are ticked";
}

// Mean lightness of the middle of a photo as it is painted.
TEST_F(BoardTest, OneAreaScrollsAtMostWhateverTheRoom) {
    for (const QSize size : {QSize(1920, 1080), QSize(1280, 800), QSize(960, 540)}) {
        window->resize(size);
        QApplication::processEvents();
        int scrolling = 0;
        for (const QScrollArea* area : board().findChildren<QScrollArea*>()) {
            if (area->isVisible() && area->verticalScrollBar()->maximum() > 0) ++scrolling;
        }
        EXPECT_LE(scrolling, 1) << size.width();
    }
}

TEST_F(BoardTest, FillsTheScreenKeepsItAwakeAndLetsGo) {
    press(Qt::Key_F11);
    EXPECT_TRUE(window->isFullScreen());
    EXPECT_EQ(awake->asked, 1);
    EXPECT_EQ(awake->released, 0);
    EXPECT_FALSE(window->findChild<MomentsRow*>()->isVisible());
    press(Qt::Key_Escape);
    EXPECT_FALSE(window->isFullScreen());
    EXPECT_TRUE(window->findChild<MomentsRow*>()->isVisible());
    EXPECT_EQ(awake->released, 1);
    press(Qt::Key_F11);
    window->go_to({.moment = Moment::coming_up});
    EXPECT_FALSE(window->isFullScreen());
    EXPECT_EQ(awake->asked, 2);
    EXPECT_EQ(awake->released, 2);
}

TEST_F(BoardTest, SaysWhenTheSystemKeepsNoScreenAwake) {
    awake->offered = false;
    press(Qt::Key_F11);
    EXPECT_TRUE(says(QStringLiteral("does not let the program keep the screen on")));
    press(Qt::Key_F11);
    EXPECT_FALSE(says(QStringLiteral("does not let the program keep the screen on")));
}

TEST_F(BoardTest, IsReadFromTwoMetresOnTheWholeScreen) {
    press(Qt::Key_F11);
    window->resize(1920, 1080);
    show_active(*window);
    int step = 0;
    int name = 0;
    for (const QLabel* label : seen<QLabel>()) {
        const int size = QFontInfo(label->font()).pixelSize();
        if (label->text().startsWith(QStringLiteral("Roll the twist"))) step = size;
        if (label->text() == QStringLiteral("Mira Okonjo-Lindqvist")) name = size;
    }
    EXPECT_GE(step, 24);
    EXPECT_GE(name, 48);
    EXPECT_EQ(problems_with(*window), QStringList());
    EXPECT_EQ(targets_too_small(board(), morning_target), QStringList());
}

TEST_F(BoardTest, IsDimmedByAKey) {
    press(Qt::Key_D);
    EXPECT_EQ(remembered_theme().mood, Mood::dawn);
    EXPECT_NE(button(QStringLiteral("Bright")), nullptr);
    EXPECT_EQ(problems_with(*window), QStringList());
    press(Qt::Key_D);
    EXPECT_EQ(remembered_theme().mood, Mood::paper);
}

TEST_F(BoardTest, OpensByItselfOnTheDayAndOnNoOther) {
    window->go_to({.moment = Moment::coming_up});
    window->close();
    make_window();
    EXPECT_EQ(window->moment(), Moment::coming_up);
    Wedding today = *open.session.library().weddings().find(open.example.wedding);
    today.date = open.session.today();
    open.session.library().weddings().change(today);
    make_window();
    EXPECT_EQ(window->moment(), Moment::wedding_morning);
    window->go_to({.moment = Moment::coming_up});
    EXPECT_EQ(open.session.open(open.example.folder / "library"), QString());
    EXPECT_EQ(window->moment(), Moment::wedding_morning);
}

TEST_F(BoardTest, HasNoProblemsAtAnySizeAlsoWithLongNames) {
    Client mira = *open.session.library().clients().find(open.example.mira);
    mira.name = "Wilhelmina Aleksandra Okonjo-Lindqvist van der Oosterstraten";
    open.session.library().clients().change(mira);
    Recipe recipe = board_recipe();
    recipe.cautions =
        "Allergic to the gum in strong sprays and to two colours, tender above both ears since "
        "the last sitting; a wound at the nape that heals: ask before every comb.";
    recipe.build.push_back({"لفّي الخصلة إلى الخلف وثبّتيها", 5, {}});
    open.session.library().recipes().save(open.example.look, recipe, at("2026-11-08T12:00"));
    open.session.touch();
    EXPECT_EQ(problems_at_all_sizes(*window), QStringList());
    EXPECT_EQ(targets_too_small(board(), morning_target), QStringList());
}

TEST(Board, TeachesWhereThereIsNoWeddingAndNoParty) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    WeddingMorningScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    Wedding alone;
    alone.name = "Elopement";
    alone.date = parse_date("2026-12-01").value();
    session.library().weddings().add(alone);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    const auto labels = screen.findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->text().contains(QStringLiteral("Nobody is in the party"));
    }));
}

}  // namespace
}  // namespace quarterturn
