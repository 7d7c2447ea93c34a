// The main job on a locked library, and a search of every byte of it.

#include <sys/stat.h>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_library.h"
#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

constexpr auto passphrase = "seven owls below the granary";

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

TEST_F(LockTest, TheMainJobLeavesNothingToRead) {
    lock_it();
    said({"look", "add", "Ada Lindqvist", "Low bun", "--sitting", "1"});
    said({"recipe", "set", "Low bun", "--part", "build.1.words=curl on tongs"});
    EXPECT_EQ(answer({"import", card})["imported"], 2);
    said({"tag", "front.jpg", "back.jpg", "--look", "Low bun", "--stage", "after"});
    said({"tag", "front.jpg", "--angle", "front", "--note", "laughs so"});
    said({"tag", "back.jpg", "--angle", "back"});
    said({"rebuild-cache"});
    said({"undo"});
    said({"redo"});
    EXPECT_EQ(photos().size(), 2U);
    const auto sheet = folder / "sheet.pdf";
    said({"sheet", "Low bun", "--out", sheet});
    EXPECT_NE(output_of("pdftotext " + shell_word(sheet) + " -").find("Low bun"),
              std::string::npos);
    EXPECT_EQ(output_of("pdfimages -list " + shell_word(sheet) + " | grep -c image"), "2\n");
    EXPECT_EQ(answer({"verify"})["whole"], true);
    said({"backup", folder / "backup"});
    EXPECT_EQ(found_in(library, secrets), "");
    EXPECT_EQ(found_in(folder / "backup", secrets), "");
}

TEST_F(LockTest, OpensWithThePassphraseOrTheRecoveryKey) {
    said({"import", card});
    const std::string key = lock_it();
    std::ofstream(folder / "key words") << key << '\n';
    EXPECT_EQ(answer(with("words", {"photos"}))["photos"].size(), 2U);
    EXPECT_EQ(answer(with("key words", {"photos"}))["photos"].size(), 2U);
    EXPECT_NE(complained(with("wrong", {"photos"}), 1).find("That is not the passphrase"),
              std::string::npos);
    forget_keys();
    EXPECT_NE(complained({"photos"}, 2).find("nobody can be asked"), std::string::npos);
    EXPECT_NE(
        output_of("pdftotext " + shell_word(folder / "key.pdf") + " -").find(key.substr(0, 4)),
        std::string::npos);
}

TEST_F(LockTest, TakesANewPassphraseAndANewRecoveryKey) {
    const std::string key = lock_it();
    said(with("words", {"lock", "change", "--new-passphrase-file", folder / "new words"}));
    complained(with("words", {"photos"}), 1);
    said(with("new words", {"lock", "recovery-key", "--recovery-key-out", folder / "key-2.pdf"}));
    std::ofstream(folder / "key words") << key << '\n';
    complained(with("key words", {"photos"}), 1);
    said(with("new words", {"photos"}));
}

TEST_F(LockTest, IsRemovedForGood) {
    said({"import", card});
    EXPECT_EQ(answer({"lock", "status"})["locked"], false);
    lock_it();
    forget_keys();
    const json locked = answer({"lock", "status"});
    EXPECT_EQ(locked["locked"], true);
    EXPECT_EQ(locked["left"], json::array());
    said(with("words", {"lock", "remove"}));
    EXPECT_EQ(answer({"lock", "status"})["locked"], false);
    EXPECT_EQ(photos().size(), 2U);
    EXPECT_EQ(answer({"verify"})["whole"], true);
    EXPECT_EQ(output_of("cd " + shell_word(library) + " && find photos -name front.jpg | wc -l"),
              "1\n");
}

TEST_F(LockTest, GoesOnWithLockingThatWasInterruptedAndSaysSo) {
    said({"import", card});
    lock_it();
    ASSERT_EQ(::mkfifo((std::filesystem::path(library) / "photos/pipe").c_str(), 0600), 0);
    interrupt(LockState::locking);
    EXPECT_EQ(answer({"lock", "status"}, 3)["unfinished"], true);
    EXPECT_NE(complained({"lock", "set", "--new-passphrase-file", folder / "words",
                          "--recovery-key-out", folder / "key-2.pdf"},
                         1)
                  .find("run another command, such as qturn photos, to go on"),
              std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(folder / "key-2.pdf"));
    const Ran ran = run(with("words", {"photos"}));
    EXPECT_EQ(ran.code, 0) << ran.error;
    EXPECT_NE(ran.error.find("Locking this library was interrupted: going on with that first."),
              std::string::npos)
        << ran.error;
    EXPECT_NE(ran.error.find("photos/pipe is no ordinary file and was left as it is: remove it."),
              std::string::npos)
        << ran.error;
    EXPECT_EQ(ran.out.find("interrupted"), std::string::npos) << "it is no part of the answer";
    const json status = answer({"lock", "status"}, 3);
    EXPECT_EQ(status["locked"], true);
    EXPECT_EQ(status["unfinished"], false);
    EXPECT_EQ(status["left"], json::array({"photos/pipe"}));
    EXPECT_EQ(run(with("words", {"photos"})).error, "") << "said once";
}

