// One pair large: what she says of it, of its look, and what of that is undone.

#include <QSignalSpy>

#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/two_heads/pair_view.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

TEST(PairView, PhotosKeepOffTheRingRoundThem) {
    PairView view;
    view.resize(640, 360);
    QImage red(600, 800, QImage::Format_RGB32);
    red.fill(Qt::red);
    const PairSide side{red, false, QStringLiteral("Before"), QStringLiteral("today"), {}};
    view.show_pair(side, side, std::nullopt);
    const QImage painted = view.grab().toImage().convertToFormat(QImage::Format_RGB32);
    QRect photos;
    for (int y = 0; y < painted.height(); ++y) {
        for (int x = 0; x < painted.width(); ++x) {
            if (painted.pixelColor(x, y) == QColor(Qt::red)) photos |= QRect(x, y, 1, 1);
        }
    }
    ASSERT_FALSE(photos.isEmpty());
    constexpr int ring = 4;
    EXPECT_TRUE(painted.rect().adjusted(ring, ring, -ring, -ring).contains(photos));
}

class OnePairTest : public PairsScreenTest {
  protected:
    OnePairTest() {
        add_pairs();
        show();
    }

    QWidget& page() { return *screen.findChild<PairView*>()->parentWidget(); }
    bool is_open() { return showing<QPushButton>(screen, QStringLiteral("All pairs")) != nullptr; }
    Pair back() {
        for (const Pair& pair : library().pairs().all()) {
            if (pair.made.place.angle == Angle::back) return pair;
        }
        throw std::runtime_error("no pair from the back");
    }
    PhotoTile* tile(PhotoId photo) {
        for (auto* each : screen.findChildren<PhotoTile*>()) {
            if (each->photo() == photo) return each;
        }
        return nullptr;
    }
    QLineEdit* field(const QString& name) {
        for (auto* each : screen.findChildren<QLineEdit*>()) {
            if (each->accessibleName() == name) return each;
        }
        return nullptr;
    }
};

TEST_F(OnePairTest, ItIsOpenedByKeySteppedThroughAndLeft) {
    open_pair(0);
    ASSERT_TRUE(is_open());
    EXPECT_TRUE(says(QStringLiteral("low twisted bun  ·  Back")));
    press(Qt::Key_PageDown);
    EXPECT_TRUE(says(QStringLiteral("low twisted bun  ·  Left")));
    press(Qt::Key_PageDown);
    EXPECT_TRUE(says(QStringLiteral("High bun  ·  Front")));
    EXPECT_FALSE(showing<QPushButton>(screen, QStringLiteral("Next"))->isEnabled());
    press(Qt::Key_Escape);
    EXPECT_FALSE(is_open());
    EXPECT_EQ(wall().currentIndex().row(), 2) << "the wall stands where she was";
}

TEST_F(OnePairTest, HasNoProblemsAtAnySize) {
    open_pair(0);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(OnePairTest, TheAdvertisingRulesAreNamedOnce) {
    open_pair(0);
    int times = 0;
    for (const auto* label : screen.findChildren<QLabel*>()) {
        times += label->text().count(QStringLiteral("do not mislead"));
    }
    EXPECT_EQ(times, 1);
}

TEST_F(OnePairTest, AnotherPhotoIsChosenAndTheChoiceUndone) {
    open_pair(0);
    ASSERT_NE(tile(soft), nullptr);
    QTest::mouseClick(tile(soft), Qt::LeftButton);
    EXPECT_EQ(back().made.second, soft);
    EXPECT_NE(showing<QPushButton>(screen, QStringLiteral("The best one again")), nullptr);
    open.session.undo();
    EXPECT_EQ(back().made.second, sharp);
    open.session.redo();
    show_active(screen);
    EXPECT_EQ(back().made.second, soft);
    click(QStringLiteral("The best one again"));
    EXPECT_EQ(back().made.second, sharp);
}

TEST_F(OnePairTest, APinHoldsWhateverTheTagsSayAndSaysSo) {
    open_pair(0);
    click(QStringLiteral("Pin this pair"));
    EXPECT_TRUE(back().choice.pinned);
    Tags tags = library().photos().find(sharp)->tags;
    tags.stage = Stage::during;
    open.session.change_photos([&](Library& records) {
        records.history().apply({"tagged", {{sharp, tags}}, {}});
    });
    EXPECT_EQ(back().made.second, sharp);
    EXPECT_TRUE(says(QStringLiteral("is tagged during, back now, but the pair is pinned with it")));
    click(QStringLiteral("No longer pinned"));
    EXPECT_EQ(back().made.second, soft);
    open.session.undo();
    EXPECT_EQ(back().made.second, sharp);
}

TEST_F(OnePairTest, ARefusedPairLeavesTheWallAndComesBack) {
    open_pair(0);
    click(QStringLiteral("Refuse this pair"));
    EXPECT_TRUE(back().choice.refused);
    ASSERT_NE(showing<QPushButton>(screen, QStringLiteral("List it again")), nullptr);
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("2 pairs, the newest first")));
    open.session.undo();
    EXPECT_TRUE(says(QStringLiteral("3 pairs, the newest first")));
    open.session.redo();
    QTest::mouseClick(showing<QAbstractButton>(screen, QStringLiteral("Only those I refused")),
                      Qt::LeftButton, {}, {10, 10});
    EXPECT_TRUE(says(QStringLiteral("1 pair found")));
}

