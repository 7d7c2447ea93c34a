#include "ui/what_changed/what_changed_screen.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/looks/write_recipe.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/drawing_board/drawing_view.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

// A trial on 7 November, and the wedding day on the 21st.
class WhatChangedScreenTest : public testing::Test {
  protected:
    WhatChangedScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
        Sitting sitting;
        sitting.client = whole.mira;
        sitting.wedding = whole.wedding;
        sitting.kind = SittingKind::wedding_day;
        sitting.starts = at("2026-11-21T08:00");
        sitting.ends = at("2026-11-21T11:00");
        day = whole.library.sittings().add(sitting);
        Look look = bun();
        look.sittings.push_back(day);
        whole.library.looks().change(look);
        for (const PhotoId photo : std::vector(whole.photos)) {
            whole.tag(photo, [&](Tags& tags) { tags.sitting = whole.trial; });
        }
    }

    Look bun() { return *whole.library.looks().find(whole.look); }

    void save_on_the_day() {
        Recipe recipe = whole_recipe();
        recipe.parting = "right";
        recipe.accessory.clear();
        recipe.build[0].words = "twist into a high bun";
        recipe.build.push_back({"Spray <lightly> & smooth", 3, {}});
        recipe.head_plan.strokes = {{StrokeKind::parting, {{0.3, -0.9}, {0.2, 0}}}};
        save_recipe(whole.library, bun(), recipe, at("2026-11-21T09:00"));
        const PhotoId photo = whole.add_photo("DAY.JPG", {Stage::after, Angle::left});
        whole.tag(photo, [&](Tags& tags) { tags.sitting = day; });
    }

    void show() {
        screen.arrive({.moment = Moment::what_changed, .look = whole.look});
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
    bool says(const QString& part) { return with_text<QLabel>(part) != nullptr; }

    QComboBox* choice(const QString& name) {
        for (auto* box : screen.findChildren<QComboBox*>()) {
            if (box->accessibleName() == name) return box;
        }
        return nullptr;
    }

    std::vector<PhotoTile*> photos() {
        std::vector<PhotoTile*> tiles;
        for (auto* tile : screen.findChildren<PhotoTile*>()) {
            if (tile->isVisible()) tiles.push_back(tile);
        }
        return tiles;
    }

    WholeLook whole;
    SittingId day;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-21T13:30:00"); }};
    const QString problem = session.open(whole.folder / "library");
    WhatChangedScreen screen{session};
};

TEST_F(WhatChangedScreenTest, TrialAndWeddingDayStandSideBySideWithTheirWordsMarked) {
    save_on_the_day();
    show();
    EXPECT_TRUE(says(QStringLiteral("Then: trial on 7 Nov 2026")));
    EXPECT_TRUE(says(QStringLiteral("Now: wedding day on 21 Nov 2026")));
    EXPECT_TRUE(says(QStringLiteral("<s>left</s>")));
    EXPECT_TRUE(says(QStringLiteral("<b><u>right</u></b>")));
    EXPECT_TRUE(says(QStringLiteral("twist into a <s>low</s> bun")));
    EXPECT_TRUE(says(QStringLiteral("twist into a <b><u>high</u></b> bun")));
    EXPECT_TRUE(says(QStringLiteral("− left out")));
    EXPECT_TRUE(says(QStringLiteral("Step 2, new")));
    EXPECT_TRUE(says(QStringLiteral("&lt;lightly&gt; &amp; smooth")));  // words, no markup
    EXPECT_EQ(screen.findChildren<DrawingView*>().size(), 1);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(WhatChangedScreenTest, WhatStayedIsFoldedUntilAsked) {
    save_on_the_day();
    show();
    EXPECT_FALSE(says(QStringLiteral("mousse")));
    auto* fold = with_text<QPushButton>(QStringLiteral("parts as before"));
    ASSERT_NE(fold, nullptr);
    fold->setFocus();
    QTest::keyClick(fold, Qt::Key_Space);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("mousse, two walnuts, lengths")));
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(WhatChangedScreenTest, PhotosOfTheSameAngleStandInPairsAndLeadToTheirPlace) {
    save_on_the_day();
    show();
    const auto tiles = photos();
    ASSERT_EQ(tiles.size(), 5U);  // left twice; front, right and back of the trial
    EXPECT_TRUE(tiles[0]->accessibleName().startsWith(QStringLiteral("left, then")));
    EXPECT_TRUE(tiles[1]->accessibleName().startsWith(QStringLiteral("left, now")));
    EXPECT_EQ(tiles[1]->photo(), whole.photos.back());
    EXPECT_TRUE(says(QStringLiteral("now: no photo of this angle")));
    QSignalSpy asked(&session, &Session::asked_for);
    QTest::keyClick(tiles[1], Qt::Key_Space);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<Place>().photo, whole.photos.back());
}

TEST_F(WhatChangedScreenTest, SidesChangePlaces) {
    save_on_the_day();
    show();
    auto* swap = with_text<QPushButton>(QStringLiteral("other way round"));
    swap->setFocus();
    QTest::keyClick(swap, Qt::Key_Return);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("<s>right</s>")));
    EXPECT_TRUE(says(QStringLiteral("<b><u>left</u></b>")));
    EXPECT_TRUE(choice(QStringLiteral("Now"))->currentText().contains(QStringLiteral("recipe 1")));
}

TEST_F(WhatChangedScreenTest, ANewRevisionAppearsAndTheChoiceStays) {
    save_on_the_day();
    show();
    Recipe recipe = whole_recipe();
    recipe.parting = "none";
    save_recipe(session.library(), bun(), recipe, at("2026-11-21T10:00"));
    session.touch();
    show_active(screen);
    EXPECT_GE(
        choice(QStringLiteral("Now"))->findText(QStringLiteral("recipe 3"), Qt::MatchContains), 0);
    EXPECT_TRUE(choice(QStringLiteral("Now"))->currentText().contains(QStringLiteral("recipe 2")));
}

TEST_F(WhatChangedScreenTest, AnotherLookOfTheSameClientCanBeChosen) {
    save_on_the_day();
    Look waves = bun();
    waves.name = "let down in waves";
    waves.id = whole.library.looks().add(waves);
    Recipe recipe;
    recipe.parting = "off centre";
    save_recipe(whole.library, waves, recipe, at("2026-11-07T13:00"));
    session.choose_look(waves.id);
    screen.refresh();
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("let down in waves, recipe 1")));
    EXPECT_TRUE(says(QStringLiteral("low twisted bun, recipe 2")));
    EXPECT_TRUE(says(QStringLiteral("<b><u>off centre</u></b>")));
}

TEST_F(WhatChangedScreenTest, OneRecipeOnlyTeaches) {
    show();
    EXPECT_TRUE(says(QStringLiteral("one recipe of this client so far")));
    EXPECT_TRUE(photos().empty());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
