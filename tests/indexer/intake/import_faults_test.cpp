// Whatever the disk does, her photos are safe: each call of an import fails once, in turn.

#include "indexer/worker/confined.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/failing_disk.h"
#include "tests/support/seen_from_outside.h"

namespace quarterturn {
namespace {

constexpr int photo_count = 3;

// Made once: a copy of it is a library too, and quicker to be had.
const Path& empty_library() {
    static const TemporaryFolder folder;
    static const Path made = [] {
        Library::create(folder / "library");
        return folder / "library";
    }();
    return made;
}

class OneFailure {
  public:
    OneFailure() {
        for (int i = 0; i < photo_count; ++i) {
            write_photo(card / ("IMG_" + std::to_string(i) + ".jpg"), i,
                        {.taken = "2026:11:07 10:1" + std::to_string(i) + ":00"});
        }
        write_file(card / "notes.txt", "ask about the veil");
        original_ = all_files(card);
        std::filesystem::copy(empty_library(), folder / "library",
                              std::filesystem::copy_options::recursive);
    }

    // How many calls an import makes when nothing fails.
    int calls_when_well() {
        Library library = Library::open(folder / "library", disk_);
        disk_.heal();
        import(library);
        return disk_.calls();
    }

    void fail(int call, int error_number) {
        Library library = Library::open(folder / "library", disk_);
        disk_.fail_call(call, error_number);
        try {
            import(library);
        } catch (const DiskError& error) {
            EXPECT_TRUE(std::string{error.what()}.ends_with('.')) << error.what();
        }
        disk_.heal();
        EXPECT_EQ(all_files(card), original_);
        EXPECT_EQ(wrong_from_outside(library.folder()), std::vector<std::string>{});
        for (const auto& [file, bytes] : all_files(library.folder() / "photos")) {
            EXPECT_TRUE(std::ranges::any_of(original_,
                                            [&](const auto& one) { return one.second == bytes; }))
                << file << " is half a photo";
        }
    }

    void complete() {
        Library library = Library::open(folder / "library", disk_);
        const ImportReport report = import(library);
        EXPECT_TRUE(report.refused.empty());
        EXPECT_EQ(report.already_here.size() + report.imported.size(), photo_count);
        EXPECT_EQ(library.photos().all().size(), photo_count);
        expect_files_match_records(library);
        EXPECT_EQ(all_files(card), original_);
    }

  private:
    ImportReport import(Library& library) {
        return import_photos(library, *decoder_, {.sources = {card}});
    }

    TemporaryFolder folder;
    Path card = folder / "card";
    FailingDisk disk_;
    std::unique_ptr<Decoder> decoder_ = make_confined_decoder();
    std::map<Path, Bytes> original_;
};

void try_every_call(int error_number) {
    const int calls = OneFailure{}.calls_when_well();
    ASSERT_GT(calls, 30);
    for (int call = 1; call <= calls; ++call) {
        SCOPED_TRACE("call " + std::to_string(call) + " of " + std::to_string(calls));
        OneFailure once;
        once.fail(call, error_number);
        once.complete();
    }
}

TEST(ImportFaults, AFullDiskAtAnyCallLosesNothing) {
    try_every_call(ENOSPC);
}

TEST(ImportFaults, AFailingDiskAtAnyCallLosesNothing) {
    try_every_call(EIO);
}

// Fails at what is done with a photo's copy, where it waits and where it belongs.
class FailingAtCopies : public FailingDisk {
  protected:
    bool counts(const Path& file) const override {
        return file.extension() == ".part" || file.native().find("/photos/") != std::string::npos;
    }
};

struct OnePhotoFails : ImportTest {
    OnePhotoFails() {
        for (int i = 0; i < photo_count; ++i) {
            const std::string day = "0" + std::to_string(i + 1);  // a folder for each
            write_photo(card / ("IMG_" + day + ".jpg"), i,
                        {.taken = "2026:11:" + day + " 10:10:00"});
        }
        library = Library::open(place, disk);
    }
    ~OnePhotoFails() override { library = Library::create(folder / "none"); }

    int calls_when_well() {
        disk.heal();
        EXPECT_EQ(bring_in().imported.size(), photo_count);
        return disk.calls();
    }

    void begin_again() {
        library = Library::create(folder / "none");
        std::filesystem::remove_all(folder / "none");
        std::filesystem::remove_all(place);
        std::filesystem::copy(empty_library(), place, std::filesystem::copy_options::recursive);
        library = Library::open(place, disk);
    }

