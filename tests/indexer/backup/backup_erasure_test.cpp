// Of what a backup has to remove, each file in turn cannot be removed.

#include "indexer/backup/backup_words.h"
#include "indexer/backup/erased_there.h"
#include "indexer/erasure/erase.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

bool says(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

class StickyDisk : public FailingDisk {
  public:
    void remove(const Path& file) override {
        if (sticks.contains(file)) throw disk_error(EACCES, file, Doing::removing);
        FailingDisk::remove(file);
    }

    std::set<Path> sticks;
};

// A client was erased since the second of two backups.
struct BackupOfErased : BackupTest {
    BackupOfErased() {
        add_paper_and_picture();
        back_up_to(drive);
        add_photo("four.jpg", trial);
        back_up_to(drive);
        erased = erase(library, plan_erasure(library, mira, SharedPhotos::stay),
                       parse_date("2026-11-09").value())
                     .erasure.id;
    }

    BackupReport back_up_on(FileSystem& disk) {
        Library on_it = Library::open(library.folder(), disk);
        BackupWishes wishes;
        wishes.to = drive;
        wishes.now = at("2026-11-10T18:00") + std::chrono::days(times_);
        wishes.utc =
            std::chrono::sys_days(parse_date("2026-11-10").value()) + std::chrono::days(times_++);
        return back_up(on_it, wishes);
    }

    std::set<std::string> names_there() const {
        std::set<std::string> names;
        for (const auto& [path, text] : files_below(drive)) names.insert(path);
        return names;
    }

    Backup known() { return library.backups().all().at(0); }
    std::size_t backups_that_may_hold_her() {
        return library.backups().before_erasure(erased).size();
    }

    ErasureId erased;

  private:
    int times_ = 0;
};

struct Removal {
    std::set<std::string> goes;   // each file that a backup removes, and the list of them
    std::set<std::string> stays;  // what lies there afterwards
};

Removal removal_when_well() {
    BackupOfErased made;
    StickyDisk disk;
    Removal removal{made.names_there(), {}};
    made.back_up_on(disk);
    removal.stays = made.names_there();
    for (const std::string& name : removal.stays) removal.goes.erase(name);
    removal.goes.insert("unfinished");
    return removal;
}

void expect_all_gone(BackupOfErased& made, const std::set<std::string>& goes) {
    EXPECT_EQ(made.backups_that_may_hold_her(), 0U);
    EXPECT_EQ(erased_there_words(made.library, made.known()), "");
    for (const auto& [path, text] : files_below(made.drive)) {
        EXPECT_FALSE(goes.contains(path)) << path;
        EXPECT_FALSE(says(text, "Okonjo")) << path;
    }
    EXPECT_TRUE(sha256sum_agrees(made.drive));
}

TEST(BackupOfWhoWasErased, LosesAllButTheFileThatWillNotGoAndThatTheNextTime) {
    const Removal removal = removal_when_well();
    ASSERT_GE(removal.goes.size(), 8U) << "photos, a paper, a picture, records";
    for (const std::string& path : removal.goes) {
        SCOPED_TRACE(path);
        BackupOfErased made;
        StickyDisk disk;
        disk.sticks = {made.drive / path};
        const BackupReport report = made.back_up_on(disk);
        ASSERT_EQ(report.staying.size(), 1U);
        EXPECT_EQ(report.staying[0].file, made.drive / path);
        EXPECT_TRUE(says(report.staying[0].reason, "may not be removed"));
        std::set<std::string> left = removal.stays;
        left.insert({path, "unfinished"});
        EXPECT_EQ(made.names_there(), left);
        EXPECT_TRUE(sha256sum_agrees(made.drive));

        EXPECT_EQ(made.known().at, at("2026-11-10T18:00")) << "the backup is made";
        EXPECT_EQ(made.known().photos, std::ssize(made.library.photos().all()));
        EXPECT_EQ(made.backups_that_may_hold_her(), 1U);
        EXPECT_TRUE(
            says(erased_there_words(made.library, made.known()), "the next backup to it goes on"));

        disk.sticks.clear();
        const BackupReport next = made.back_up_on(disk);
        EXPECT_TRUE(next.staying.empty());
        EXPECT_EQ(next.removed, path == "unfinished" || is_records_path(path) ? 0 : 1);
        EXPECT_EQ(report.records_erased + next.records_erased, 2);
        expect_all_gone(made, removal.goes);
    }
}

TEST(BackupOfWhoWasErased, IsSaidToTakeNoMoreOnlyWhereALockMayHaveComeBetween) {
    BackupOfErased made;
    const auto may_take_no_more = [&] {
        return says(erased_there_words(made.library, made.known()), "locked or unlocked for good");
    };
    EXPECT_FALSE(may_take_no_more());
    write_text(made.drive / lock_file_name, "{}");
    EXPECT_TRUE(may_take_no_more());
    std::filesystem::remove(made.drive / lock_file_name);

    const Path place = made.library.folder();
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    { const Library closed = std::move(made.library); }
    lock_library(real_file_system(), place, lock, {});
    made.reopen();
    EXPECT_TRUE(may_take_no_more());
    { const Library closed = std::move(made.library); }
    EXPECT_TRUE(unlock_for_good(real_file_system(), place, lock.keys, {}).problems.empty());
    made.reopen();
    EXPECT_TRUE(may_take_no_more());
}

TEST(BackupOfWhoWasErased, NamesAReasonOnceForAllFilesThatStay) {
    const Removal removal = removal_when_well();
    BackupOfErased made;
    StickyDisk disk;
    for (const std::string& path : removal.goes) disk.sticks.insert(made.drive / path);
    const BackupReport report = made.back_up_on(disk);
    EXPECT_EQ(report.staying.size(), removal.goes.size() - 1) << "the list is written anew";
    EXPECT_EQ(report.removed, 0);
    const auto lines = staying_lines(report);
    ASSERT_EQ(lines.size(), report.staying.size() + 2);
    EXPECT_TRUE(says(lines[0], "the next backup to it goes on"));
    EXPECT_TRUE(says(
        lines[1], "Each of " + std::to_string(report.staying.size()) + " files may not be removed"))
        << lines[1];
    disk.sticks.clear();
    made.back_up_on(disk);
    expect_all_gone(made, removal.goes);
}

// Its name stands among what the erasure left to be looked at for as long as it lies there.
TEST(BackupOfWhoWasErased, NamesNoFileOfTheLibraryThatIsNoneOfIt) {
    BackupTest made;
    write_text(made.library.folder() / "notes of Mira Okonjo-Lindqvist.txt",
               "Mira Okonjo-Lindqvist");
    erase(made.library, plan_erasure(made.library, made.mira, SharedPhotos::stay),
          parse_date("2026-11-09").value());
    ASSERT_EQ(left_by_erasures(made.library).size(), 1U);
    made.back_up_to(made.drive);
    for (const auto& [path, text] : files_below(made.drive)) {
        EXPECT_FALSE(says(text, "Okonjo")) << path;
    }
    EXPECT_TRUE(sha256sum_agrees(made.drive));
    EXPECT_EQ(left_by_erasures(made.library).size(), 1U) << "she is still told here";
}

}  // namespace
}  // namespace quarterturn