TEST_F(LockTest, GoesOnWithUnlockingThatWasInterruptedAndSaysSo) {
    said({"import", card});
    lock_it();
    const Path damaged = first_photo_file();
    auto bytes = read_bytes(damaged);
    bytes.at(bytes.size() / 2) ^= std::byte{1};
    write_bytes(damaged, bytes);
    interrupt(LockState::unlocking);
    const Ran ran = run(with("words", {"photos"}));
    EXPECT_EQ(ran.code, 0) << ran.error;
    EXPECT_NE(ran.error.find("Unlocking this library for good was interrupted: going on with that "
                             "first."),
              std::string::npos)
        << ran.error;
    EXPECT_NE(ran.error.find("is damaged: check the library (qturn verify)"), std::string::npos)
        << ran.error;
    EXPECT_EQ(answer({"lock", "status"})["locked"], false);
    EXPECT_EQ(answer({"verify"}, 3)["troubles"].size(), 1U);
}

TEST_F(LockTest, AnotherLibrarysLockThatIsHalfDoneIsToldOfAndNotObeyed) {
    said({"import", card});
    LockFile other = new_lock("nine herons over the weir", least_guess_cost()).file;
    for (const LockState state : {LockState::locking, LockState::unlocking}) {
        other.state = state;
        write_lock(real_file_system(), library, other);
        for (const Arguments& asked :
             {Arguments{"lock", "status"}, Arguments{"photos"}, Arguments{"lock", "remove"}}) {
            for (const char* words : {"wrong", "new words"}) {
                const std::string told = complained(with(words, asked), 1);
                EXPECT_NE(told.find("belongs to another library, and this one is not locked: move "
                                    "lock.json out of the folder"),
                          std::string::npos)
                    << told;
                EXPECT_EQ(told.find("going on"), std::string::npos) << told;
            }
        }
        EXPECT_EQ(read_lock(real_file_system(), library)->mark, other.mark);
    }
}

TEST_F(LockTest, OfALinkThatLeadsNowhereInItsPlaceItIsSaidWhatToDo) {
    said({"import", card});
    for (const char* name : {lock_file_name, left_lock_name}) {
        const auto link = std::filesystem::path(library) / name;
        std::filesystem::create_symlink("/nowhere/lock.json", link);
        for (const Arguments& asked :
             {Arguments{"lock", "status"}, Arguments{"lock", "remove"},
              Arguments{"lock", "set", "--new-passphrase-file", folder / "words",
                        "--recovery-key-out", folder / "key.pdf"}}) {
            const std::string words = complained(with("words", asked), 1);
            EXPECT_NE(words.find("is a link to /nowhere/lock.json, where nothing lies: connect"),
                      std::string::npos)
                << words;
        }
        EXPECT_FALSE(std::filesystem::exists(folder / "key.pdf"));
        std::filesystem::remove(link);
    }
}

TEST_F(LockTest, WhereLockingWasInterruptedTheStatusSaysWhatHelps) {
    said({"import", card});
    lock_it();
    interrupt(LockState::locking);
    const std::string words = said(with("wrong", {"lock", "status"}), 3);
    EXPECT_NE(words.find("give its passphrase or recovery key, to go on. Where neither is taken"),
              std::string::npos)
        << words;
}

TEST_F(LockTest, TheStatusSaysWhatLiesOpenInALockedLibrary) {
    said({"import", card});
    lock_it();
    forget_keys();
    const auto open = std::filesystem::path(library) / "photos/by hand/Ada.jpg";
    std::filesystem::create_directories(open.parent_path());
    std::ofstream(open) << "past the lock";
    const std::string words = said({"lock", "status"}, 3);
    EXPECT_NE(words.find("who can read the disk: 1 file or folder. qturn verify"),
              std::string::npos)
        << words;
    EXPECT_NE(words.find("\nphotos/by hand/Ada.jpg"), std::string::npos) << words;
}

