#include "indexer/lock/wrapped_key.h"

#include <sodium.h>

#include "indexer/lock/recovery_key.h"

namespace quarterturn {
namespace {

constexpr std::size_t wrapping_key_bytes = crypto_aead_xchacha20poly1305_ietf_KEYBYTES;

}  // namespace

WrappedKey wrap(const LibraryKeys& keys, const Secret& wrapping_key, WrappedBy by) {
    const auto with = static_cast<unsigned char>(by);
    WrappedKey wrapped;
    wrapped.nonce.resize(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
    wrapped.key.resize(crypto_kdf_KEYBYTES + crypto_aead_xchacha20poly1305_ietf_ABYTES);
    randombytes_buf(wrapped.nonce.data(), wrapped.nonce.size());
    crypto_aead_xchacha20poly1305_ietf_encrypt(wrapped.key.data(), nullptr, keys.data_key().data(),
                                               keys.data_key().size(), &with, sizeof with, nullptr,
                                               wrapped.nonce.data(), wrapping_key.data());
    return wrapped;
}

KeysInHand unwrap(const WrappedKey& wrapped, const Secret& wrapping_key, WrappedBy by) {
    const auto with = static_cast<unsigned char>(by);
    Secret data_key(crypto_kdf_KEYBYTES);
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(
            data_key.data(), nullptr, nullptr, wrapped.key.data(), wrapped.key.size(), &with,
            sizeof with, wrapped.nonce.data(), wrapping_key.data()) != 0) {
        return nullptr;
    }
    return std::make_shared<const LibraryKeys>(std::move(data_key));
}

Secret wrapping_key_of(std::string_view passphrase, const LockFile& lock) {
    Secret key(wrapping_key_bytes);
    if (crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(),
                      lock.salt.data(), lock.cost.passes, lock.cost.memory,
                      crypto_pwhash_ALG_ARGON2ID13) == 0) {
        return key;
    }
    throw LockError("There is not enough free memory to try the passphrase (" +
                    std::to_string(lock.cost.memory >> 20U) +
                    " MB are needed): close other programs and try again.");
}

// It is as random as a key: one hash will do, no guess at it can succeed.
Secret wrapping_key_of(const Secret& recovery_key) {
    constexpr std::string_view purpose = "Quarterturn recovery key";
    Secret key(wrapping_key_bytes);
    crypto_generichash(key.data(), key.size(),
                       reinterpret_cast<const unsigned char*>(purpose.data()), purpose.size(),
                       recovery_key.data(), recovery_key.size());
    return key;
}

}  // namespace quarterturn
