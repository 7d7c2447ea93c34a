// Pairs of real pictures: laid upon each other, measured, and compared with a picture that a client
// brings. The photos are the demo's; see demo_photos/README.md.

#include <QDropEvent>
#include <QListWidget>
#include <QMimeData>
#include <QSignalSpy>

#include "indexer/portfolio/inspiration.h"
#include "indexer/sheet/laid_pair.h"
#include "indexer/store/laid_pair_table.h"
#include "tests/support/as_made_library.h"
#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/pairs/kept_pictures_page.h"
#include "ui/two_heads/pair_view.h"
#include "ui/two_heads/point_view.h"
#include "ui/widgets/choice_list.h"

namespace quarterturn {
namespace {

// Of one head from the back: before, after, and on the wedding day.
struct PhotographedLibrary : AsMadeLibrary {
    PhotographedLibrary() {
        tag(agreed, [](Tags& tags) { tags.stage = Stage::during; });
        before = add("20261107_100455.jpg", "2026-11-07T10:04:55", trial, Angle::back);
        tag(before, [](Tags& tags) { tags.stage = Stage::before; });
        add("20261107_120241.jpg", "2026-11-07T12:02:41", trial, Angle::back);
    }
    void tag(PhotoId photo, auto change) {
        Tags tags = library.photos().find(photo)->tags;
        change(tags);
        library.history().apply({"tagged", {{photo, tags}}, {}});
    }
    PhotoId before;
};

class PhotographedPairsTest : public testing::Test {
  protected:
    PhotographedPairsTest() {
        follow_records(session, screen);
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    PairView& view() {
        for (auto* each : screen.findChildren<PairView*>()) {
            if (each->isVisible()) return *each;
        }
        throw std::runtime_error("no pair is open");
    }
    QPushButton* button(const QString& text) { return showing<QPushButton>(screen, text); }
    bool says(const QString& part) { return showing<QLabel>(screen, part) != nullptr; }
    void open_pair(PairKind kind) {
        auto& wall = *screen.findChild<WallOfPairs*>();
        for (int i = 0; i < wall.model()->rowCount(); ++i) {
            const QModelIndex index = wall.model()->index(i, 0);
            const QString words = index.data(Qt::AccessibleTextRole).toString();
            const bool trial = words.contains(QStringLiteral("trial and wedding day"));
            if (trial == (kind == PairKind::trial_and_day)) wall.setCurrentIndex(index);
        }
        wall.setFocus();
        QTest::keyClick(&wall, Qt::Key_Return);
        show_active(screen);
    }
    bool wait_for_figures() {
        const auto told = [&] {
            return says(QStringLiteral("ΔE00")) || says(QStringLiteral("The colour of the light"));
        };
        return QTest::qWaitFor(told, 60000);
    }
    bool wait_until_laid() {
        return QTest::qWaitFor([&] { return button(QStringLiteral("Cross-fade"))->isEnabled(); },
                               60000);
    }

    PhotographedLibrary example;
    std::unique_ptr<Decoder> decoder = make_local_decoder();
    Session session{real_file_system(), *decoder, [] { return at("2026-11-22T08:00:00"); }};
    QString problem = session.open(example.folder / "library");
    PairsScreen screen{session};
};

TEST_F(PhotographedPairsTest, APairSaysHowAlikeItWasTakenAndWhatWasDone) {
    open_pair(PairKind::trial_and_day);
    ASSERT_TRUE(wait_until_laid());
    ASSERT_TRUE(wait_for_figures());
    EXPECT_TRUE(says(QStringLiteral("The second photo was scaled to")));
    EXPECT_TRUE(says(QStringLiteral("the files are as they were")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PhotographedPairsTest, OneFadesIntoTheOtherByKeysAndByDragging) {
    open_pair(PairKind::trial_and_day);
    ASSERT_TRUE(wait_until_laid());
    QTest::keyClick(button(QStringLiteral("Cross-fade")), Qt::Key_Space);
    ASSERT_EQ(view().mode(), PairMode::fade);
    QTest::keyClick(&view(), Qt::Key_Home);
    QTest::keyClick(&view(), Qt::Key_End);
    const QImage first = view().grab().toImage();
    EXPECT_TRUE(view().divide() == 1 || view().divide() == 0);
    const double before = view().divide();
    QTest::keyClick(&view(), Qt::Key_Left);
    QTest::keyClick(&view(), Qt::Key_Right);
    QTest::mousePress(&view(), Qt::LeftButton, {}, view().rect().center());
    QTest::mouseRelease(&view(), Qt::LeftButton);
    EXPECT_NEAR(view().divide(), 0.5, 0.01);
    EXPECT_NE(view().divide(), before);
    EXPECT_NE(view().grab().toImage(), first);
}

TEST_F(PhotographedPairsTest, HeadsAreSetByHandWhereTheProgramIsNotSure) {
    open_pair(PairKind::before_and_after);
    ASSERT_TRUE(wait_for_figures());
    QTest::mouseClick(button(QStringLiteral("Set the heads by hand")), Qt::LeftButton);
    show_active(screen);
    EXPECT_EQ(problems_with(screen), QStringList());
    auto* points = screen.findChildren<PointView*>().front();
    QTest::keyClick(points, Qt::Key_Down, Qt::ShiftModifier);
    const HeadPoints set = points->points();
    QTest::mouseClick(button(QStringLiteral("Keep these points")), Qt::LeftButton);
    ASSERT_EQ(session.library().head_points().of(example.before), set);
    ASSERT_TRUE(wait_until_laid());
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("on the points you set")); }));
    session.undo();
    EXPECT_FALSE(session.library().head_points().of(example.before).has_value());
}

TEST_F(PhotographedPairsTest, HerLooksMostLikeADroppedPictureComeUpWithReasons) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(
        QStringLiteral(QUARTERTURN_DEMO_PHOTOS "/photos/phone/20261107_120242.jpg"))});
    QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&screen, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&screen, &drop);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return says(QStringLiteral("Your looks most like")); }, 60000));
    auto& wall = *screen.findChild<WallOfPairs*>();
    ASSERT_GT(wall.model()->rowCount(), 0);
    const QString first = wall.model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(first.contains(QStringLiteral("Back"))) << first.toStdString();
    EXPECT_GT(first.count(u','), 2) << "a reason: " << first.toStdString();
    EXPECT_TRUE(says(QStringLiteral("Somebody else's work: never exported")));
    show_active(screen);
    EXPECT_EQ(problems_with(screen), QStringList());
    QTest::mouseClick(button(QStringLiteral("Keep it with a client")), Qt::LeftButton);
    auto* clients = screen.findChild<ChoiceList*>();
    ASSERT_NE(clients, nullptr);
    QTest::keyClick(clients->findChild<QListWidget*>(), Qt::Key_Return);
    show_active(screen);
    ASSERT_EQ(session.library().inspirations().of_client(example.mira).size(), 1U);
    session.undo();
    EXPECT_TRUE(session.library().inspirations().all().empty());
    QTest::mouseClick(button(QStringLiteral("Back to the pairs")), Qt::LeftButton);
    EXPECT_TRUE(says(QStringLiteral("the newest first")));
}

