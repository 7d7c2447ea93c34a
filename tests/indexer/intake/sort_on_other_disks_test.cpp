// Sorting where the disk or its permissions do not let every file be moved.

#include <array>

#include "indexer/intake/sort.h"
#include "indexer/intake/tagging.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

void add_the_sitting(Library& library) {
    Sitting sitting;
    sitting.client = library.clients().add(client_called("Noor Achterberg"));
    sitting.starts = at("2026-12-01T15:00");
    sitting.ends = at("2026-12-01T16:00");
    library.sittings().add(sitting);
}

// What may not be taken out of its folder, or not be put into another.
class KeptInPlace : public FailingDisk {
  public:
    void link_new(const Path& file, const Path& name) override {
        if (file.filename() == "stays.jpg") throw disk_error(EACCES, name, Doing::moving);
        FailingDisk::link_new(file, name);
    }
    void remove(const Path& file) override {
        if (keeps && file.filename() == "twice.jpg") {
            throw disk_error(EACCES, file, Doing::removing);
        }
        FailingDisk::remove(file);
    }
    bool keeps = true;
};

TEST(SortOnOtherDisks, AFileThatMayNotBeMovedKeepsNoOthersAndIsNamed) {
    TemporaryFolder folder;
    KeptInPlace disk;
    Library library = Library::create(folder / "library", disk);
    for (const char* name : {"a.jpg", "stays.jpg", "twice.jpg"}) {
        write_photo(folder / "card" / name, name[0], {.taken = "2026:12:01 15:10:00"});
    }
    import_photos(library, *make_confined_decoder(), {.sources = {folder / "card"}});
    add_the_sitting(library);
    const SortReport report = sort_by_time(library);
    EXPECT_EQ(report.placed.size(), 3U);
    ASSERT_EQ(report.not_moved.size(), 2U);
    for (const Photo& photo : library.photos().all()) {
        EXPECT_EQ(sha256(read_bytes(library.photo_file(photo))), photo.file.sha256);
        const bool moved = photo.file.path.find("Noor Achterberg") != std::string::npos;
        EXPECT_EQ(moved, !photo.file.path.ends_with("stays.jpg")) << photo.file.path;
    }
    const PhotoId stays = library.photos().named("stays.jpg").at(0).id;
    EXPECT_EQ(leave_to_time(library, std::array{stays}).size(), 1U) << "whoever places it is told";
    disk.keeps = false;
    EXPECT_EQ(sort_by_time(library).not_moved.size(), 1U) << "the second copy is gone now";
    expect_files_match_records(library);
}

// Disks such as a card's know no second names.
class DiskWithoutLinks : public FailingDisk {
  public:
    void link_new(const Path&, const Path& name) override {
        throw disk_error(EPERM, name, Doing::linking);
    }
};

TEST(SortOnOtherDisks, CopiesWhereFilesCannotHaveASecondName) {
    TemporaryFolder folder;
    DiskWithoutLinks disk;
    Library library = Library::create(folder / "library", disk);
    write_photo(folder / "card" / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    import_photos(library, *make_confined_decoder(), {.sources = {folder / "card"}});
    add_the_sitting(library);
    sort_by_time(library);
    EXPECT_EQ(library.photos().all().at(0).file.path,
              "photos/2026/2026-12-01 Noor Achterberg trial/a.jpg");
    expect_files_match_records(library);
}

}  // namespace
}  // namespace quarterturn
