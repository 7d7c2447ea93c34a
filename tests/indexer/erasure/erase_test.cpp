// Erasure whichever call to the disk fails, and taken up again after it.

#include "indexer/erasure/erase.h"

#include "indexer/store/erasure_table.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

std::span<const std::byte> bytes_in(std::string_view text) {
    return std::as_bytes(std::span(text));
}

// Two photos, of which one is hers, with a small picture.
struct LibraryToErase : ExampleLibrary {
    LibraryToErase() {
        hers = add("hers.jpg");
        add("other.jpg");
        Tags tags;
        tags.look = look;
        library.history().apply({"tagged", {{hers, tags}}, {}});
        write_bytes(library.cache_folder() / (sha256("hers.jpg") + ".jpg"), bytes_in("small"));
    }

    PhotoId add(const std::string& name) {
        Photo photo = example_photo(name);
        photo.file.path = "photos/2026/Mira/" + name;
        photo.file.bytes = std::ssize(name);
        std::filesystem::create_directories(library.photo_file(photo).parent_path());
        write_bytes(library.photo_file(photo), bytes_in(name));
        return library.photos().add(photo);
    }

    PhotoId hers;
};

std::size_t files_with(const Path& folder, const std::string& part) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        count += entry.path().filename().string().find(part) != std::string::npos ? 1 : 0;
    }
    return count;
}

TEST(Erase, IsTakenUpWhereverItWasInterrupted) {
    bool failed = true;
    int tried = 0;
    for (int call = 1; failed; ++call, ++tried) {
        LibraryToErase made;
        const Path folder = made.folder / "library";
        failed = false;
        FailingDisk disk;
        disk.heal();
        try {
            Library library = Library::open(folder, disk);
            const ErasurePlan plan = plan_erasure(library, made.mira, SharedPhotos::stay);
            disk.fail_from_call(call);
            erase(library, plan, parse_date("2026-11-07").value());
        } catch (const DiskError&) {
            failed = true;
        }
        Library library = Library::open(folder);
        finish_erasures(library);
        const auto erasures = ErasureTable(library.database()).all();
        if (erasures.empty()) {  // not begun
            EXPECT_TRUE(library.clients().find(made.mira)) << call;
            EXPECT_EQ(files_with(folder, "hers.jpg"), 1U) << call;
            continue;
        }
        EXPECT_FALSE(library.clients().find(made.mira)) << call;
        EXPECT_FALSE(library.photos().find(made.hers)) << call;
        EXPECT_EQ(files_with(folder, "hers.jpg") + files_with(folder, sha256("hers.jpg")), 0U)
            << call;
        EXPECT_EQ(files_with(folder, "other.jpg"), 1U) << call;
        ASSERT_EQ(erasures.size(), 1U) << call;
        EXPECT_TRUE(erasures[0].finished) << call;
    }
    EXPECT_GT(tried, 4);
}

}  // namespace
}  // namespace quarterturn
