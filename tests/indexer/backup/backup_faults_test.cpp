// Each call that a backup, a restore and a healing make to the disk fails once. The library is as
// it was, the backup is what it was or what it is to be, and the next run makes it whole. The
// errors take turns from call to call; where FAULTS is set, each call fails with each of them.

#include "indexer/backup/restore.h"
#include "indexer/backup/verify.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

bool is_tried(int call, int error_number) {
    return std::getenv("FAULTS") != nullptr || (call % 2 == 0) == (error_number == EIO);
}

// A library with a backup of yesterday; since then a photo came, one was moved, two changed places,
// a text was changed and somebody was erased.
struct OldBackup : BackupTest {
    OldBackup() {
        add_paper_and_picture();
        add_photo("four.jpg", {});
        add_photo("five.jpg", {});
        back_up_to(drive);
        add_photo("six.jpg", trial);
        move("one.jpg", "photos/2026/a sitting/one.jpg");
        swap(photo_named("four.jpg"), photo_named("five.jpg"));
        write_text(library.folder() / "consent-form.txt", "May I show your plait?");
    }

    void move(const std::string& name, const std::string& place) {
        const Photo photo = photo_named(name);
        std::filesystem::create_directories((library.folder() / place).parent_path());
        std::filesystem::rename(library.photo_file(photo), library.folder() / place);
        library.photos().set_path(photo.id, place);
    }

    void swap(const Photo& one, const Photo& two) {
        move(one.file.name, "photos/between");
        move(two.file.name, one.file.path);
        move(one.file.name, two.file.path);
    }
};

// Made once, and copied for each failure.
const OldBackup& old_backup() {
    static const OldBackup made;
    return made;
}

class OneFailure {
  public:
    OneFailure() {
        const Path from = old_backup().folder.path();
        std::filesystem::copy(from, folder.path(), std::filesystem::copy_options::recursive);
        before_ = files_below(folder / "library" / "photos");
    }

    int calls_when_well() {
        Library library = Library::open(folder / "library", disk_);
        disk_.heal();
        back_up_now(library);
        return disk_.calls();
    }

    void fail(int call, int error_number) {
        Library library = Library::open(folder / "library", disk_);
        disk_.fail_call(call, error_number);
        std::size_t problems = 0;  // a file of the library that could not be read is told of
        try {
            problems = back_up_now(library).problems.size();
        } catch (const DiskError& error) {
            EXPECT_TRUE(std::string{error.what()}.ends_with('.')) << error.what();
        }
        disk_.heal();
        EXPECT_EQ(files_below(folder / "library" / "photos"), before_);
        EXPECT_TRUE(sha256sum_agrees(folder / "drive" / "backup"));
        // As long as all the rest takes, so not after every call.
        if (call % 5 == 0) {
            EXPECT_LE(not_restored(), problems) << "what is missing was told";
        }
    }

    void complete() {
        Library library = Library::open(folder / "library", disk_);
        EXPECT_TRUE(back_up_now(library).problems.empty());
        EXPECT_TRUE(sha256sum_agrees(folder / "drive" / "backup"));
        const auto there = files_below(folder / "drive" / "backup");
        for (const auto& [path, text] : before_) EXPECT_EQ(there.at("photos/" + path), text);
        for (const auto& [path, text] : there) {
            const bool known = !path.starts_with("photos/") || before_.contains(path.substr(7));
            EXPECT_TRUE(known && !path.starts_with("moving/") && path != "unfinished") << path;
        }
    }

  private:
    BackupReport back_up_now(Library& library) {
        BackupWishes wishes;
        wishes.to = folder / "drive" / "backup";
        wishes.now = at("2026-11-30T10:00");
        wishes.utc = std::chrono::sys_days(parse_date("2026-11-30").value());
        return back_up(library, wishes);
    }

    // Whatever happened, a whole library can be had from it: that of yesterday or that of today.
    std::size_t not_restored() {
        const Path again = folder / "again";
        const RestoreReport report =
            restore(real_file_system(), {.from = folder / "drive" / "backup", .to = again});
        std::filesystem::remove_all(again);
        return report.problems.size();
    }

    TemporaryFolder folder;
    FailingDisk disk_;
    std::map<std::string, std::string> before_;
};

