// What of hers lies in a locked library past its lock goes with her; what is of others, or nobody
// can tell, stays.

#include "indexer/erasure/past_the_lock.h"

#include <algorithm>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/erasure/library_to_erase.h"

namespace quarterturn {
namespace {

struct PastTheLockTest : testing::Test, LibraryToErase {
    PastTheLockTest() {
        close();
        EXPECT_TRUE(lock_library(real_file_system(), place, lock, {}).problems.empty());
        open();
    }
    ~PastTheLockTest() override { key_ring::forget(place); }

    void open() { library = Library::open(place); }
    void close() {
        const Path elsewhere = folder / "elsewhere";
        library = std::filesystem::exists(elsewhere) ? Library::open(elsewhere)
                                                     : Library::create(elsewhere);
    }

    void put(const Path& file, std::span<const std::byte> bytes) const {
        std::filesystem::create_directories((place / file).parent_path());
        write_bytes(place / file, bytes);
    }
    void put(const Path& file, std::string_view text) const { put(file, bytes_in(text)); }
    void put_sealed(const Path& file, std::string_view text) const {
        put(file, locked_contents(*lock.keys, bytes_in(text)));
    }
    bool there(const Path& file) const { return std::filesystem::exists(place / file); }
    Path place_of(const std::string& plain) const {
        return LockedFileSystem(real_file_system(), place, lock.keys).place_of(place / plain);
    }
    // As it lies on the disk, from the photo's folder into another.
    Path moved(const std::string& photo, const Path& to) const {
        const Path lies = place_of("photos/2026/Mira/" + photo);
        const Path file = to / lies.filename();
        std::filesystem::create_directories(place / to);
        std::filesystem::rename(lies, place / file);
        return file;
    }

    // Where its record says that it lies.
    std::string contents_of(const std::string& photo) {
        const Path file = library.photo_file(library.photos().named(photo).at(0));
        const Bytes bytes = library.disk().read(file, any_size);
        return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    }

    ErasurePlan plan() { return plan_erasure(library, mira, SharedPhotos::stay); }
    // What is left, which was said before too.
    std::vector<std::string> erase_her() {
        const std::vector<std::string> before = left_beforehand(library, plan());
        const Erased erased = erase(library, plan(), parse_date("2026-11-07").value());
        EXPECT_TRUE(erased.erasure.finished);
        EXPECT_EQ(erased.left, before);
        return erased.left;
    }
    // As a kill leaves it before any file is gone.
    void erase_records_alone() {
        ToErase what;
        what.client = plan().client;
        what.photos = {hers};
        what.files = copies_past_the_lock(library, plan());
        what.on = parse_date("2026-11-07").value();
        ErasureTable(library.database()).erase(what);
    }

    static void expect_said(const std::vector<std::string>& left, const Path& file,
                            const std::string& words) {
        ASSERT_EQ(left.size(), 1U);
        EXPECT_TRUE(left[0].starts_with(file.string() + " ")) << left[0];
        EXPECT_NE(left[0].find(words), std::string::npos) << left[0];
    }

