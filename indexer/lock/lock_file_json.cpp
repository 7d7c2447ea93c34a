#include <sodium.h>

#include <nlohmann/json.hpp>

#include "indexer/lock/hex.h"
#include "indexer/lock/lock_file.h"

namespace quarterturn {
namespace {

using nlohmann::json;

constexpr int newest_version = 1;
constexpr std::int64_t most_lock_bytes = 100'000;
constexpr auto what_it_is =
    "The lock of a library of Quarterturn. Leave it where it is: without it nothing in this folder "
    "can be read, with the passphrase or without.";

// More than any library is given: a file that asks for it was changed by somebody.
constexpr unsigned long long most_passes = 32;
constexpr std::size_t most_memory = std::size_t{1} << 31U;

constexpr std::size_t wrapping_nonce_bytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr std::size_t wrapped_bytes =
    crypto_kdf_KEYBYTES + crypto_aead_xchacha20poly1305_ietf_ABYTES;

constexpr std::array state_words{std::pair{LockState::locked, "locked"},
                                 std::pair{LockState::locking, "locking"},
                                 std::pair{LockState::unlocking, "unlocking"}};

std::string word(LockState state) {
    return std::ranges::find(state_words, state, &std::pair<LockState, const char*>::first)->second;
}

LockState state_from(const std::string& text) {
    for (const auto& [state, word] : state_words) {
        if (text == word) return state;
    }
    throw std::invalid_argument("state");
}

std::vector<unsigned char> bytes_from(const json& from, const char* name, std::size_t bytes) {
    if (auto found = from_hex(from.at(name).get<std::string>(), bytes)) return *found;
    throw std::invalid_argument(name);
}

json wrapped_json(const WrappedKey& wrapped) {
    return {{"nonce", to_hex(wrapped.nonce)}, {"key", to_hex(wrapped.key)}};
}

WrappedKey wrapped_from(const json& from) {
    return {bytes_from(from, "nonce", wrapping_nonce_bytes),
            bytes_from(from, "key", wrapped_bytes)};
}

json lock_json(const LockFile& lock) {
    json passphrase = wrapped_json(lock.by_passphrase);
    passphrase["method"] = "argon2id13";
    passphrase["passes"] = lock.cost.passes;
    passphrase["memory"] = lock.cost.memory;
    passphrase["salt"] = to_hex(lock.salt);
    return {{"what", what_it_is},        {"version", newest_version},
            {"state", word(lock.state)}, {"mark", lock.mark},
            {"passphrase", passphrase},  {"recovery_key", wrapped_json(lock.by_recovery_key)}};
}

LockFile lock_from(const json& from) {
    const json& passphrase = from.at("passphrase");
    LockFile lock;
    lock.state = state_from(from.at("state").get<std::string>());
    lock.mark = from.at("mark").get<std::string>();
    lock.cost = {passphrase.at("passes").get<unsigned long long>(),
                 passphrase.at("memory").get<std::size_t>()};
    if (lock.cost.passes > most_passes || lock.cost.memory > most_memory) {
        throw std::invalid_argument("cost");
    }
    lock.salt = bytes_from(passphrase, "salt", crypto_pwhash_SALTBYTES);
    lock.by_passphrase = wrapped_from(passphrase);
    lock.by_recovery_key = wrapped_from(from.at("recovery_key"));
    return lock;
}

void refuse_newer(const json& from, const Path& file) {
    if (from.at("version").get<int>() <= newest_version) return;
    throw LockError(file.string() +
                    " was written by a newer version of this program: install that one. Nothing "
                    "was changed.");
}

void refuse_link_to_nothing(const Path& file) {
    std::error_code unknown;
    if (!std::filesystem::is_symlink(file, unknown)) return;
    if (std::filesystem::exists(file, unknown)) return;
    throw LockError(file.string() + " is a link to " +
                    std::filesystem::read_symlink(file, unknown).string() +
                    ", where nothing lies: connect what that lies on, or put it back there. Where "
                    "it is lost and the library is locked, put the lock.json of the newest backup "
                    "in the link's place; where the library is not locked, remove the link. "
                    "Nothing was changed.");
}

void refuse_unless_a_file(FileSystem& disk, const Path& file) {
    refuse_link_to_nothing(file);
    if (disk.state(file).regular) return;
    throw LockError(file.string() +
                    " is a folder or a pipe, and no lock: move it out of there. Where the library "
                    "is locked, put back the lock.json of the newest backup. Nothing was changed.");
}

std::optional<LockFile> read_lock_file(FileSystem& disk, const Path& file) {
    if (!disk.exists(file)) return std::nullopt;
    refuse_unless_a_file(disk, file);
    const Bytes bytes = disk.read(file, most_lock_bytes);
    try {
        const auto* text = reinterpret_cast<const char*>(bytes.data());
        const json from = json::parse(text, text + bytes.size());
        refuse_newer(from, file);
        return lock_from(from);
    } catch (const LockError&) {
        throw;
    } catch (const std::exception&) {
        throw LockError(file.string() +
                        " is damaged, and without it the folder cannot be read: put back the "
                        "lock.json of the newest backup, which lies there beside READ ME.txt. "
                        "Where there is none, leave the folder as it is, and look for an older "
                        "lock.json in whatever else copies your disk; the recovery key alone "
                        "opens nothing.");
    }
}

}  // namespace

std::optional<LockFile> read_lock(FileSystem& disk, const Path& folder) {
    return read_lock_file(disk, folder / lock_file_name);
}

std::optional<LockFile> read_left_lock(FileSystem& disk, const Path& folder) {
    return read_lock_file(disk, folder / left_lock_name);
}

void write_lock(FileSystem& disk, const Path& folder, const LockFile& lock) {
    const std::string text = lock_json(lock).dump(2) + '\n';
    replace_file(disk, folder / lock_file_name, std::as_bytes(std::span(text)));
}

}  // namespace quarterturn
