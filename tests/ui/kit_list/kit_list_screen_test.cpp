// pdfinfo and pdftotext are Poppler's.

#include "ui/kit_list/kit_list_screen.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include "tests/support/command.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/kit_list/kit_row.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

Recipe needing(int grips) {
    Recipe recipe;
    recipe.prep = {{"mousse", "two walnuts", "roots"}};
    recipe.heat_tool = HeatTool{"tongs", 25, 170};
    recipe.build = {{"pin", 5, {{"grip", "dark brown", grips, false}}}};
    Piece comb;
    comb.what = "leaf comb";
    comb.brought_by = "the bride";
    recipe.pieces = {comb};
    return recipe;
}

class KitListScreenTest : public testing::Test {
  protected:
    KitListScreenTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
        open.session.library().recipes().save(open.example.look, needing(10),
                                              at("2026-11-07T12:00"));
        show();
    }

    void show() {
        screen.refresh();
        show_active(screen);
    }

    KitRow* row(const std::string& what) {
        for (KitRow* found : screen.findChildren<KitRow*>()) {
            if (found->isVisible() && found->line().what == what) return found;
        }
        return nullptr;
    }
    QCheckBox* box(const std::string& what) { return row(what)->findChild<QCheckBox*>(); }

    bool says(const QString& words) {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }

    void press_space(const std::string& what) {
        box(what)->setFocus();
        QTest::keyClick(box(what), Qt::Key_Space);
    }

    OpenSession open;
    KitListScreen screen{open.session};
};

TEST_F(KitListScreenTest, SpaceTicksALineAndTheKeyboardStaysThere) {
    EXPECT_TRUE(says(QStringLiteral("0 of 4 packed.")));
    press_space("grip, dark brown");
    EXPECT_TRUE(says(QStringLiteral("1 of 4 packed.")));
    EXPECT_TRUE(box("grip, dark brown")->hasFocus());
    // As after a restart: another screen over the same library.
    KitListScreen again(open.session);
    again.refresh();
    int ticked = 0;
    for (const auto* each : again.findChildren<QCheckBox*>()) ticked += each->isChecked() ? 1 : 0;
    EXPECT_EQ(ticked, 1);
}

TEST_F(KitListScreenTest, AClickAnywhereOnALineTicksIt) {
    KitRow* line = row("mousse");
    QTest::mouseClick(line, Qt::LeftButton, {}, {line->width() - 20, line->height() / 2});
    EXPECT_TRUE(box("mousse")->isChecked());
    QTest::mouseClick(box("mousse"), Qt::LeftButton);
    EXPECT_FALSE(box("mousse")->isChecked());
}

TEST_F(KitListScreenTest, TicksAreUndoneAndDoneAgain) {
    press_space("mousse");
    open.session.undo();
    EXPECT_FALSE(box("mousse")->isChecked());
    open.session.redo();
    EXPECT_TRUE(box("mousse")->isChecked());
}

TEST_F(KitListScreenTest, SaysWhatARecipeAsksForMoreAndTakesItAsPackedToo) {
    press_space("grip, dark brown");
    open.session.library().recipes().save(open.example.look, needing(15), at("2026-11-08T12:00"));
    show();
    EXPECT_TRUE(box("grip, dark brown")->isChecked());
    EXPECT_TRUE(says(QStringLiteral("6 more than when it was ticked.")));
    EXPECT_TRUE(says(QStringLiteral("1 of 4 packed, 1 of them needs more.")));
    EXPECT_EQ(problems_with(screen), QStringList());
    auto* also = row("grip, dark brown")->findChild<QPushButton*>();
    also->setFocus();
    QTest::keyClick(also, Qt::Key_Return);
    EXPECT_FALSE(says(QStringLiteral("6 more than when it was ticked.")));
    EXPECT_TRUE(says(QStringLiteral("1 of 4 packed.")));
}

TEST_F(KitListScreenTest, TheMarginIsKeptAndUndone) {
    EXPECT_TRUE(says(QStringLiteral("12 × grip, dark brown")));
    auto* spare = screen.findChild<QSpinBox*>();
    spare->setValue(50);
    EXPECT_TRUE(says(QStringLiteral("15 × grip, dark brown")));
    EXPECT_EQ(spare_percent(open.session.library().settings()), 50);
    open.session.undo();
    EXPECT_EQ(spare->value(), usual_spare_percent);
}

TEST_F(KitListScreenTest, OffersTheNextWeddingFirstAndGoesToAnother) {
    Wedding past;
    past.name = "Long ago";
    past.date = parse_date("2025-05-01").value();
    const WeddingId id = open.session.library().weddings().add(past);
    show();
    const auto* weddings = screen.findChild<QComboBox*>();
    EXPECT_TRUE(weddings->itemText(0).contains(QStringLiteral("Okonjo-Lindqvist")));
    EXPECT_EQ(weddings->currentIndex(), 0);
    screen.arrive({.moment = Moment::kit_list, .wedding = id});
    show();
    EXPECT_TRUE(says(QStringLiteral("Long ago")));
    EXPECT_TRUE(says(QStringLiteral("No look is planned for this wedding yet")));
    EXPECT_EQ(row("mousse"), nullptr);
}

TEST_F(KitListScreenTest, SaysWhichLookHasNoRecipe) {
    Look evening;
    evening.client = open.example.mira;
    evening.wedding = open.example.wedding;
    evening.name = "evening";
    open.session.library().looks().add(evening);
    show();
    EXPECT_TRUE(says(QStringLiteral("evening has no recipe yet")));
}

TEST_F(KitListScreenTest, SavesThePageWithWhatIsTicked) {
    press_space("mousse");
    const Path file = open.example.folder / "kit.pdf";
    screen.save_to(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Saved:")); }));
    const std::string text =
        output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() + " -");
    for (const char* words : {"1 of 4 packed.", "12 × grip, dark brown", "10 needed, 2 to spare",
                              "brought by the bride", "tongs, 25 mm", "A4"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(KitListScreenTest, HasNoProblemsAtAnySizeAlsoWithLongNames) {
    Recipe recipe = needing(3);
    recipe.prep.push_back(
        {"setting lotion for hair that has been coloured twice within the last three months",
         "one large walnut, and another when the air is damp", "roots"});
    recipe.prep.push_back({"زيت الياسمين", "قطرتان", ""});
    open.session.library().recipes().save(open.example.look, recipe, at("2026-11-08T12:00"));
    show();
    press_space("mousse");
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(KitListScreen, TeachesWhereThereIsNoWedding) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    KitListScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