// As when the disk did not give one file while the lock was taken off.
TEST_F(LockTest, TheStatusSaysWhatIsStillLocked) {
    said({"import", card});
    lock_it();
    const Path place(library);
    const Path photo = first_photo_file();
    const auto bytes = read_bytes(photo);
    LockFile lock = read_lock(real_file_system(), place).value();
    lock.state = LockState::unlocking;
    said(with("words", {"lock", "remove"}));
    forget_keys();
    std::filesystem::create_directories(photo.parent_path());
    write_bytes(photo, bytes);
    write_lock(real_file_system(), place, lock);
    std::filesystem::rename(place / lock_file_name, place / left_lock_name);
    const json status = answer({"lock", "status"}, 3);
    EXPECT_EQ(status["locked"], false);
    EXPECT_EQ(status["left"], json::array({photo.lexically_relative(place).string()}));
    const std::string words = said({"lock", "status"}, 3);
    EXPECT_NE(words.find("could not be read, or was not there, when"), std::string::npos) << words;
    EXPECT_NE(words.find("go on with qturn lock remove"), std::string::npos);
    EXPECT_NE(said({"verify"}, 3).find("before you bring one in again"), std::string::npos)
        << "it is the photo that is missing";
    said(with("words", {"lock", "remove"}));
    EXPECT_EQ(answer({"lock", "status"})["left"], json::array());
}

TEST_F(LockTest, TheStatusSaysWhatWasMovedByHand) {
    said({"import", card});
    lock_it();
    const Path place(library);
    const Path photo = first_photo_file();
    std::filesystem::rename(photo, place / "photos" / photo.filename());
    const json status = answer(with("words", {"lock", "status"}), 3);
    EXPECT_EQ(status["moved"], json::array({(Path("photos") / photo.filename()).string()}));
}

TEST_F(LockTest, WithoutItsLockFileTheStatusSaysWhatIsMissing) {
    said({"import", card});
    lock_it();
    forget_keys();
    std::filesystem::remove(std::filesystem::path(library) / lock_file_name);
    const std::string words = complained({"lock", "status"}, 1);
    EXPECT_NE(words.find("its lock.json is gone"), std::string::npos) << words;
    EXPECT_NE(words.find("Copy lock.json into it from the newest backup"), std::string::npos);
    EXPECT_EQ(complained({"lock", "remove"}, 1), words);
    EXPECT_EQ(complained({"lock", "change"}, 1), words);
    EXPECT_EQ(complained({"lock", "recovery-key", "--recovery-key-out", folder / "key-2.pdf"}, 1),
              words);
}

TEST_F(LockTest, RestoresALockedBackup) {
    said({"import", card});
    lock_it();
    said({"backup", folder / "backup"});
    const auto again = folder / "again";
    complained(with("wrong", {"restore", folder / "backup", "--to", again}), 1);
    said(with("words", {"restore", folder / "backup", "--to", again}));
    library = again;
    EXPECT_EQ(answer(with("words", {"photos"}))["photos"].size(), 2U);
    EXPECT_EQ(answer({"verify"})["whole"], true);
    EXPECT_EQ(found_in(again, secrets), "");
}

TEST_F(LockTest, ErasesAClientOfALockedLibrary) {
    said({"import", card});
    lock_it();
    std::size_t before = 0;
    std::size_t after = 0;
    const auto count = [&](std::size_t& files) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(library)) {
            files += entry.is_regular_file() ? 1 : 0;
        }
    };
    count(before);
    const json erased =
        answer({"client", "erase", "Ada Lindqvist", "--yes-erase", "Ada Lindqvist"});
    EXPECT_EQ(erased["left"], json::array()) << erased;
    count(after);
    EXPECT_LT(after, before);
}

TEST_F(LockTest, RefusesAWeakPassphraseBeforeAnything) {
    std::ofstream(folder / "weak") << "owl\n";
    const std::string words = complained({"lock", "set", "--new-passphrase-file", folder / "weak",
                                          "--recovery-key-out", folder / "key.pdf"},
                                         1);
    EXPECT_NE(words.find("shorter than 12 characters"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(folder / "key.pdf"));
}

}  // namespace
}  // namespace quarterturn
