#pragma once
// A library with records, photos and papers that is about to be locked, and what it must be after.

#include <set>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/records_file.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/seen_from_outside.h"

namespace quarterturn {

using FileTexts = std::map<std::string, std::string>;

inline constexpr auto first_passphrase = "seven owls below the granary";
inline constexpr auto second_passphrase = "nine herons over the weir";

inline bool is_file_of_hers(const std::string& path) {
    return !path.starts_with("records.sqlite") && path != lock_file_name;
}

// As the program reads them.
inline FileTexts files_of_hers(Library& library) {
    FileTexts files;
    for (const Path& file : files_below(library.disk(), library.folder())) {
        const std::string path = file.lexically_relative(library.folder()).generic_string();
        if (!is_file_of_hers(path)) continue;
        const Bytes bytes = library.disk().read(file, any_size);
        files[path] = {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    }
    return files;
}

// As they lie there.
inline FileTexts plain_files_of_hers(const Path& library) {
    FileTexts files = files_below(library);
    std::erase_if(files, [](const auto& file) { return !is_file_of_hers(file.first); });
    return files;
}

// Whatever of hers stands in a byte or a name of the folder.
inline std::set<std::string> readable_in(const Path& folder) {
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const std::string path = entry.path().lexically_relative(folder).generic_string();
        const std::string all = path + (entry.is_regular_file() ? text_of(entry.path()) : "");
        for (const char* text : {"Okonjo", "Old Granary", "photo of", "one.jpg", "scan of the form",
                                 "torn out", "May I show", "small picture", "SQLite format"}) {
            if (all.find(text) != std::string::npos) found.insert(text + (" in " + path));
        }
    }
    return found;
}

// The library as it was before, with changes that stand in the log of the records alone.
struct LibraryToLock : BackupTest {
    LibraryToLock() {
        add_paper_and_picture();
        write_text(library.photo_file(example_photo("long one.jpg")), std::string(70'000, 'x'));
        write_text(library.cache_folder() / "ab/small.jpg", "a small picture");
        photos = library.photos().all();
        std::filesystem::copy(library.folder(), place, std::filesystem::copy_options::recursive);
        files = plain_files_of_hers(place);
    }
    ~LibraryToLock() { key_ring::forget(place); }

    void expect_plain(const Path& there) const {
        EXPECT_FALSE(std::filesystem::exists(there / lock_file_name));
        EXPECT_EQ(wrong_from_outside(there), std::vector<std::string>{});
        EXPECT_EQ(plain_files_of_hers(there), files);
        Library opened = Library::open(there);
        EXPECT_EQ(opened.photos().all(), photos);
        EXPECT_EQ(records_of_others(opened), std::vector<std::string>{});
    }

    void expect_locked(const Path& there) const {
        {
            Library opened = Library::open(there);
            EXPECT_TRUE(opened.keys());
            EXPECT_EQ(record_problems(opened), std::vector<std::string>{});
            EXPECT_EQ(records_of_others(opened), std::vector<std::string>{});
            EXPECT_EQ(opened.photos().all(), photos);
            EXPECT_EQ(files_of_hers(opened), files);
        }
        EXPECT_EQ(readable_in(there), std::set<std::string>{});
    }

    NewLock lock = new_lock(first_passphrase, least_guess_cost());
    Path place = folder / "to lock";
    std::vector<Photo> photos;
    FileTexts files;
};

// The records are sound, and each photo is what was recorded.
inline void expect_sound(const Path& there) {
    Library library = Library::open(there);
    EXPECT_EQ(record_problems(library), std::vector<std::string>{});
    for (const Photo& photo : library.photos().all()) {
        EXPECT_EQ(sha256(library.disk().read(library.photo_file(photo), any_size)),
                  photo.file.sha256)
            << photo.file.path;
    }
}

// As somebody opens it who has the passphrase and the folder.
inline KeysInHand keys_by(const Path& library, std::string_view passphrase) try {
    return keys_from(read_lock(real_file_system(), library).value(), passphrase);
} catch (const LockError&) {
    return nullptr;
}

// Opens with one of the two passphrases, and with the recovery key.
inline void expect_one_passphrase(const Path& library, const NewLock& lock) {
    EXPECT_NE(keys_by(library, first_passphrase) == nullptr,
              keys_by(library, second_passphrase) == nullptr);
    EXPECT_NE(keys_by(library, lock.recovery_key), nullptr);
}

}  // namespace quarterturn
