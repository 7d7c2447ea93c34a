// The main job on a locked library, and a search of every byte of it.

#include <sys/stat.h>

#include "tests/app/lock_fixture.h"

namespace quarterturn {
namespace {

using nlohmann::json;

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

TEST_F(LockTest, WritesNoRecoveryKeyIntoTheBackupThatItOpens) {
    said({"backup", folder / "backup"});
    const Path beside_it = folder / "backup/key.pdf";
    const auto refused = [&](Arguments arguments) {
        arguments.insert(arguments.end(), {"--recovery-key-out", beside_it});
        return complained(arguments, 2).find("lies in the backup in ") != std::string::npos &&
               !std::filesystem::exists(beside_it);
    };
    EXPECT_TRUE(refused({"lock", "set", "--new-passphrase-file", folder / "words"}));
    EXPECT_FALSE(read_lock(real_file_system(), library));
    lock_it();
    EXPECT_TRUE(refused(with("words", {"lock", "recovery-key"})));
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

TEST_F(LockTest, TellsAReasonOnceWithItsFiles) {
    const Path photos_folder = Path(library) / "photos";
    for (const char* name : {"one", "two", "three"}) {
        ASSERT_EQ(::mkfifo((photos_folder / name).c_str(), 0600), 0);
    }
    const Ran ran = run({"lock", "set", "--new-passphrase-file", folder / "words",
                         "--recovery-key-out", folder / "key.pdf"});
    EXPECT_EQ(ran.code, 3) << ran.error;
    EXPECT_NE(ran.out.find("Each of 3 files is no ordinary file"), std::string::npos) << ran.out;
    for (const char* name : {"one", "two", "three"}) {
        EXPECT_NE(ran.out.find((photos_folder / name).string()), std::string::npos) << ran.out;
    }
    interrupt(LockState::locking);
    const std::string told = run(with("words", {"photos"})).error;
    EXPECT_NE(told.find(" and 2 other files is no ordinary file"), std::string::npos) << told;
    EXPECT_NE(told.find("qturn lock status names each file"), std::string::npos) << told;
    interrupt(LockState::unlocking);
    EXPECT_EQ(answer(with("words", {"lock", "remove"}))["problems"], json::array());
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
    EXPECT_NE(ran.error.find("is damaged. It stays locked, and its key is kept"), std::string::npos)
        << ran.error;
    EXPECT_EQ(answer({"lock", "status"}, 3)["locked"], false);
    EXPECT_EQ(answer({"verify"}, 3)["troubles"].size(), 1U);
}

TEST_F(LockTest, UnlockingTakesWhatIsDamagedFromAConnectedBackup) {
    said({"import", card});
    lock_it();
    const std::string drive = folder / "drive";
    said(with("words", {"backup", drive}));
    const auto damaged = first_photo_file();
    auto bytes = read_bytes(damaged);
    bytes.at(bytes.size() / 2) ^= std::byte{1};
    write_bytes(damaged, bytes);
    EXPECT_EQ(answer(with("words", {"lock", "remove"}))["problems"], json::array());
    EXPECT_TRUE(answer({"verify"})["whole"]);
}

TEST_F(LockTest, WhatStayedLockedIsTakenFromABackupThatIsConnectedLater) {
    said({"import", card});
    lock_it();
    said(with("words", {"backup", folder / "drive"}));
    const auto damaged = first_photo_file();
    auto bytes = read_bytes(damaged);
    bytes.resize(10);
    write_bytes(damaged, bytes);
    std::filesystem::rename(folder / "drive", folder / "in the drawer");
    EXPECT_FALSE(answer(with("words", {"lock", "remove"}), 3)["problems"].empty());
    EXPECT_EQ(answer({"lock", "status"}, 3)["left"].size(), 1U) << "whatever it holds";
    EXPECT_NE(said({"verify"}, 3).find("is still locked, since it was damaged"), std::string::npos);
    std::filesystem::rename(folder / "in the drawer", folder / "drive");
    EXPECT_EQ(answer(with("words", {"lock", "remove"}))["problems"], json::array());
    EXPECT_TRUE(answer({"verify"})["whole"]);
}

TEST_F(LockTest, ALockedBackupThatCouldNotBeLookedIntoIsNamed) {
    said({"import", card});
    lock_it();
    const std::string drive = folder / "drive";
    said(with("words", {"backup", drive}));
    said(with("words", {"lock", "remove"}));
    std::filesystem::remove(first_photo_file());
    forget_keys();
    key_ring::forget(drive);
    EXPECT_NE(said({"verify"}, 3).find("The backup in " + drive +
                                       " was made while the library was locked, and was not looked "
                                       "into"),
              std::string::npos);
}

TEST_F(LockTest, OfACopyUnderALockedNameIsSaidThatItsNameAloneIs) {
    said({"import", card});
    lock_it();
    const Path sealed = first_photo_file();
    const Path copy = Path(library) / "photos" / "zz" / sealed.filename();
    std::filesystem::create_directories(copy.parent_path());
    std::filesystem::copy_file(sealed, copy);
    said(with("words", {"lock", "remove"}), 3);
    EXPECT_NE(said({"verify"}, 3).find("only its name is still as the lock gave it"),
              std::string::npos);
}

TEST_F(LockTest, IsNotPutOnBesideAnotherLibrarysLock) {
    write_lock(real_file_system(), library, new_lock("nine herons over the weir",
                                                     least_guess_cost()).file);
    const std::string told =
        complained({"lock", "set", "--new-passphrase-file", folder / "words", "--recovery-key-out",
                    folder / "key.pdf"},
                   1);
    EXPECT_NE(told.find("this one is not locked: move lock.json out"), std::string::npos) << told;
    EXPECT_FALSE(std::filesystem::exists(folder / "key.pdf"));
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
