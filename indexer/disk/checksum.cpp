#include "indexer/disk/checksum.h"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace quarterturn {

std::string sha256(std::span<const std::byte> bytes) {
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned int length = 0;
    if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr) !=
        1) {
        throw std::runtime_error("This computer's OpenSSL library cannot compute SHA-256.");
    }
    constexpr std::string_view digits = "0123456789abcdef";
    std::string hex;
    hex.reserve(2 * length);
    for (unsigned int i = 0; i < length; ++i) {
        hex += digits[digest[i] >> 4U];
        hex += digits[digest[i] & 15U];
    }
    return hex;
}

std::string sha256(std::string_view text) {
    return sha256(std::as_bytes(std::span(text)));
}

bool holds(FileSystem& disk, const Path& file, std::int64_t bytes, std::string_view checksum) {
    const FileState state = disk.state(file);
    return state.regular && state.bytes == bytes && sha256(disk.read(file, bytes)) == checksum;
}

}  // namespace quarterturn
