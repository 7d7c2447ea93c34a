#include <QApplication>
#include <QComboBox>

#include "tests/ui/recipe/recipe_fixture.h"
#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

TEST_F(RecipeScreenTest, IsFilledByKeysAlonePartAfterPart) {
    show(evening);
    key(Qt::Key_PageDown, Qt::ControlModifier);
    type(QStringLiteral("nickel"));
    key(Qt::Key_PageDown, Qt::ControlModifier);
    type(QStringLiteral("fine and slippery"));
    key(Qt::Key_Tab);
    type(QStringLiteral("this morning"));
    key(Qt::Key_Escape);
    key(Qt::Key_PageDown, Qt::ControlModifier);
    key(Qt::Key_Space);  // adds a product
    type(QStringLiteral("setting foam"));
    key(Qt::Key_Tab);
    type(QStringLiteral("two pumps"));
    const Recipe recipe = kept(evening);
    EXPECT_EQ(recipe.cautions, "nickel");
    EXPECT_EQ(recipe.hair, "fine and slippery");
    EXPECT_EQ(recipe.hair_on_the_day.washed, "this morning");
    EXPECT_EQ(recipe.prep, (std::vector<Product>{{"setting foam", "two pumps", ""}}));
}

TEST_F(RecipeScreenTest, AFoldedPartIsReadInWords) {
    show(whole.look);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("mousse, two walnuts, lengths")), nullptr);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Revision 1, saved on Saturday")), nullptr);
    EXPECT_EQ(with_text<QLabel>(QStringLiteral("no medical advice")), nullptr);
    part(RecipePlace::cautions).begin_writing();
    EXPECT_NE(with_text<QLabel>(QStringLiteral("no medical advice")), nullptr);
}

TEST_F(RecipeScreenTest, WhatSheWritesIsKeptByItselfAndIsThereAfterARestart) {
    show(whole.look);
    part(RecipePlace::feedback).begin_writing();
    key(Qt::Key_End);
    type(QStringLiteral(", lower"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return draft(whole.look) != Recipe{}; }));
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Kept as a draft at")), nullptr);
    Session again(real_file_system(), decoder, [] { return at("2026-11-07T14:00:00"); });
    ASSERT_EQ(again.open(whole.folder / "library"), QString());
    RecipeScreen other(again);
    other.arrive({.moment = Moment::recipe, .look = whole.look});
    other.refresh();
    show_active(other);
    bool read = false;
    for (const auto* label : other.findChildren<QLabel*>()) {
        read = read || label->text() == QStringLiteral("loves it, yes, lower");
    }
    EXPECT_TRUE(read);
    EXPECT_EQ(revisions(whole.look).size(), 1U);
}

TEST_F(RecipeScreenTest, LeavingTheScreenKeepsTheLastKey) {
    show(evening);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("a"));
    EXPECT_EQ(draft(evening), Recipe{});
    screen->hide();
    EXPECT_EQ(draft(evening).finish, "a");
}

TEST_F(RecipeScreenTest, ClosingTheWindowKeepsTheLastKey) {
    show(evening);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("a"));
    screen.reset();
    EXPECT_EQ(draft(evening).finish, "a");
}

TEST_F(RecipeScreenTest, TwoLooksDoNotGetMixedUp) {
    show(evening);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("brushed out"));
    show(whole.look);
    EXPECT_EQ(draft(evening).finish, "brushed out");
    EXPECT_EQ(draft(whole.look), Recipe{});
    show(evening);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("brushed out")), nullptr);
}

TEST_F(RecipeScreenTest, SavingMakesARevisionWithItsSittingAndCanBeUndone) {
    show(whole.look);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("mist"));
    key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(revisions(whole.look).size(), 2U);
    EXPECT_EQ(revisions(whole.look)[1].recipe.finish, "mist");
    EXPECT_EQ(revisions(whole.look)[1].sitting, whole.trial);
    EXPECT_FALSE(session.library().recipes().draft(whole.look));
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Revision 2")), nullptr);
    EXPECT_NE(with_text<QLabel>(QStringLiteral("at the trial")), nullptr);
    session.undo();
    EXPECT_EQ(revisions(whole.look).size(), 1U);
    EXPECT_EQ(draft(whole.look).finish, "mist");
    session.redo();
    EXPECT_EQ(revisions(whole.look).size(), 2U);
}

TEST_F(RecipeScreenTest, BackToWhatWasSavedCanBeUndone) {
    show(whole.look);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("mist"));
    press(QStringLiteral("Back to what was saved"));
    EXPECT_EQ(kept(whole.look), Recipe{});
    EXPECT_EQ(qobject_cast<QPlainTextEdit*>(named(QStringLiteral("In words")))->toPlainText(),
              QString());
    session.undo();
    EXPECT_EQ(draft(whole.look).finish, "mist");
}

TEST_F(RecipeScreenTest, HerOwnWordsCompleteWhatSheBegins) {
    show(evening);
    part(RecipePlace::prep).begin_writing();
    key(Qt::Key_Space);
    type(QStringLiteral("mo"));
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(kept(evening).prep, (std::vector<Product>{{"mousse", "", ""}}));
}

