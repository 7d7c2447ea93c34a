// Bringing photos in, on the real screen with a real library and real files.

#include <QComboBox>
#include <QDropEvent>
#include <QMimeData>
#include <QSignalSpy>

#include "tests/ui/bringing_in/bringing_in_fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/bringing_in/folder_watch.h"
#include "ui/bringing_in/photo_picker.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

TEST_F(BringingInTest, OfOnePhotoSaysOneMomentAndWhatIsNotSeenYet) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    screen.look_at({card});
    ASSERT_TRUE(appears(QStringLiteral("Bring them in")));
    EXPECT_TRUE(says(QStringLiteral("10:12")));
    EXPECT_FALSE(says(QStringLiteral("10:12 to")));
    EXPECT_TRUE(says(QStringLiteral("Whether a photo opens is seen when it is brought in.")));
}

TEST_F(BringingInTest, SaysWhatIsThereBeforeAnythingIsCopied) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    write_photo(card / "b.jpg", 2, {.taken = "2026:11:07 10:40:00"});
    write_file(card / "clip.txt", "none");
    screen.look_at({card});
    ASSERT_TRUE(appears(QStringLiteral("Bring them in")));
    EXPECT_TRUE(says(QStringLiteral("2 photos to bring in")));
    EXPECT_TRUE(says(QStringLiteral("Larkmoor P3: 2 photos")));
    EXPECT_TRUE(says(QStringLiteral("Trial of Mira Okonjo-Lindqvist, 7 Nov 2026")));
    EXPECT_TRUE(says(QStringLiteral("clip.txt")));
    EXPECT_TRUE(library().photos().all().empty());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(BringingInTest, BringsInNamesWhatItRefusesAndLeadsRoundTheHead) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    write_file(card / "broken.jpg", "no picture at all");
    bring_in();
    EXPECT_EQ(library().photos().all().size(), 1U);
    EXPECT_TRUE(says(QStringLiteral("1 photo brought in")));
    EXPECT_TRUE(says(QStringLiteral("broken.jpg: ")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());

    QSignalSpy asked(&session, &Session::asked_for);
    press(QStringLiteral("Go round the head"));
    ASSERT_EQ(asked.size(), 1);
    const auto place = asked.front().front().value<Place>();
    EXPECT_EQ(place.moment, Moment::round_the_head);
    EXPECT_EQ(place.sitting, example.trial);
}

TEST_F(BringingInTest, SaysWhenAllIsHereAlready) {
    write_photo(card / "a.jpg", 1);
    bring_in();
    screen.look_at({card});
    ASSERT_TRUE(comes_to_say(QStringLiteral("All photos of these are here already")));
    EXPECT_EQ(button(QStringLiteral("Bring them in")), nullptr);
}

TEST_F(BringingInTest, AFolderDroppedAnywhereIsLookedAt) {
    write_photo(card / "a.jpg", 1);
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(QString::fromStdString(card.native()))});
    QDragEnterEvent enter(QPoint(40, 40), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&screen, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(40, 40), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&screen, &drop);
    EXPECT_TRUE(comes_to_say(QStringLiteral("1 photo to bring in")));
}

TEST_F(BringingInTest, PhotosWithoutASittingArePlacedByLookingAtThem) {
    write_photo(card / "late.jpg", 1, {.taken = "2026:11:07 20:00:00"});
    write_photo(card / "later.jpg", 2, {.taken = "2026:11:07 20:05:00"});
    bring_in();
    ASSERT_TRUE(comes_to_say(QStringLiteral("2 photos taken when there was no sitting")));
    auto* tile = screen.findChild<PhotoTile*>();
    EXPECT_TRUE(tile->look().caption.startsWith(QStringLiteral("7 Nov 2026, ")))
        << tile->look().caption.toStdString() << ": a card may hold photos of years";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !tile->look().picture.isNull(); }, patience_ms));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    QTest::keyClick(tile, Qt::Key_Space);
    press(QStringLiteral("Place 1 photo there"));
    EXPECT_EQ(library().photos().of_sitting(example.trial).size(), 1U);
    session.undo();
    EXPECT_EQ(library().photos().of_sitting(example.trial).size(), 0U);
}

// A phone's photos within the trial, and a camera's of the same minutes three hours behind.
void write_photos_of_two_clocks(const Path& card) {
    for (int i = 0; i < 6; ++i) {
        const std::string minute = std::to_string(10 + 5 * i);
        write_photo(card / ("p" + std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 10:" + minute + ":00"});
        write_photo(card / ("c" + std::to_string(i) + ".jpg"), 100 + i,
                    {.taken = "2026:11:07 07:" + minute + ":20", .make = "Farnholt", .model = "K"});
    }
}

TEST_F(BringingInTest, AClockThatSheCallsRightIsDoubtedNoMoreUntilSheTakesItBack) {
    write_photos_of_two_clocks(card);
    bring_in();
    const QString doubt = QStringLiteral("The clock of Farnholt K seems off");
    ASSERT_TRUE(comes_to_say(doubt));
    press(QStringLiteral("Its clock is right"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !says(doubt); }, patience_ms));
    session.undo();
    EXPECT_TRUE(comes_to_say(doubt));
}

TEST_F(BringingInTest, AClockThatIsOffIsSetRightAndBack) {
    write_photos_of_two_clocks(card);
    bring_in();
    ASSERT_TRUE(comes_to_say(QStringLiteral("The clock of Farnholt K seems off")));
    press(QStringLiteral("Choose two photos of one moment"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press(QStringLiteral("Set its photos 3 hours forward"));
    EXPECT_EQ(library().photos().of_sitting(example.trial).size(), 12U);
    session.undo();
    EXPECT_EQ(library().photos().of_sitting(example.trial).size(), 6U);
}

TEST_F(BringingInTest, AWatchedFolderIsTakenInAsFilesArrive) {
    std::filesystem::create_directories(card);
    FolderWatch& watch = FolderWatch::of(session);
    QSignalSpy changed(&session, &Session::records_changed);
    watch.start(card);
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return watch.brought_in() == 1; }, patience_ms));
    EXPECT_EQ(library().photos().of_sitting(example.trial).size(), 1U);
    EXPECT_GE(changed.size(), 1);
    EXPECT_TRUE(says(QStringLiteral("1 photo brought in so far.")));
    press(QStringLiteral("Stop watching"));
    EXPECT_TRUE(watch.folder().empty());
    EXPECT_TRUE(watch.watched_before().empty());
}

TEST_F(BringingInTest, HasNoScreenProblems) {
    EXPECT_EQ(problem, QString());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
