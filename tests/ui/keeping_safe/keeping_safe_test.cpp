#include "ui/keeping_safe/keeping_safe_screen.h"

#include <QComboBox>
#include <QPushButton>

#include "indexer/backup/backup.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/library_settings.h"
#include "indexer/store/lock_library.h"
#include "tests/support/files.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/keeping_safe/backup_part.h"
#include "ui/keeping_safe/card_part.h"
#include "ui/keeping_safe/restore_part.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

// Two photos in the library, one of them on a card too.
class KeepingSafeTest : public testing::Test, protected AsksScreen {
  protected:
    KeepingSafeTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        for (const char* name : {"one.jpg", "two.jpg"}) add_photo(name);
        std::filesystem::create_directories(card);
        write(card / "one.jpg", "one.jpg");
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    static void write(const Path& file, const std::string& text) {
        write_bytes(file, std::as_bytes(std::span(text)));
    }

    void add_photo(const std::string& name) {
        Library& library = open.session.library();
        Photo photo = example_photo(name);
        photo.file.bytes = std::ssize(name);
        std::filesystem::create_directories(library.photo_file(photo).parent_path());
        write(library.photo_file(photo), name);
        library.photos().add(photo);
    }

    QWidget& asked() override { return screen; }
    template <class Part>
    Part& part() {
        return *screen.findChild<Part*>();
    }
    void wait() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return open.session.work() == nullptr; }, 20000));
        QCoreApplication::processEvents();  // what has come is shown
    }
    void back_up() {
        part<BackupPart>().back_up_to(drive);
        wait();
    }

    OpenSession open;
    KeepingSafeScreen screen{open.session};
    Path drive = open.example.folder / "BLUE STICK";
    Path card = open.example.folder / "card";
};

TEST_F(KeepingSafeTest, IsWellMadeWithNothingYet) {
    EXPECT_TRUE(says("There is no backup yet of 2 photos"));
    EXPECT_TRUE(says("Not everything has been checked yet."));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(KeepingSafeTest, BacksUpAndThenOffersThatDriveWithOnePress) {
    back_up();
    EXPECT_TRUE(says("All is safe there. New: 2 files."));
    EXPECT_FALSE(says("There is no backup yet"));
    EXPECT_EQ(open.session.library().backups().all().at(0).photos, 2);
    add_photo("three.jpg");
    press("Back up now to BLUE STICK");
    wait();
    EXPECT_EQ(open.session.library().backups().all().at(0).photos, 3);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(KeepingSafeTest, NamesAPhotoThatIsGoneFromTheLibraryAndInTheBackup) {
    back_up();
    const Photo photo = open.session.library().photos().named("one.jpg").at(0);
    std::filesystem::remove(open.session.library().photo_file(photo));
    back_up();
    EXPECT_TRUE(says("Not in the library:"));
    EXPECT_TRUE(says(
        "one.jpg is whole in this backup, and “Check everything” in Keeping it safe puts it back"));
}

// A folder that may not be read would else fill the page with one reason.
TEST_F(KeepingSafeTest, SaysEachReasonOnceOfWhatIsNotInABackup) {
    for (int i = 0; i < 40; ++i) add_photo("lost " + std::to_string(i) + ".jpg");
    for (const Photo& photo : open.session.library().photos().all()) {
        if (!photo.file.name.starts_with("lost")) continue;
        std::filesystem::remove(open.session.library().photo_file(photo));
    }
    back_up();
    EXPECT_TRUE(says("Not in the backup:"));
    EXPECT_TRUE(says("and 39 other files (qturn names them with --json) is not there"));
    EXPECT_FALSE(says("On the command line, qturn names all of them."));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(KeepingSafeTest, TellsOfPhotosAfterAsManyDaysAsSheChose) {
    auto* days = field<QComboBox>("Tell me of photos that have been in no backup for");
    EXPECT_EQ(days->currentData().toInt(), 30);
    days->setCurrentIndex(days->findData(7));
    emit days->activated(days->currentIndex());
    EXPECT_EQ(backup_days(open.session.library().settings()), 7);
    open.session.undo();
    EXPECT_EQ(days->currentData().toInt(), 30);
}

TEST_F(KeepingSafeTest, SaysWhenTheDriveIsAwayAndForgetsOneThatIsLost) {
    back_up();
    std::filesystem::rename(drive, open.example.folder / "in the drawer");
    press("Back up now to BLUE STICK");
    wait();
    EXPECT_TRUE(says("connect its drive"));
    const auto press_what_says = [&](const char* words) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text() == words) return found->click();
        }
        ADD_FAILURE() << words;
    };
    press_what_says("Forget this backup");
    QCoreApplication::processEvents();
    EXPECT_TRUE(says("taken for no backup of this library any more"));
    press_what_says("Keep it on the list");  // where a second click at once would land
    QCoreApplication::processEvents();
    EXPECT_FALSE(says("taken for no backup of this library any more"));
    press_what_says("Forget this backup");
    QCoreApplication::processEvents();
    EXPECT_EQ(open.session.library().backups().all().size(), 1U) << "asked once more";
    EXPECT_TRUE(says("taken for no backup of this library any more"));
    press_what_says("Forget it for good");
    QCoreApplication::processEvents();
    EXPECT_TRUE(open.session.library().backups().all().empty());
    EXPECT_FALSE(button("Back up now to BLUE STICK"));
}