TEST_F(RecipeScreenTest, AFindingLeadsToItsPartAndSaysWhetherItBarsSignOff) {
    show(evening);
    EXPECT_NE(with_text<MarkedButton>(QStringLiteral("No recipe is written down yet")), nullptr);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("mist"));
    auto* parting = with_text<MarkedButton>(QStringLiteral("The parting is not written down"));
    ASSERT_NE(parting, nullptr);
    EXPECT_EQ(parting->mark(), Mark::bar);
    EXPECT_TRUE(parting->text().startsWith(QStringLiteral("In the way: ")));
    auto* cautions = with_text<MarkedButton>(QStringLiteral("Nothing is said of allergies"));
    ASSERT_NE(cautions, nullptr);
    EXPECT_EQ(cautions->mark(), Mark::warning);
    QTest::mouseClick(parting, Qt::LeftButton);
    show_active(*screen);
    EXPECT_TRUE(part(RecipePlace::parting).isAncestorOf(QApplication::focusWidget()));
    auto* words = named(QStringLiteral("Parting"));
    ASSERT_NE(words, nullptr);
    words->setFocus();
    type(QStringLiteral("deep, on her left"));
    EXPECT_EQ(with_text<MarkedButton>(QStringLiteral("The parting is not written down")), nullptr);
}

TEST_F(RecipeScreenTest, StartsFromAnotherLookAndUndoBringsBackWhatWasThere) {
    show(evening);
    part(RecipePlace::finish).begin_writing();
    type(QStringLiteral("mist"));
    press<MarkedButton>(QStringLiteral("Start from another look"));
    press(QStringLiteral("Start from it"));
    EXPECT_EQ(draft(evening).parting, "left");
    EXPECT_EQ(draft(evening).feedback, "");
    EXPECT_EQ(steps().size(), 1);
    session.undo();
    EXPECT_EQ(draft(evening).finish, "mist");
    EXPECT_EQ(draft(evening).parting, "");
}

TEST_F(RecipeScreenTest, TemplatesAreSavedUsedAndRemoved) {
    show(whole.look);
    press<MarkedButton>(QStringLiteral("Start from another look"));
    press(QStringLiteral("Save as a template"));
    EXPECT_TRUE(session.library().recipe_templates().all().empty());
    named(QStringLiteral("Name of the template"))->setFocus();
    type(QStringLiteral("low bun"));
    key(Qt::Key_Return);
    ASSERT_EQ(session.library().recipe_templates().all().size(), 1U);
    show(evening);
    auto* from = qobject_cast<QComboBox*>(named(QStringLiteral("Start from")));
    ASSERT_NE(from, nullptr);
    from->setCurrentIndex(from->findText(QStringLiteral("Template: low bun")));
    press(QStringLiteral("Start from it"));
    EXPECT_EQ(draft(evening).build.size(), 1U);
    EXPECT_EQ(draft(evening).cautions, "");
    named(QStringLiteral("Remove the template"))->setFocus();
    key(Qt::Key_Return);
    EXPECT_TRUE(session.library().recipe_templates().all().empty());
    session.undo();
    EXPECT_EQ(session.library().recipe_templates().all().size(), 1U);
}

TEST_F(RecipeScreenTest, AYesIsGivenADayByOneKey) {
    show(evening);
    part(RecipePlace::feedback).begin_writing();
    named(QStringLiteral("Her yes: say when"))->setFocus();
    key(Qt::Key_Return);
    EXPECT_EQ(kept(evening).feedback_details.yes_on, parse_date("2026-11-07"));
}

TEST_F(RecipeScreenTest, DegreesAreKeptInTheUnitThatTheToolShows) {
    show(evening);
    part(RecipePlace::prep).begin_writing();
    named(QStringLiteral("Heat tool, heat"))->setFocus();
    type(QStringLiteral("320"));
    qobject_cast<QComboBox*>(named(QStringLiteral("Heat tool, heat: unit")))->setCurrentIndex(1);
    named(QStringLiteral("Heat tool, barrel"))->setFocus();
    type(QStringLiteral("12.5"));
    const Recipe recipe = kept(evening);
    ASSERT_TRUE(recipe.heat_tool);
    EXPECT_EQ(recipe.heat_tool->temperature_f, 320);
    EXPECT_EQ(recipe.heat_tool->temperature_c, std::nullopt);
    EXPECT_EQ(recipe.heat_tool->barrel_mm, 12.5);
}

TEST_F(RecipeScreenTest, ASecondLookThatSaysNothingIsNone) {
    show(evening);
    part(RecipePlace::second_look).begin_writing();
    type(QStringLiteral("x"));
    EXPECT_TRUE(kept(evening).second_look);
    key(Qt::Key_Backspace);
    EXPECT_FALSE(kept(evening).second_look);
}

TEST_F(RecipeScreenTest, HasNoProblemsWithEverythingUnfoldedAtAnySize) {
    show(whole.look);
    for (PartCard* card : screen->findChildren<PartCard*>()) card->unfold(true);
    steps().front()->unfold(true);
    press<MarkedButton>(QStringLiteral("Start from another look"));
    EXPECT_EQ(problems_at_all_sizes(*screen), QStringList());
}

TEST_F(RecipeScreenTest, NothingIsCutAtTheSideHoweverLargeTheText) {
    apply_theme(*qApp, {.text_size = TextSize::largest});
    screen = std::make_unique<RecipeScreen>(session);
    screen->resize(1280, 800);
    Recipe recipe = whole_recipe();
    recipe.pieces.push_back({PieceKind::accessory, "leaf comb", "gold", {}, {}, {}, {}, {}});
    recipe.caution_details.sensitivities = {{"nickel", parse_date("2026-11-01"), "none"}};
    session.library().recipes().save(whole.look, recipe, at("2026-11-07T13:00"));
    show(whole.look);
    for (PartCard* card : screen->findChildren<PartCard*>()) {
        card->unfold(true);
        show_active(*screen);
        const QWidget* page = card->parentWidget()->parentWidget();
        EXPECT_LE(page->width(), page->parentWidget()->width())
            << to_utf8(shown(card->place())) << " is too wide";
    }
    apply_theme(*qApp, {});
}

TEST_F(RecipeScreenTest, HasNoProblemsWithNothingWritten) {
    show(evening);
    EXPECT_EQ(problems_at_all_sizes(*screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
