// What was not finished of bringing photos in: it is told, gone on with, or left at that.

#include <QPushButton>
#include <QSignalSpy>

#include <atomic>
#include <thread>

#include "indexer/disk/folder_lock.h"
#include "indexer/intake/begun_intake.h"
#include "tests/support/failing_disk.h"
#include "tests/ui/bringing_in/bringing_in_fixture.h"
#include "ui/bringing_in/folder_watch.h"

namespace quarterturn {
namespace {

struct NotFinished : BringingInTest {
    QStringList what_stands_out() {
        QStringList words;
        for (const QPushButton* button : screen.findChildren<QPushButton*>()) {
            if (button->isVisibleTo(&screen) && button->property("kind") == "next") {
                words << button->text();
            }
        }
        return words;
    }
};

// As when the program was ended while they came in.
TEST_F(NotFinished, WhatWasNotFinishedIsToldAndGoesOn) {
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
    EXPECT_EQ(what_stands_out(), QStringList{QStringLiteral("Go on with card")});
    press(QStringLiteral("Go on with card"));
    press(QStringLiteral("Bring them in"));
    ASSERT_TRUE(appears(QStringLiteral("Go round the head")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return begun.sources().empty(); }, patience_ms));
    press(QStringLiteral("Bring more in"));
    EXPECT_EQ(what_stands_out(), QStringList{QStringLiteral("Choose a folder…")});
    EXPECT_FALSE(says(QStringLiteral("was not finished")));
    begun.keep({card});
    screen.look_at({card});
    press(QStringLiteral("Choose others"));
    EXPECT_FALSE(says(QStringLiteral("was not finished"))) << "all of it had come in";
}

TEST_F(NotFinished, WhatWasNotFinishedCanBeLeftAtThat) {
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

TEST_F(NotFinished, WhatIsStoppedOrRefusedIsKeptToGoOnWith) {
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
    import_photos(library(), decoder, {.sources = {pulled}, .remember = true});
    EXPECT_EQ(begun.sources(), (std::vector<Path>{card, pulled})) << "not there, and not in";
    import_photos(library(), decoder, {.sources = {card.native() + "/"}});
    EXPECT_EQ(begun.sources(), std::vector<Path>{pulled}) << "whoever brought it in, and however "
                                                             "the path was typed";
}

TEST_F(NotFinished, WhatWasNotFinishedIsOfferedOnceNobodyElseIsAtWork) {
    BegunIntake::once(library()).keep({card});
    {
        const FolderLock backup(library().folder());
        screen.refresh();
        EXPECT_FALSE(says(QStringLiteral("was not finished")));
    }
    screen.refresh();
    EXPECT_TRUE(comes_to_say(QStringLiteral("was not finished")));
}

TEST_F(NotFinished, WhatWasOnItsWayIsClearedAwayWhenTheLibraryIsOpened) {
    const Path on_its_way = library().incoming_folder() / (sha256("a") + ".part");
    std::ofstream(on_its_way) << "a";
    {
        const FolderLock other_window(library().folder());
        ASSERT_EQ(session.open(library().folder()), QString());
        ASSERT_TRUE(QTest::qWaitFor([&] { return session.work() == nullptr; }, patience_ms));
        EXPECT_TRUE(std::filesystem::exists(on_its_way)) << "it may be bringing it in";
    }
    ASSERT_EQ(session.open(library().folder()), QString());
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.work() == nullptr; }, patience_ms));
    EXPECT_FALSE(std::filesystem::exists(on_its_way));
}

// A slow disk may take its time over it.
class DiskThatTellsWhoRemoves : public FailingDisk {
  public:
    void remove(const Path& file) override {
        if (file.extension() == ".part") thread = std::this_thread::get_id();
        FailingDisk::remove(file);
    }

    std::atomic<std::thread::id> thread{};
};

TEST_F(NotFinished, WhatWasOnItsWayIsClearedAwayOffTheWindowsThread) {
    std::ofstream(library().incoming_folder() / (sha256("a") + ".part")) << "a";
    DiskThatTellsWhoRemoves disk;
    Session other{disk, decoder, [] { return at("2026-11-07T08:00:00"); }};
    ASSERT_EQ(other.open(library().folder()), QString());
    ASSERT_TRUE(QTest::qWaitFor([&] { return other.work() == nullptr; }, patience_ms));
    EXPECT_NE(disk.thread.load(), std::thread::id());
    EXPECT_NE(disk.thread.load(), std::this_thread::get_id());
}

TEST_F(NotFinished, WhatAnotherWindowBringsInIsNotCalledUnfinished) {
    BegunIntake::once(library()).keep({card});
    const FolderLock other_window(library().folder());
    EXPECT_TRUE(unfinished_intake(library()).empty());
}

TEST_F(NotFinished, AFolderIsWatchedAgainAfterTheProgramWasClosed) {
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

}  // namespace
}  // namespace quarterturn
