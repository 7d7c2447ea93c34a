// The photos are the demo's; see demo_photos/README.md.

#include "ui/trial_against_today/trial_screen.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include "tests/support/consent_said.h"
#include "tests/support/day_with_higher_hair.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/largest_text.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/theme/theme.h"
#include "ui/trial_against_today/day_photos_panel.h"
#include "ui/two_heads/pair_view.h"
#include "ui/two_heads/point_view.h"

namespace quarterturn {
namespace {

template <class Example>
class TrialScreenOf : public testing::Test {
  protected:
    TrialScreenOf() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    PairView& view() { return *screen.findChild<PairView*>(); }
    QPushButton& button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->text().startsWith(text)) return *found;
        }
        throw std::runtime_error("no button " + text.toStdString());
    }
    bool says(const QString& words) {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }
    bool wait_until_laid() {
        return QTest::qWaitFor([&] { return button(QStringLiteral("Blink")).isEnabled(); }, 60000);
    }
    std::optional<HeadPoints> points_of(PhotoId photo) {
        return session.library().head_points().of(photo);
    }

    Example example;
    std::unique_ptr<Decoder> decoder = make_local_decoder();
    Session session{real_file_system(), *decoder, [] { return at("2026-11-21T12:00:00"); }};
    QString problem = session.open(example.folder / "library");
    TrialScreen screen{session};
};

using TrialScreenTest = TrialScreenOf<AsMadeLibrary>;
class LargestTextTrialTest : LargestText, public TrialScreenOf<AsMadeLibrary> {};
using DifferentDayTest = TrialScreenOf<DayWithHigherHair>;

