#include "indexer/lock/lock_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/lock/passphrase_text.h"
#include "indexer/lock/recovery_key.h"
#include "indexer/lock/wrapped_key.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

constexpr auto passphrase = "seven owls below the granary";

struct Locked {
    KeysInHand keys = new_library_keys();
    LockFile lock;
    std::string recovery_key;

    Locked() {
        wrap_by_passphrase(lock, *keys, passphrase, least_guess_cost());
        recovery_key = wrap_by_new_recovery_key(lock, *keys);
    }
};

std::string sentence_for(const LockFile& lock, std::string_view words) {
    try {
        keys_from(lock, words);
        return {};
    } catch (const LockError& error) {
        return error.what();
    }
}

TEST(LockFile, GivesTheSameKeyForPassphraseAndRecoveryKey) {
    const Locked made;
    EXPECT_EQ(keys_from(made.lock, passphrase)->mark(), made.keys->mark());
    EXPECT_EQ(keys_from(made.lock, made.recovery_key)->mark(), made.keys->mark());
}

// "seven é owls", composed and decomposed (Unicode Standard Annex #15, figure 3).
constexpr auto composed_words = "seven \u00e9 owls below";
constexpr auto decomposed_words = "seven e\u0301 owls below";

TEST(LockFile, OpensWithAPassphraseAsAnotherKeyboardWritesIt) {
    for (const auto& [set, typed] : {std::pair{composed_words, decomposed_words},
                                     std::pair{decomposed_words, composed_words}}) {
        Locked made;
        wrap_by_passphrase(made.lock, *made.keys, set, least_guess_cost());
        EXPECT_EQ(keys_from(made.lock, typed)->mark(), made.keys->mark());
        EXPECT_EQ(keys_from(made.lock, set)->mark(), made.keys->mark());
        EXPECT_NE(sentence_for(made.lock, "seven e owls below"), "");
    }
}

TEST(LockFile, OpensALockThatWasPutOnWithThePassphraseAsItWasTyped) {
    for (const char* set : {composed_words, decomposed_words, "seven \xff owls below"}) {
        Locked made;
        made.lock.by_passphrase =
            wrap(*made.keys, wrapping_key_of(set, made.lock), WrappedBy::passphrase);
        EXPECT_EQ(keys_from(made.lock, set)->mark(), made.keys->mark());
    }
    EXPECT_EQ(composed("seven \xff owls"), "seven \xff owls");
}

TEST(LockFile, SaysWhatIsWrong) {
    const Locked made;
    EXPECT_TRUE(sentence_for(made.lock, "Seven owls below the granary")
                    .starts_with("That is not the passphrase"));
    std::string slip = made.recovery_key;
    slip[3] = slip[3] == '7' ? '8' : '7';
    EXPECT_TRUE(sentence_for(made.lock, slip).starts_with("There is a slip"));
    EXPECT_TRUE(sentence_for(made.lock, Locked().recovery_key)
                    .starts_with("That is a recovery key, but not this library's"));
}

TEST(LockFile, ComesBackFromTheDisk) {
    const TemporaryFolder folder;
    Locked made;
    EXPECT_FALSE(read_lock(real_file_system(), folder.path()));
    made.lock.state = LockState::locking;
    write_lock(real_file_system(), folder.path(), made.lock);
    const auto read = read_lock(real_file_system(), folder.path());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->state, LockState::locking);
    EXPECT_EQ(keys_from(*read, passphrase)->mark(), made.keys->mark());
    EXPECT_EQ(keys_from(*read, made.recovery_key)->mark(), made.keys->mark());
}

TEST(LockFile, ThatIsAFolderSaysWhatToDo) {
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / lock_file_name);
    try {
        read_lock(real_file_system(), folder.path());
        ADD_FAILURE() << "took a folder for a lock";
    } catch (const LockError& error) {
        EXPECT_NE(std::string(error.what()).find("move it out of there"), std::string::npos)
            << error.what();
    }
}

TEST(LockFile, IsRefusedWhenDamagedOrNewer) {
    const TemporaryFolder folder;
    const auto refused = [&](std::string_view text) {
        replace_file(real_file_system(), folder / lock_file_name, std::as_bytes(std::span(text)));
        EXPECT_THROW(read_lock(real_file_system(), folder.path()), LockError) << text;
    };
    refused("");
    refused("{}");
    refused(R"({"version": 2})");
    refused(R"({"version": 1, "state": "ajar"})");
}

TEST(LockFile, OpensNoLongerWithWhatWasReplaced) {
    Locked made;
    const std::string before = made.recovery_key;
    wrap_by_passphrase(made.lock, *made.keys, "nine herons over the weir", least_guess_cost());
    const std::string after = wrap_by_new_recovery_key(made.lock, *made.keys);
    EXPECT_THROW(keys_from(made.lock, passphrase), LockError);
    EXPECT_THROW(keys_from(made.lock, before), LockError);
    EXPECT_EQ(keys_from(made.lock, "nine herons over the weir")->mark(), made.keys->mark());
    EXPECT_EQ(keys_from(made.lock, after)->mark(), made.keys->mark());
}

TEST(Passphrase, MustNotBeGuessedSoon) {
    EXPECT_FALSE(reason_against_passphrase("").empty());
    EXPECT_FALSE(reason_against_passphrase("elevenchars").empty());
    EXPECT_FALSE(reason_against_passphrase("éééééé").empty()) << "twelve bytes, six characters";
    EXPECT_FALSE(reason_against_passphrase("aaaaaaaaaaaaaaa").empty());
    EXPECT_TRUE(reason_against_passphrase(passphrase).empty());
}

RC_GTEST_PROP(RecoveryKey, IsReadHoweverItIsTyped, ()) {
    const Secret key = new_recovery_key();
    const std::string text = recovery_key_text(key);
    std::string typed;
    for (const char c : text) {
        if (c == '-' && *rc::gen::arbitrary<bool>()) continue;
        typed += *rc::gen::elementOf(std::string{c, static_cast<char>(std::tolower(c))});
        if (typed.back() == '0') typed.back() = *rc::gen::elementOf(std::string("0oO"));
        if (typed.back() == '1') typed.back() = *rc::gen::elementOf(std::string("1iIlL"));
        if (*rc::gen::inRange(0, 9) == 0) typed += ' ';
    }
    const auto read = parse_recovery_key(typed);
    RC_ASSERT(read.has_value());
    RC_ASSERT(recovery_key_text(*read) == text);
}

RC_GTEST_PROP(RecoveryKey, ShowsASlip, ()) {
    std::string text = recovery_key_text(new_recovery_key());
    const auto at = *rc::gen::suchThat(rc::gen::inRange<std::size_t>(0, text.size()),
                                       [&](std::size_t i) { return text[i] != '-'; });
    const char other = *rc::gen::elementOf(std::string("0123456789ABCDEFGHJKMNPQRSTVWXYZ"));
    RC_PRE(other != text[at]);
    text[at] = other;
    RC_ASSERT(!parse_recovery_key(text).has_value());
}

}  // namespace
}  // namespace quarterturn
