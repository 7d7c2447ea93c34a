#pragma once

#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_library.h"
#include "tests/app/card_test.h"

namespace quarterturn {

inline constexpr auto passphrase = "seven owls below the granary";

class LockTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        std::ofstream(folder / "words") << passphrase << "\nsecond line\n";
        std::ofstream(folder / "wrong") << "seven owls under the granary\n";
        std::ofstream(folder / "new words") << "nine herons over the weir\n";
        said({"client", "add", "Ada Lindqvist", "--note", "tender left ear"});
        said({"sitting", "add", "Ada Lindqvist", "--starts", "2026-10-03T10:00", "--ends",
              "2026-10-03T13:00"});
        make_photo(card / "DCIM/front.jpg", 1, "'-DateTimeOriginal=2026:10:03 11:00:00'");
        make_photo(card / "DCIM/back.jpg", 2, "'-DateTimeOriginal=2026:10:03 11:30:00'");
    }
    void TearDown() override { forget_keys(); }

    // As a new process begins.
    void forget_keys() {
        for (const char* place : {"library", "backup", "again"}) key_ring::forget(folder / place);
    }

    std::string lock_it() {
        const std::string told = said({"lock", "set", "--new-passphrase-file", folder / "words",
                                       "--recovery-key-out", folder / "key.pdf"});
        const std::string before = "Recovery key: ";
        constexpr std::size_t key_letters = 44;
        return told.substr(told.find(before) + before.size(), key_letters);
    }

    Arguments with(const char* words, Arguments arguments) {
        forget_keys();
        arguments.insert(arguments.end(), {"--passphrase-file", folder / words});
        return arguments;
    }

    // As "lock set" or "lock remove" leaves the library when it is killed at the end.
    void interrupt(LockState state) {
        LockFile lock = read_lock(real_file_system(), library).value();
        lock.state = state;
        write_lock(real_file_system(), library, lock);
        forget_keys();
    }

    Path first_photo_file() {
        std::vector<Path> files = files_below(real_file_system(), Path(library) / "photos");
        return files.at(0);
    }

    // Which of the texts stands in a name or a byte of the folder.
    std::string found_in(const std::filesystem::path& place,
                         const std::vector<std::string>& texts) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(place)) {
            std::string all = entry.path().lexically_relative(place).string();
            if (entry.is_regular_file()) all += text_of(entry.path());
            for (const std::string& text : texts) {
                if (all.find(text) != std::string::npos) return text + ": " + entry.path().string();
            }
        }
        return {};
    }

    const std::vector<std::string> secrets{
        "Lindqvist",     "tender left ear", "Low bun",    "front.jpg",
        "curl on tongs", "laughs so",       "2026-10-03", std::string("JFIF\0", 5),
        "SQLite format", "\x89PNG\r\n",     passphrase};
};

}  // namespace quarterturn