TEST_F(DifferentDayTest, SaysHowMuchHigherTheHairStandsAndDrawsIt) {
    ASSERT_TRUE(wait_until_laid());
    EXPECT_TRUE(says(QStringLiteral("The hair stands about 2")) ||
                says(QStringLiteral("The hair stands about 3")));
    EXPECT_TRUE(says(QStringLiteral("higher than at the trial, as far as the photos can tell.")));
    EXPECT_TRUE(says(QStringLiteral("Where the hair is parted cannot be told from the photos.")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(DifferentDayTest, PointsTheWrongWayRoundAreNotKept) {
    ASSERT_TRUE(wait_until_laid());
    QTest::mouseClick(&button(QStringLiteral("Set the heads by hand")), Qt::LeftButton);
    auto* points = screen.findChildren<PointView*>().front();
    const HeadPoints found = points->points();
    points->show_points({found.bottom, found.top});
    QTest::mouseClick(&button(QStringLiteral("Keep these points")), Qt::LeftButton);
    EXPECT_TRUE(says(QStringLiteral("the wrong way round")));
    EXPECT_FALSE(points_of(example.agreed).has_value());
    EXPECT_TRUE(points->isVisible());
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(TrialScreenTest, StandsTheFirstAngleThatHasBothSideBySideAndSaysWhichIsWhich) {
    ASSERT_TRUE(wait_until_laid());
    auto* angles = screen.findChild<QListWidget*>();
    EXPECT_EQ(angles->currentItem()->text(), QStringLiteral("Back"));
    const QString both = view().accessibleName();
    EXPECT_TRUE(both.contains(QStringLiteral("At the trial, Saturday, 7 November 2026, 11:30")))
        << both.toStdString();
    EXPECT_TRUE(both.contains(QStringLiteral("Today, Saturday, 21 November 2026, 10:47")))
        << both.toStdString();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(LargestTextTrialTest, PhotosStayLargeInASmallWindowAndTheRestScrolls) {
    constexpr QSize room(1024, 570);  // below the row of moments
    screen.resize(room);
    show_active(screen);
    EXPECT_EQ(screen.size(), room);
    EXPECT_GE(view().height(), 450);
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(TrialScreenTest, AnAngleWithoutAPhotoOfTheDaySaysSo) {
    auto* angles = screen.findChild<QListWidget*>();
    EXPECT_TRUE(angles->item(0)->text().contains(QStringLiteral("no photo of the day")));
    angles->setCurrentRow(0);
    const QString said = view().accessibleName();
    EXPECT_TRUE(said.contains(QStringLiteral("No photo of the day from this angle yet. Take one")))
        << said.toStdString();
    EXPECT_GE(angles->visualItemRect(angles->item(0)).height(), morning_target);
    EXPECT_FALSE(button(QStringLiteral("Sliding divide")).isEnabled());
}

TEST_F(TrialScreenTest, NoSheetIsSavedOfWhatMayNotBeKept) {
    record_said(session.library(), example.mira, ConsentSaid::withdrawn, Use::own_record);
    const Path file = example.folder / "as made.pdf";
    screen.save_to(file);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return says(QStringLiteral("may not be kept even for")); }, 20000));
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST_F(TrialScreenTest, NoSheetIsSavedOfNothing) {
    ASSERT_TRUE(wait_until_laid());
    Change untagged{"untagged", {}, {}};
    for (const Photo& photo : session.library().photos().all()) {
        untagged.tags.push_back({photo.id, {}});
    }
    session.library().history().apply(untagged);
    const Path file = example.folder / "as made.pdf";
    screen.save_to(file);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return says(QStringLiteral("There are no after photos")); }, 20000));
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST_F(TrialScreenTest, TheDivideMovesByKeysAndByDragging) {
    ASSERT_TRUE(wait_until_laid());
    QTest::keyClick(&button(QStringLiteral("Sliding divide")), Qt::Key_Space);
    ASSERT_EQ(view().mode(), PairMode::divide);
    const QImage half = view().grab().toImage();
    QTest::keyClick(&view(), Qt::Key_Right);
    EXPECT_NEAR(view().divide(), 0.52, 1e-9);
    QTest::keyClick(&view(), Qt::Key_Home);
    EXPECT_EQ(view().divide(), 0);
    EXPECT_NE(view().grab().toImage(), half);
    QTest::mousePress(&view(), Qt::LeftButton, {}, view().rect().center());
    EXPECT_NEAR(view().divide(), 0.5, 0.01);
    QTest::mouseMove(&view(), view().rect().center() + QPoint(40, 0));
    QTest::mouseRelease(&view(), Qt::LeftButton);
}

TEST_F(TrialScreenTest, BlinkingIsNeverTooFastAndStops) {
    ASSERT_TRUE(wait_until_laid());
    QTest::keyClick(&button(QStringLiteral("Blink")), Qt::Key_Space);
    EXPECT_TRUE(view().blinks());
    auto* seconds = screen.findChild<QDoubleSpinBox*>();
    EXPECT_EQ(seconds->value(), 1.0);
    // WCAG 2.2, 2.3.1: three flashes a second at most, each of two changes.
    EXPECT_GE(seconds->minimum(), 1.0 / 3 / 2);
    QTest::keyClick(&view(), Qt::Key_Space);
    EXPECT_FALSE(view().blinks());
    const int side = view().shown_side();
    QTest::keyClick(&view(), Qt::Key_Space);
    EXPECT_EQ(view().shown_side(), 1 - side);
    QTest::mouseClick(&button(QStringLiteral("Go on")), Qt::LeftButton);
    EXPECT_TRUE(view().blinks());
    QTest::keyClick(&button(QStringLiteral("Side by side")), Qt::Key_Space);
    EXPECT_FALSE(view().blinks());
}

TEST_F(TrialScreenTest, PointsSetByHandAreKeptAndUndone) {
    ASSERT_TRUE(wait_until_laid());
    QTest::mouseClick(&button(QStringLiteral("Set the heads by hand")), Qt::LeftButton);
    auto* points = screen.findChildren<PointView*>().front();
    EXPECT_EQ(problems_with(screen), QStringList());
    const HeadPoints before = points->points();
    const QPoint top = points->place_of(before.top).toPoint();
    QTest::mousePress(points, Qt::LeftButton, {}, top);
    QMouseEvent drag(QEvent::MouseMove, top + QPoint(0, 30), points->mapToGlobal(top), Qt::NoButton,
                     Qt::LeftButton, {});
    QCoreApplication::sendEvent(points, &drag);
    QTest::mouseRelease(points, Qt::LeftButton);
    QTest::keyClick(points, Qt::Key_Space);
    QTest::keyClick(points, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_GT(points->points().top.y, before.top.y + 0.01);
    EXPECT_NEAR(points->points().bottom.y, before.bottom.y + 0.02, 1e-6);
    QTest::mouseClick(&button(QStringLiteral("Keep these points")), Qt::LeftButton);
    ASSERT_TRUE(points_of(example.agreed).has_value());
    ASSERT_TRUE(points_of(example.made).has_value());
    EXPECT_GT(points_of(example.agreed)->top.y, before.top.y + 0.01);
    session.undo();
    EXPECT_FALSE(points_of(example.agreed).has_value());
    session.redo();
    EXPECT_TRUE(points_of(example.made).has_value());
    ASSERT_TRUE(wait_until_laid());
    QTest::mouseClick(&button(QStringLiteral("Set the heads by hand")), Qt::LeftButton);
    QTest::mouseClick(&button(QStringLiteral("Find the heads for me")), Qt::LeftButton);
    EXPECT_FALSE(points_of(example.made).has_value());
}

TEST_F(TrialScreenTest, PhotosOfTheDayArePlacedWithOneClickAndTakenBack) {
    Library& library = session.library();
    MorningWish wish;
    wish.client = example.mira;
    wish.work = ChairWork{.before = 60};
    Morning morning;
    morning.wishes = {wish};
    library.mornings().save(example.wedding, morning);
    const PhotoId waiting =
        example.add("20261107_120224.jpg", "2026-11-21T12:31:00", std::nullopt, std::nullopt);
    screen.refresh();
    QTest::mouseClick(&button(QStringLiteral("Place 1 photo")), Qt::LeftButton);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return screen.findChild<DayPhotosPanel*>()->isVisible(); }, 60000));
    EXPECT_EQ(problems_with(screen), QStringList());
    QTest::keyClick(&button(QStringLiteral("Place them so")), Qt::Key_Space);
    const auto tags_of = [&] { return library.photos().find(waiting)->tags; };
    EXPECT_EQ(tags_of().look, example.look);
    EXPECT_EQ(tags_of().sitting, example.day);
    EXPECT_EQ(tags_of().stage, Stage::after);
    session.undo();
    EXPECT_FALSE(tags_of().look.has_value());
    session.redo();
    EXPECT_EQ(tags_of().look, example.look);
}

}  // namespace
}  // namespace quarterturn
