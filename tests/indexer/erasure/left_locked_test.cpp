// What a lock left as it was when it was taken off: who it may be of stays until that is settled,
// and everybody else can go.

#include "indexer/erasure/left_locked.h"

#include <algorithm>

#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/erase.h"
#include "indexer/intake/bin.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/erasure/library_to_erase.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

class DiskWithoutOneFile : public FailingDisk {
  public:
    Path bad;

    Bytes read(const Path& file, std::int64_t most_bytes) override {
        if (file == bad) throw disk_error(EIO, file, Doing::reading);
        return FailingDisk::read(file, most_bytes);
    }
};

struct WhatALockLeft : testing::Test, LibraryToErase {
    ~WhatALockLeft() override { key_ring::forget(place); }

    void close() {
        const Path elsewhere = folder / "elsewhere";
        library = std::filesystem::exists(elsewhere) ? Library::open(elsewhere)
                                                     : Library::create(elsewhere);
    }
    // Locks the library and takes the lock off again, while the disk does not give one file.
    void leave_locked(const Path& file) {
        close();
        ASSERT_TRUE(lock_library(real_file_system(), place, lock, {}).problems.empty());
        DiskWithoutOneFile disk;
        disk.bad = left = LockedFileSystem(real_file_system(), place, lock.keys).place_of(file);
        ASSERT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
        library = Library::open(place);
        ASSERT_TRUE(std::filesystem::exists(left));
    }
    void go_on_unlocking() {
        close();
        ASSERT_TRUE(unlock_for_good(real_file_system(), place, lock.keys, {}).problems.empty());
        library = Library::open(place);
    }
    Erased erase_her() {
        return erase(library, plan_erasure(library, mira, SharedPhotos::stay), day);
    }
    std::string reason_against_erasing_her() try {
        erase_her();
        return "erased";
    } catch (const StoreError& error) {
        return error.what();
    }
    Path file_called(const std::string& name) {
        return library.photo_file(library.photos().named(name).at(0));
    }
    void put_into_bin_called(const std::string& name) {
        put_into_bin(library, {{library.photos().named(name).at(0).id}}, day);
    }
    bool names_what_is_left(const std::vector<std::string>& sentences) const {
        return std::ranges::any_of(sentences, [&](const std::string& sentence) {
            return sentence.find(left.string()) != std::string::npos &&
                   sentence.find("qturn lock remove") != std::string::npos;
        });
    }

    const Date day = parse_date("2026-11-07").value();
    const Date later = parse_date("2026-12-07").value();
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    Path place = folder / "library";
    Path left;
};

TEST_F(WhatALockLeft, SheStaysWhileItMayBeHers) {
    leave_locked(file_called("hers.jpg"));
    const std::string reason = reason_against_erasing_her();
    EXPECT_TRUE(reason.starts_with("Nothing was erased: " + left.string())) << reason;
    EXPECT_NE(reason.find("qturn lock remove"), std::string::npos) << reason;
    EXPECT_TRUE(library.clients().find(mira));
    go_on_unlocking();
    EXPECT_TRUE(erase_her().left.empty());
    EXPECT_EQ(files_with(place, "hers.jpg"), 0U);
}

// Another photo of as many bytes could be hers, too: a backup may have put hers back meanwhile.
TEST_F(WhatALockLeft, SheStaysWhileItIsAsLongAsOneOfHers) {
    add("hens.jpg");
    leave_locked(file_called("hens.jpg"));
    EXPECT_TRUE(reason_against_erasing_her().starts_with("Nothing was erased: "));
    EXPECT_TRUE(library.clients().find(mira));
}

TEST_F(WhatALockLeft, SheGoesWhileItIsAnothersAndItIsNamed) {
    const std::string name = "other.jpg";
    leave_locked(file_called(name));
    const Erased erased = erase_her();
    EXPECT_TRUE(erased.erasure.finished);
    EXPECT_EQ(files_with(place, "hers.jpg"), 0U);
    EXPECT_EQ(erased.left.size(), 1U);
    EXPECT_TRUE(names_what_is_left(erased.left));
    go_on_unlocking();
    EXPECT_EQ(real_file_system().read(file_called(name), any_size).size(), name.size());
}

// What was changed may have any size.
TEST_F(WhatALockLeft, WhatOfHersWasFoundChangedIsNamedAsLeft) {
    const Path changed = file_called("hers.jpg").parent_path() / "hers (changed).jpg";
    write_bytes(changed, bytes_in("changed"));
    leave_locked(changed);
    EXPECT_TRUE(names_what_is_left(erase_her().left));
}

TEST_F(WhatALockLeft, APictureThatSheBroughtKeepsHer) {
    const Path brought = "inspiration/of Mira/wish.jpg";
    std::filesystem::create_directories((place / brought).parent_path());
    write_bytes(place / brought, bytes_in("a wish of hers"));
    Inspiration wish;
    wish.client = mira;
    wish.name = "wish.jpg";
    wish.path = brought;
    wish.sha256 = sha256("a wish of hers");
    library.inspirations().add(wish);
    leave_locked(place / brought);
    EXPECT_TRUE(reason_against_erasing_her().starts_with("Nothing was erased: "));
    EXPECT_TRUE(library.clients().find(mira));
}

TEST_F(WhatALockLeft, ASmallPictureGoesWithHer) {
    leave_locked(library.cache_folder() / (sha256("hers.jpg") + ".jpg"));
    EXPECT_TRUE(erase_her().left.empty());
    EXPECT_FALSE(std::filesystem::exists(left));
}

TEST_F(WhatALockLeft, APhotoThatItMayBeStaysInTheBinAndIsNamed) {
    leave_locked(file_called("hers.jpg"));
    put_into_bin_called("hers.jpg");
    put_into_bin_called("other.jpg");
    EXPECT_TRUE(any_to_leave_bin(library, later));
    const BinEmptied emptied = empty_bin(library);
    EXPECT_EQ(emptied.gone, 1);
    ASSERT_FALSE(emptied.left.empty());
    EXPECT_TRUE(emptied.left[0].starts_with("hers.jpg stays in the bin: ")) << emptied.left[0];
    EXPECT_TRUE(names_what_is_left(emptied.left));
    ASSERT_EQ(library.bin().all().size(), 1U);
    EXPECT_EQ(library.bin().all()[0].photo.file.name, "hers.jpg");
    EXPECT_EQ(files_with(place, "other.jpg"), 0U);
    EXPECT_FALSE(any_to_leave_bin(library, later));
    EXPECT_EQ(let_go_of_bin(library, later).gone, 0);
    go_on_unlocking();
    EXPECT_EQ(empty_bin(library).gone, 1);
    EXPECT_EQ(files_with(place, "hers.jpg"), 0U);
}

}  // namespace
}  // namespace quarterturn
