// Bringing photos in, on the real screen with a real library and real files.

#include "ui/bringing_in/bringing_in_screen.h"

#include <QComboBox>
#include <QDropEvent>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/disk/folder_lock.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/worker/photo_decoder.h"
#include "tests/indexer/intake/photo_files.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/bringing_in/folder_watch.h"
#include "ui/bringing_in/photo_picker.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

constexpr int patience_ms = 20000;

class BringingInTest : public testing::Test {
  protected:
    BringingInTest() {
        problem = session.open(example.folder / "library");
        QObject::connect(&session, &Session::records_changed, &screen, &Screen::refresh);
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text() == text) return found;
        }
        return nullptr;
    }
    bool appears(const QString& text) {
        return QTest::qWaitFor([&] { return button(text) != nullptr; }, patience_ms);
    }
    void press(const QString& text) {
        ASSERT_TRUE(appears(text)) << text.toStdString();
        QTest::mouseClick(button(text), Qt::LeftButton);
        QApplication::processEvents();
    }
    bool says(const QString& words) {
        for (auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }
    bool comes_to_say(const QString& words) {
        return QTest::qWaitFor([&] { return says(words); }, patience_ms);
    }
    void bring_in() {
        screen.look_at({card});
        press(QStringLiteral("Bring them in"));
        ASSERT_TRUE(appears(QStringLiteral("Go round the head")));
    }
    Library& library() { return session.library(); }

    ExampleLibrary example;
    Path card = example.folder / "card";
    std::unique_ptr<Decoder> pictures = make_local_decoder();
    PhotoDecoder decoder{*pictures};
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    QString problem;
    BringingInScreen screen{session};
};

// As when the program was ended while they came in.
TEST_F(BringingInTest, WhatWasNotFinishedIsToldAndGoesOn) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    BegunIntake begun = BegunIntake::once(library());
    begun.keep({card});
    Session next{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    QSignalSpy said(&next, &Session::said);
    ASSERT_EQ(next.open(library().folder()), QString());
    ASSERT_EQ(said.size(), 1);
    EXPECT_TRUE(said[0][0].toString().startsWith("Bringing photos in was not finished"));
    screen.look_at({card});
    press(QStringLiteral("Choose others"));
    EXPECT_TRUE(says(QStringLiteral("was not finished")));
    press(QStringLiteral("Go on with card"));
    press(QStringLiteral("Bring them in"));
    ASSERT_TRUE(appears(QStringLiteral("Go round the head")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return begun.sources().empty(); }, patience_ms));
    press(QStringLiteral("Bring more in"));
    EXPECT_FALSE(says(QStringLiteral("was not finished")));
    begun.keep({card});
    screen.look_at({card});
    press(QStringLiteral("Choose others"));
    EXPECT_FALSE(says(QStringLiteral("was not finished"))) << "all of it had come in";
}

TEST_F(BringingInTest, WhatWasNotFinishedCanBeLeftAtThat) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    BegunIntake::once(library()).keep({card});
    screen.look_at({card});
    press(QStringLiteral("Choose others"));
    const Path on_its_way = library().incoming_folder() / (sha256("a") + ".part");
    std::ofstream(on_its_way) << "a";
    press(QStringLiteral("Leave it at that"));
    EXPECT_FALSE(says(QStringLiteral("was not finished")));
    EXPECT_TRUE(BegunIntake::once(library()).sources().empty());
    EXPECT_FALSE(std::filesystem::exists(on_its_way));
}

TEST_F(BringingInTest, WhatIsStoppedOrRefusedIsKeptToGoOnWith) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    BegunIntake begun = BegunIntake::once(library());
    std::stop_source stopped;
    stopped.request_stop();
    import_photos(library(), decoder,
                  {.sources = {card}, .stop = stopped.get_token(), .remember = true});
    EXPECT_EQ(begun.sources(), std::vector<Path>{card}) << "as when the window is closed";
    {
        const FolderLock other_window(library().folder());
        const ImportWishes wishes{.sources = {example.folder / "other"}, .remember = true};
        EXPECT_THROW(import_photos(library(), decoder, wishes), StoreError);
    }
    EXPECT_EQ(begun.sources(), std::vector<Path>{card});
    const Path pulled = example.folder / "pulled";
    begun.add({pulled});
    screen.look_at({pulled});
    ASSERT_TRUE(appears(QStringLiteral("Choose others")));
    EXPECT_EQ(begun.sources(), (std::vector<Path>{card, pulled})) << "it is only away";
    import_photos(library(), decoder, {.sources = {card}});
    EXPECT_EQ(begun.sources(), std::vector<Path>{pulled}) << "whoever brought it in";
}

TEST_F(BringingInTest, WhatWasNotFinishedIsOfferedOnceNobodyElseIsAtWork) {
    BegunIntake::once(library()).keep({card});
    {
        const FolderLock backup(library().folder());
        screen.refresh();
        EXPECT_FALSE(says(QStringLiteral("was not finished")));
    }
    screen.refresh();
    EXPECT_TRUE(comes_to_say(QStringLiteral("was not finished")));
}

TEST_F(BringingInTest, WhatAnotherWindowBringsInIsNotCalledUnfinished) {
    BegunIntake::once(library()).keep({card});
    const FolderLock other_window(library().folder());
    EXPECT_TRUE(unfinished_intake(library()).empty());
}

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

TEST_F(BringingInTest, AFolderIsWatchedAgainAfterTheProgramWasClosed) {
    const Path named_by_bytes = example.folder / "arriv\xe9";  // no UTF-8
    std::filesystem::create_directories(named_by_bytes);
    FolderWatch::of(session).start(named_by_bytes);
    ASSERT_EQ(session.open(library().folder()), QString());
    EXPECT_TRUE(FolderWatch::of(session).folder().empty());
    for (auto* button : screen.findChildren<QPushButton*>()) {
        if (button->isVisible() && button->text().startsWith(QStringLiteral("Watch arriv"))) {
            button->click();
        }
    }
    EXPECT_EQ(FolderWatch::of(session).folder(), named_by_bytes);
    std::filesystem::remove(named_by_bytes);
    FolderWatch::of(session).start(named_by_bytes);
    EXPECT_TRUE(comes_to_say(QStringLiteral("is not there now")));
}

TEST_F(BringingInTest, HasNoScreenProblems) {
    EXPECT_EQ(problem, QString());
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