    Path place = folder / "library";
    NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
};

TEST_F(PastTheLockTest, HersGoesWhereverItWasMovedAndWhateverLaidThere) {
    const Path beside(place_of("photos/2026/Mira/hers.jpg").native() + " (conflicted copy)");
    put_sealed(beside.lexically_relative(place), "hers.jpg");
    const std::vector<Path> files{moved("hers.jpg", "edited/deep"),
                                  beside.lexically_relative(place),
                                  "photos/misc/open.jpg",
                                  "album/open.jpg",
                                  "open.jpg",
                                  "cache/" + sha256("hers.jpg") + "/a.jpg",
                                  "cache/zz/" + sha256("hers.jpg") + ".jpg"};
    for (const char* open : {"photos/misc/open.jpg", "album/open.jpg", "open.jpg"}) {
        put(open, "hers.jpg");
    }
    put_sealed("sealed at the top", "hers.jpg");
    put_sealed(files[5], "hers.jpg");
    put(files[6], "a small picture of her");
    EXPECT_EQ(erase_her(), std::vector<std::string>{});
    for (const Path& file : files) EXPECT_FALSE(there(file)) << file;
    EXPECT_FALSE(there("sealed at the top"));
    EXPECT_FALSE(there("edited/deep"));
    EXPECT_EQ(contents_of("other.jpg"), "other.jpg");
}

TEST_F(PastTheLockTest, ARecordedPhotoOfOthersIsToBePutBackAndNeverToBeRemoved) {
    const Path file = moved("other.jpg", "edited");
    const std::vector<std::string> left = erase_her();
    expect_said(left, place / file, "leave it there, and qturn verify puts it back");
    EXPECT_EQ(left[0].find("remove"), std::string::npos) << left[0];
    EXPECT_TRUE(there(file));
}

TEST_F(PastTheLockTest, ACopyOfAnothersPhotoIsNoneOfHers) {
    put("edited/copy.jpg", "other.jpg");
    EXPECT_EQ(erase_her(), std::vector<std::string>{});
    EXPECT_TRUE(there("edited/copy.jpg"));
}

TEST_F(PastTheLockTest, WhatNobodyCanTellIsNotToBeRemoved) {
    put_sealed("edited/unknown", "retouched");
    const std::vector<std::string> left = erase_her();
    expect_said(left, place / "edited/unknown", "nobody can tell here what it is of: leave it");
    EXPECT_EQ(left[0].find("remove it"), std::string::npos) << left[0];
    EXPECT_TRUE(there("edited/unknown"));
}

TEST_F(PastTheLockTest, WhatIsLockedWithAnotherKeyIsNotToBeRemoved) {
    const NewLock other = new_lock("nine herons over the weir", least_guess_cost());
    put("edited/foreign", locked_contents(*other.keys, bytes_in("hers.jpg")));
    expect_said(erase_her(), place / "edited/foreign", "does not open with this library's key");
    EXPECT_TRUE(there("edited/foreign"));
}

TEST_F(PastTheLockTest, WhatLiesOpenAndIsInNoRecordIsToBeLookedAt) {
    put("edited/retouched.jpg", "retouched");
    expect_said(erase_her(), place / "edited/retouched.jpg",
                "look into it, and remove it if it is");
}

TEST_F(PastTheLockTest, ARecordedPhotoOfTheSamePathInPlainWordsStays) {
    Photo same_path = example_photo("of another");
    same_path.file.path = "photos/misc/open.jpg";
    same_path.file.sha256 = sha256("of another");
    library.photos().add(same_path);
    const Path file = place / same_path.file.path;
    library.disk().make_folders(file.parent_path());
    library.disk().write_new(file, bytes_in("of another"));
    put("photos/misc/open.jpg", "hers.jpg");
    EXPECT_EQ(erase_her(), std::vector<std::string>{});
    EXPECT_FALSE(there("photos/misc/open.jpg"));
    EXPECT_EQ(contents_of("of another"), "of another");
}

TEST_F(PastTheLockTest, AnErasureThatWasKilledGoesOn) {
    const Path file = moved("hers.jpg", "photos/misc");
    put("photos/misc/open.jpg", "hers.jpg");
    erase_records_alone();
    close();
    EXPECT_TRUE(there(file));
    open();
    finish_erasures(library);
    EXPECT_FALSE(there(file));
    EXPECT_FALSE(there("photos/misc/open.jpg"));
    EXPECT_FALSE(ErasureTable(library.database()).any_unfinished());
}

// Unlocked, each would lie elsewhere.
TEST_F(PastTheLockTest, WhatIsToGoGoesWhenTheLibraryIsUnlockedFirst) {
    const Path deep = place_of("photos/2026/Mira").lexically_relative(place);
    const Path file = deep / "moved";
    std::filesystem::rename(place_of("photos/2026/Mira/hers.jpg"), place / file);
    put(deep / "open.jpg", "hers.jpg");
    erase_records_alone();
    close();
    EXPECT_TRUE(unlock_for_good(real_file_system(), place, lock.keys, {}).problems.empty());
    EXPECT_EQ(files_below(real_file_system(), place / "photos"),
              std::vector<Path>{place / "photos/2026/Mira/other.jpg"});
    open();
    finish_erasures(library);
    EXPECT_FALSE(ErasureTable(library.database()).any_unfinished());
}

}  // namespace
}  // namespace quarterturn