void try_every_call(int error_number) {
    const int calls = OneFailure{}.calls_when_well();
    ASSERT_GT(calls, 60);
    for (int call = 1; call <= calls; ++call) {
        if (!is_tried(call, error_number)) continue;
        SCOPED_TRACE("call " + std::to_string(call) + " of " + std::to_string(calls));
        OneFailure once;
        once.fail(call, error_number);
        once.complete();
    }
}

TEST(BackupFaults, AFullDiskAtAnyCallSpoilsNothing) {
    try_every_call(ENOSPC);
}

TEST(BackupFaults, AFailingDiskAtAnyCallSpoilsNothing) {
    try_every_call(EIO);
}

// Whether the file that the sentence begins with is not at the top of the library.
bool in_a_folder(const std::string& sentence) {
    return sentence.find('/') < sentence.find(' ');
}

void try_restoring(int error_number) {
    const Path from = old_backup().drive;
    FailingDisk disk;
    bool failed = true;
    int call = 1;
    for (; failed; ++call) {
        if (!is_tried(call, error_number)) continue;
        SCOPED_TRACE("call " + std::to_string(call));
        TemporaryFolder place;
        const RestoreWishes wishes{.from = from, .to = place / "again"};
        disk.fail_call(call, error_number);
        std::vector<std::string> problems;
        try {
            problems = restore(disk, wishes).problems;
        } catch (const std::runtime_error& error) {
            EXPECT_TRUE(std::string{error.what()}.ends_with('.')) << error.what();
        }
        failed = disk.failed();
        disk.heal();
        if (std::filesystem::exists(place / "again" / "restoring" / "of what.txt") ||
            !std::filesystem::exists(place / "again" / "records.sqlite")) {
            EXPECT_TRUE(restore(disk, wishes).problems.empty());
        }
        Library restored = Library::open(place / "again");
        const VerifyReport report = verify(restored, {});
        // A file that could not be read was told of, and is had from the backup afterwards; texts
        // at the top of the library stand in no record.
        EXPECT_EQ(std::ssize(report.troubles), std::ranges::count_if(problems, in_a_folder));
        EXPECT_TRUE(report.without_record.empty());
        EXPECT_TRUE(verify(restored, {}).troubles.empty());
        EXPECT_TRUE(sha256sum_agrees(from));
    }
    EXPECT_GT(call, 60);
}

TEST(RestoreFaults, AFullDiskAtAnyCallIsGoneOnFrom) {
    try_restoring(ENOSPC);
}

TEST(RestoreFaults, AFailingDiskAtAnyCallIsGoneOnFrom) {
    try_restoring(EIO);
}

struct ToHeal : BackupTest {
    ToHeal() {
        back_up_to(drive);
        write_text(library.photo_file(photo_named("one.jpg")), "PHOTO of one.jpg");
        std::filesystem::remove(library.photo_file(photo_named("two.jpg")));
    }
};

void try_healing(int error_number) {
    bool failed = true;
    int call = 1;
    for (; failed; ++call) {
        if (!is_tried(call, error_number)) continue;
        SCOPED_TRACE("call " + std::to_string(call));
        ToHeal made;
        FailingDisk disk;
        Library library = Library::open(made.folder / "library", disk);
        disk.fail_call(call, error_number);
        try {
            verify(library, {});
        } catch (const DiskError& error) {
            EXPECT_TRUE(std::string{error.what()}.ends_with('.')) << error.what();
        }
        failed = disk.failed();
        disk.heal();
        EXPECT_TRUE(sha256sum_agrees(made.drive));
        verify(library, {});
        VerifyReport report = verify(library, {});
        EXPECT_TRUE(report.troubles.empty());
        // What was changed is kept, once.
        ASSERT_EQ(report.without_record.size(), 1U);
        EXPECT_EQ(text_of(library.folder() / report.without_record[0]), "PHOTO of one.jpg");
    }
    EXPECT_GT(call, 20);
}

TEST(HealFaults, AFullDiskAtAnyCallLosesNothing) {
    try_healing(ENOSPC);
}

TEST(HealFaults, AFailingDiskAtAnyCallLosesNothing) {
    try_healing(EIO);
}

}  // namespace
}  // namespace quarterturn
