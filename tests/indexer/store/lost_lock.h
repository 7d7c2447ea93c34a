#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/records_file.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {

struct LostLock : testing::Test {
    ~LostLock() override {
        for (const Path& place : {made, left, folder / "moved", folder / "other"}) {
            key_ring::forget(place);
        }
    }

    static NewLock cheap() { return new_lock("seven owls below the granary", least_guess_cost()); }

    // With a photo, so that a name is locked.
    void make(const Path& place, const NewLock* lock) {
        {
            Library library = Library::create(place);
            library.clients().add(client_called("Mira Okonjo-Lindqvist"));
            library.photos().add(example_photo("IMG_1.jpg"));
            std::filesystem::create_directories(place / "photos/2026");
            write_bytes(place / "photos/2026/IMG_1.jpg", std::as_bytes(std::span("one", 3)));
        }
        if (lock != nullptr) lock_library(real_file_system(), place, *lock, {});
    }

    // The library as a kill leaves it, with a client that stands in the log alone.
    void leave_with_changes(const NewLock* lock) {
        make(made, lock);
        {
            Library library = Library::open(made);
            library.clients().add(client_called("Wal Person"));
            output_of("cp -a " + shell_word(made) + ' ' + shell_word(left));
        }
        ASSERT_GT(std::filesystem::file_size(left / "records.sqlite-wal"), 0U);
    }

    static LockWishes until_first_file() {
        const auto stop = std::make_shared<std::stop_source>();
        return {[stop](std::int64_t, std::int64_t) { stop->request_stop(); }, stop->get_token()};
    }

    // Every file with its checksum.
    static std::string all_of(const Path& place) {
        return output_of("cd " + shell_word(place) +
                         " && find . -type f -exec sha256sum {} + | sort");
    }

    static std::string refusal(const Path& place) {
        try {
            Library::open(place);
            return "opened";
        } catch (const StoreError& error) {
            return error.what();
        }
    }

    static void expect_refused_untouched(const Path& place, const std::string& because) {
        const std::string before = all_of(place);
        for (int time = 0; time < 2; ++time) {
            const std::string sentence = refusal(place);
            EXPECT_NE(sentence.find(because), std::string::npos) << sentence;
            EXPECT_EQ(sentence.find("-wal"), std::string::npos) << "told to remove changes";
            EXPECT_EQ(all_of(place), before);
        }
    }

    static void expect_all_there(const Path& place) {
        Library library = Library::open(place);
        EXPECT_EQ(library.clients().all().size(), 2U);
        EXPECT_TRUE(library.disk().exists(place / "photos/2026/IMG_1.jpg"));
        EXPECT_TRUE(record_problems(library).empty());
    }

    TemporaryFolder folder;
    Path made = folder / "made";
    Path left = folder / "left";
};

}  // namespace quarterturn