    Path place = folder / "library";
    FailingAtCopies disk;
};

TEST_F(OnePhotoFails, KeepsNoOtherOutWhicheverCallIsRefused) {
    const int calls = calls_when_well();
    ASSERT_GT(calls, 6 * photo_count);
    for (const int error : {EIO, EACCES}) {
        for (int call = 1; call <= calls; ++call) {
            SCOPED_TRACE("call " + std::to_string(call) + " of " + std::to_string(calls));
            begin_again();
            disk.fail_call(call, error);
            const ImportReport report = bring_in();
            disk.heal();
            EXPECT_LE(report.refused.size(), 1U);
            EXPECT_EQ(report.imported.size() + report.refused.size(), photo_count);
            EXPECT_EQ(library.photos().all().size(), report.imported.size());
            for (const RefusedFile& refused : report.refused) {
                EXPECT_EQ(refused.file.parent_path(), card);
                EXPECT_TRUE(refused.reason.ends_with('.')) << refused.reason;
            }
            EXPECT_EQ(wrong_from_outside(place), std::vector<std::string>{});
            EXPECT_EQ(bring_in().imported.size(), report.refused.size());
            expect_files_match_records(library);
        }
    }
}

TEST_F(OnePhotoFails, ADiskThatIsFullOrGoneStopsItAndSaysWhatWasKept) {
    const int calls = calls_when_well();
    for (const int error : {ENOSPC, EIO, EROFS}) {
        for (int call = 1; call <= calls; call += 3) {
            SCOPED_TRACE("call " + std::to_string(call) + " of " + std::to_string(calls));
            begin_again();
            disk.fail_from_call(call, error);
            try {
                EXPECT_EQ(bring_in().imported.size(), photo_count) << "all but the last tidying";
            } catch (const DiskError& stopped) {
                EXPECT_NE(std::string(stopped.what()).find("Brought in and kept before that: 0"),
                          std::string::npos)
                    << stopped.what();
            }
            disk.heal();
            EXPECT_EQ(wrong_from_outside(place), std::vector<std::string>{});
        }
    }
}

TEST_F(OnePhotoFails, AFolderThatTakesNothingKeepsOnlyItsOwnOut) {
    struct ShutFolder : FailingDisk {
        void rename_new(const Path& from, const Path& to) override {
            if (to.native().find("2026-11-02") != std::string::npos) {
                throw disk_error(EACCES, to, Doing::moving);
            }
            FailingDisk::rename_new(from, to);
        }
    } shut;
    library = Library::open(place, shut);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), photo_count - 1U);
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_EQ(report.refused[0].file, card / "IMG_02.jpg");
    EXPECT_NE(report.refused[0].reason.find("allow it in its folder's permissions"),
              std::string::npos);
    library = Library::open(place, disk);
    EXPECT_EQ(bring_in().imported.size(), 1U);
    expect_files_match_records(library);
}

// A disk on which what is written reads back different.
class LyingDisk : public FailingDisk {
  public:
    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        FailingDisk::read_back(file, [&](std::span<const std::byte> piece) {
            Bytes changed(piece.begin(), piece.end());
            changed.at(changed.size() / 2) ^= std::byte{1};
            take(changed);
        });
    }
};

TEST(ImportFaults, ACopyThatReadsBackDifferentIsNotTakenForAPhoto) {
    TemporaryFolder folder;
    write_photo(folder / "card" / "a.jpg", 1);
    LyingDisk disk;
    Library library = Library::create(folder / "library", disk);
    const auto decoder = make_confined_decoder();
    EXPECT_THROW(import_photos(library, *decoder, {.sources = {folder / "card"}}), DiskError);
    EXPECT_TRUE(library.photos().all().empty());
    expect_files_match_records(library);
}

TEST(ImportFaults, ASecondImportAtTheSameTimeIsToldToWait) {
    TemporaryFolder folder;
    write_photo(folder / "card" / "a.jpg", 1);
    Library library = Library::create(folder / "library");
    const auto decoder = make_confined_decoder();
    ImportWishes wishes{.sources = {folder / "card"}};
    int tried = 0;
    wishes.progress = [&](const ImportProgress&) {
        Library second = Library::open(folder / "library");
        EXPECT_THROW(import_photos(second, *decoder, {.sources = {folder / "card"}}), StoreError);
        ++tried;
    };
    EXPECT_EQ(import_photos(library, *decoder, wishes).imported.size(), 1U);
    EXPECT_EQ(tried, 1);
}

// As some disks and encrypted homes do, which take shorter names than others.
struct DiskOfShortNames : FailingDisk {
    bool exists(const Path& file) override {
        if (file.filename().native().starts_with("nnnn")) {
            throw disk_error(ENAMETOOLONG, file, Doing::reading);
        }
        return FailingDisk::exists(file);
    }
};

TEST_F(ImportTest, ANameThatTheDiskDoesNotTakeKeepsNoOthersOut) {
    write_photo(card / "a.jpg", 1);
    write_photo(card / (std::string(60, 'n') + ".jpg"), 2);
    DiskOfShortNames disk;
    library = Library::open(folder / "library", disk);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_NE(report.refused[0].reason.find("choose a shorter one"), std::string::npos);
    library = Library::create(folder / "elsewhere");  // before its disk goes
}

}  // namespace
}  // namespace quarterturn
