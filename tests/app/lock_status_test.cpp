// What is said of a lock that is whole, half or lost.

#include "tests/app/lock_fixture.h"

namespace quarterturn {
namespace {

using nlohmann::json;

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

}  // namespace
}  // namespace quarterturn