TEST_F(PhotographedPairsTest, AKeptPictureIsSeenAndHerLooksLikeItAreFound) {
    const Path brought =
        session.library().photo_file(*session.library().photos().find(example.before));
    keep_inspiration(session.library(), brought, example.mira, session.now());
    QTest::mouseClick(button(QStringLiteral("Pictures from clients")), Qt::LeftButton);
    show_active(screen);
    auto& list = *screen.findChild<KeptPicturesPage*>()->findChild<QListWidget*>();
    ASSERT_EQ(list.count(), 1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !list.item(0)->icon().isNull(); }, 20000));
    EXPECT_EQ(problems_with(screen), QStringList());
    QTest::mouseClick(button(QStringLiteral("Your looks like it")), Qt::LeftButton);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return says(QStringLiteral("Your looks most like")); }, 60000));
    EXPECT_TRUE(says(QStringLiteral("Mira"))) << "who brought it";
    EXPECT_EQ(button(QStringLiteral("Keep it with a client")), nullptr) << "it is kept already";
}

// Before anything is laid again, as after a restart.
TEST_F(PhotographedPairsTest, TheWallIsLaidByWhatIsKeptWithThePairs) {
    auto& wall = *screen.findChild<WallOfPairs*>();
    LaidPairTable table(session.library().database(), head_alignment_version);
    std::vector<PairId> all;
    for (const Pair& pair : session.library().pairs().all()) all.push_back(pair.id);
    ASSERT_TRUE(QTest::qWaitFor([&] { return table.of(all).size() == all.size(); }, 60000));
    ShownPairs shown(session);
    shown.show({session.library().pairs().all()});
    for (int i = 0; i < shown.rowCount(); ++i) {
        ASSERT_NE(shown.laid(i), nullptr);
        const TwoPhotos* two = shown.photos(i);
        HeadFinder finder;
        const LaidPair anew =
            lay_pair(session.library(), session.decoder(), finder, two->first, two->second);
        const Box kept = window_of(*shown.laid(i), 0.8);
        EXPECT_EQ(shown.laid(i)->alignment.sure(), anew.alignment.sure());
        EXPECT_NEAR(kept.x, window_of(anew, 0.8).x, 1e-9);
        EXPECT_NEAR(kept.height, window_of(anew, 0.8).height, 1e-9);
    }
    EXPECT_GT(wall.model()->rowCount(), 0);
}

TEST_F(PhotographedPairsTest, PhotosOnTheWallHaveHalfTheirLightWhileTheWindowIsDim) {
    auto& wall = *screen.findChild<WallOfPairs*>();
    const auto light = [&] {
        const QImage tile = wall.viewport()->grab(QRect(20, 20, 160, 120)).toImage();
        return QColor(
                   tile.scaled(1, 1, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).pixel(0, 0))
            .lightness();
    };
    const auto& pictures = session.pictures();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !pictures.at_hand(example.before, small_long_edge).isNull(); }, 20000));
    const int bright = light();
    session.use_theme({.mood = Mood::dawn});
    const int dim = light();
    session.use_theme({});
    EXPECT_LT(dim, bright * 3 / 4);
}

TEST_F(PhotographedPairsTest, APictureWithoutAHeadIsSaidToHaveNone) {
    const Path nothing = example.folder / "not a picture.jpg";
    write_bytes(nothing, std::vector<std::byte>(100));
    screen.look_like_picture(nothing);
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return says(QStringLiteral("not a picture.jpg cannot be compared")); }, 60000));
}

}  // namespace
}  // namespace quarterturn