TEST_F(KeepingSafeTest, OffersNoBackupThatWasMadeBeforeTheLockWasPutOnOrTakenOff) {
    const Path library = open.example.folder / "own";
    ASSERT_EQ(open.session.create(library), QString());
    add_photo("one.jpg");
    back_up();
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    const auto locked_meanwhile = [&](const auto& change) {
        open.session.close_for({});
        QCoreApplication::processEvents();
        change();
        EXPECT_EQ(open.session.open(library), QString());
        screen.refresh();
    };
    const auto offered = [this] { return button("Back up now to BLUE STICK") != nullptr; };
    locked_meanwhile([&] { lock_library(real_file_system(), library, lock, {}); });
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return says("It was made before the library was locked, and takes no more"); }));
    EXPECT_FALSE(offered());
    EXPECT_NE(button("Choose a drive or folder…"), nullptr);
    EXPECT_EQ(button("Read all of it"), nullptr);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    drive = open.example.folder / "RED STICK";
    back_up();
    EXPECT_NE(button("Back up now to RED STICK"), nullptr);
    locked_meanwhile([&] { unlock_for_good(real_file_system(), library, lock.keys, {}); });
    EXPECT_TRUE(QTest::qWaitFor(offered));
    EXPECT_TRUE(says("It was made before the library was unlocked, and takes no more"));
    EXPECT_EQ(button("Back up now to RED STICK"), nullptr);
    key_ring::forget(library);
}

TEST_F(KeepingSafeTest, ChecksEverythingAndSaysWhatWantsALook) {
    press("Check everything");
    wait();
    EXPECT_TRUE(says("everything is whole"));
    const Photo photo = open.session.library().photos().named("one.jpg").at(0);
    write(open.session.library().photo_file(photo), "ONE.jpg");
    press("Check everything");
    wait();
    EXPECT_TRUE(says("photos/2026/one.jpg was no longer what was brought in"));
    EXPECT_TRUE(says("wanted a look"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(KeepingSafeTest, SaysWhatMayBeDeletedFromTheCard) {
    screen.arrive({.moment = Moment::keeping_safe, .sources = {card}});
    screen.refresh();
    QCoreApplication::processEvents();  // what has come is shown
    press("Look at card");
    wait();
    EXPECT_TRUE(says("in no backup yet"));
    back_up();
    press("Look at card");
    wait();
    EXPECT_TRUE(says("Safe to delete, since the library and a backup hold them: 0 photos."));
    EXPECT_TRUE(says("the only connected backup that holds it whole lies on the same disk"));
    EXPECT_TRUE(std::filesystem::exists(card / "one.jpg"));
}

TEST_F(KeepingSafeTest, MakesALibraryAgainInANewPlace) {
    back_up();
    part<RestorePart>().choose_backup(drive);
    EXPECT_TRUE(field<QWidget>("One client alone"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    part<RestorePart>().restore_to(open.example.folder / "again");
    wait();
    EXPECT_TRUE(says("restored and checked"));
    EXPECT_EQ(Library::open(open.example.folder / "again").photos().all().size(), 2U);
}

}  // namespace
}  // namespace quarterturn