TEST_F(OnePairTest, WhatTheRecipeSaysOfTheLookGivesWayToHerWord) {
    open_pair(0);
    QLineEdit* family = field(QStringLiteral("Look family"));
    ASSERT_NE(family, nullptr);
    EXPECT_EQ(family->text(), QStringLiteral("low bun"));
    EXPECT_TRUE(says(QStringLiteral("from the recipe")));
    family->setFocus();
    family->selectAll();
    QTest::keyClicks(family, QStringLiteral("waves, half up"));
    press(Qt::Key_Return);
    const auto facts = [&] {
        std::vector<std::string> values;
        for (const LookFact& each : library().look_facts().of(open.example.look)) {
            if (each.fact == Fact::family) values.push_back(each.value);
        }
        return values;
    };
    EXPECT_EQ(facts(), (std::vector<std::string>{"half up", "waves"}));
    EXPECT_TRUE(says(QStringLiteral("your word")));
    open.session.undo();
    EXPECT_EQ(facts(), std::vector<std::string>{"low bun"});
    EXPECT_EQ(family->text(), QStringLiteral("low bun"));
    open.session.redo();
    show_active(screen);
    click(QStringLiteral("As the recipe says"));
    EXPECT_EQ(facts(), std::vector<std::string>{"low bun"});
}

TEST_F(OnePairTest, TheWholeScreenShowsNoNameStepsByKeyAndIsLeftWithEscape) {
    open_pair(0);
    QSignalSpy alone(&screen, &Screen::alone_asked);
    press(Qt::Key_F11);
    ASSERT_EQ(alone.size(), 1);
    EXPECT_TRUE(alone[0][0].toBool());
    screen.stand_alone(true);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("1 of 3")));
    EXPECT_FALSE(says(QStringLiteral("Mira")));
    EXPECT_EQ(targets_too_small(screen, 44), QStringList());
    EXPECT_EQ(problems_with(screen), QStringList());
    press(Qt::Key_PageDown);
    press(Qt::Key_PageDown);
    EXPECT_TRUE(says(QStringLiteral("3 of 3")));
    EXPECT_FALSE(says(QStringLiteral("Ada")));
    press(Qt::Key_Escape);
    ASSERT_EQ(alone.size(), 2);
    EXPECT_FALSE(alone[1][0].toBool());
    EXPECT_TRUE(says(QStringLiteral("High bun  ·  Front"))) << "at the pair that she saw last";
}

TEST_F(OnePairTest, ProgressStandsByDateOneAngleAtATimeAndIsSteppedThrough) {
    open_pair(0);
    click(QStringLiteral("Progress over time"));
    EXPECT_TRUE(says(QStringLiteral("Mira Okonjo-Lindqvist")));
    EXPECT_NE(showing<QPushButton>(screen, QStringLiteral("Back  2")), nullptr);
    EXPECT_NE(showing<QPushButton>(screen, QStringLiteral("Left  2")), nullptr);
    EXPECT_TRUE(says(QStringLiteral("trial, after")));
    press(Qt::Key_Left);
    EXPECT_TRUE(says(QStringLiteral("trial, before")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press(Qt::Key_Escape);
    EXPECT_TRUE(is_open());
}

TEST_F(OnePairTest, ThePictureOfBothSaysWhatStandsAgainstItForEachUse) {
    open_pair(0);
    click(QStringLiteral("One picture of both"));
    EXPECT_TRUE(says(QStringLiteral("was not asked whether she may be shown")));
    auto* make = showing<QPushButton>(screen, QStringLiteral("Make the picture"));
    ASSERT_NE(make, nullptr);
    EXPECT_FALSE(make->isEnabled());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    allow(open.example.mira, Use::own_record);
    library().credits().set(std::array{unstyled, sharp}, Credit{});
    open.session.touch();
    EXPECT_TRUE(says(QStringLiteral("Both photos may be shown for this")));
    EXPECT_TRUE(make->isEnabled());
    press(Qt::Key_Escape);
    EXPECT_TRUE(is_open()) << "one step back, to the pair";
    EXPECT_EQ(showing<QPushButton>(screen, QStringLiteral("Make the picture")), nullptr);
}

}  // namespace
}  // namespace quarterturn
