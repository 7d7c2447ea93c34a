#include "indexer/lock/lock_file.h"

#include <sodium.h>

#include <algorithm>

#include "indexer/lock/passphrase_text.h"
#include "indexer/lock/recovery_key.h"
#include "indexer/lock/wrapped_key.h"

namespace quarterturn {
namespace {

constexpr std::ptrdiff_t least_characters = 12;

std::ptrdiff_t characters_in(std::string_view text) {
    return std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
}

}  // namespace

GuessCost usual_guess_cost() {
    return {crypto_pwhash_OPSLIMIT_MODERATE, crypto_pwhash_MEMLIMIT_MODERATE};
}

GuessCost least_guess_cost() {
    return {crypto_pwhash_argon2id_OPSLIMIT_MIN, crypto_pwhash_argon2id_MEMLIMIT_MIN};
}

std::string reason_against_passphrase(std::string_view passphrase) {
    if (characters_in(composed(passphrase)) < least_characters) {
        return "A passphrase that is shorter than " + std::to_string(least_characters) +
               " characters is soon guessed: take four or five words that nobody would put "
               "together.";
    }
    const bool one_again = passphrase.find_first_not_of(passphrase.front()) == passphrase.npos;
    if (one_again) {
        return "One character again and again is soon guessed: take four or five words that "
               "nobody would put together.";
    }
    return {};
}

void wrap_by_passphrase(LockFile& lock, const LibraryKeys& keys, std::string_view passphrase,
                        const GuessCost& cost) {
    lock.mark = keys.mark();
    lock.cost = cost;
    lock.salt.resize(crypto_pwhash_SALTBYTES);
    randombytes_buf(lock.salt.data(), lock.salt.size());
    lock.by_passphrase =
        wrap(keys, wrapping_key_of(composed(passphrase), lock), WrappedBy::passphrase);
}

std::string wrap_by_new_recovery_key(LockFile& lock, const LibraryKeys& keys) {
    const Secret recovery_key = new_recovery_key();
    lock.by_recovery_key = wrap(keys, wrapping_key_of(recovery_key), WrappedBy::recovery_key);
    return recovery_key_text(recovery_key);
}

KeysInHand keys_from(const LockFile& lock, std::string_view words) {
    if (const auto recovery_key = parse_recovery_key(words)) {
        if (auto keys = unwrap(lock.by_recovery_key, wrapping_key_of(*recovery_key),
                               WrappedBy::recovery_key)) {
            return keys;
        }
    }
    for (const std::string& passphrase : spellings_of(words)) {
        if (auto keys = unwrap(lock.by_passphrase, wrapping_key_of(passphrase, lock),
                               WrappedBy::passphrase)) {
            return keys;
        }
    }
    if (parse_recovery_key(words)) {
        throw LockError(
            "That is a recovery key, but not this library's, or one that was replaced: look for "
            "the paper that was printed last.");
    }
    if (looks_like_recovery_key(words)) {
        throw LockError(
            "There is a slip in that recovery key: compare it with the paper, group by "
            "group.");
    }
    throw LockError(
        "That is not the passphrase: try again; capital letters count. If it is forgotten, type "
        "the recovery key instead.");
}

}  // namespace quarterturn
