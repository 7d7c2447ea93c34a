#pragma once
// lock.json: lies in the folder of a locked library and of each of its backups, and says how the
// library's key is had from a passphrase (Argon2id, RFC 9106, by libsodium's crypto_pwhash) or from
// the recovery key; either unwraps the same key (XChaCha20-Poly1305). Who loses this file and has
// no backup loses the library; who has it alone must guess the passphrase.

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"

namespace quarterturn {

inline constexpr const char* lock_file_name = "lock.json";
// The lock of a library that has none any longer, but for files that the disk did not give.
inline constexpr const char* left_lock_name = "lock.left.json";

// what() is a sentence: a wrong passphrase, a damaged lock.
class LockError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

// What one guess at the passphrase costs.
struct GuessCost {
    unsigned long long passes = 0;
    std::size_t memory = 0;  // bytes
};
GuessCost usual_guess_cost();  // a second or so, 256 MiB (libsodium's "moderate")
GuessCost least_guess_cost();  // for tests

struct WrappedKey {
    std::vector<unsigned char> nonce;
    std::vector<unsigned char> key;

    bool operator==(const WrappedKey&) const = default;
};

// While a library is being locked or unlocked some of its files are still as they were.
enum class LockState { locked, locking, unlocking };

struct LockFile {
    LockState state = LockState::locked;
    std::string mark;  // LibraryKeys::mark
    GuessCost cost;
    std::vector<unsigned char> salt;
    WrappedKey by_passphrase;
    WrappedKey by_recovery_key;
};

// A sentence when it is too easily guessed: shorter than twelve characters, or one character again
// and again. Empty when it will do.
std::string reason_against_passphrase(std::string_view passphrase);

// Throw LockError where the computer has not enough memory for the cost.
void wrap_by_passphrase(LockFile& lock, const LibraryKeys& keys, std::string_view passphrase,
                        const GuessCost& cost = usual_guess_cost());
// Answers the recovery key as it is to be printed; the one before opens nothing any longer.
std::string wrap_by_new_recovery_key(LockFile& lock, const LibraryKeys& keys);

// Takes the passphrase, or the recovery key in its place. Throws LockError when it is neither.
KeysInHand keys_from(const LockFile& lock, std::string_view passphrase_or_recovery_key);

// Nothing where the folder holds none. Throws LockError when it is damaged or of a newer version,
// and DiskError.
std::optional<LockFile> read_lock(FileSystem& disk, const Path& folder);
std::optional<LockFile> read_left_lock(FileSystem& disk, const Path& folder);
void write_lock(FileSystem& disk, const Path& folder, const LockFile& lock);

}  // namespace quarterturn
