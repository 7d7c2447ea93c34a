#include "indexer/disk/checksum.h"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace quarterturn {

namespace {

using Digest = std::array<unsigned char, EVP_MAX_MD_SIZE>;

void refuse_unless(bool done) {
    if (done) return;
    throw std::runtime_error("This computer's OpenSSL library cannot compute SHA-256.");
}

std::string hex_text(const Digest& digest, unsigned int length) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string hex;
    hex.reserve(2 * length);
    for (unsigned int i = 0; i < length; ++i) {
        hex += digits[digest[i] >> 4U];
        hex += digits[digest[i] & 15U];
    }
    return hex;
}

using Take = std::function<void(std::span<const std::byte>)>;

std::string sha256_of_pieces(const std::function<void(const Take&)>& read) {
    const std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context(EVP_MD_CTX_new(),
                                                                          &EVP_MD_CTX_free);
    refuse_unless(context && EVP_DigestInit_ex(context.get(), EVP_sha256(), nullptr) == 1);
    read([&](std::span<const std::byte> piece) {
        refuse_unless(EVP_DigestUpdate(context.get(), piece.data(), piece.size()) == 1);
    });
    Digest digest{};
    unsigned int length = 0;
    refuse_unless(EVP_DigestFinal_ex(context.get(), digest.data(), &length) == 1);
    return hex_text(digest, length);
}

}  // namespace

std::string sha256(std::span<const std::byte> bytes) {
    Digest digest{};
    unsigned int length = 0;
    refuse_unless(
        EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr) == 1);
    return hex_text(digest, length);
}

std::string sha256_of_file(FileSystem& disk, const Path& file) {
    return sha256_of_pieces([&](const Take& take) { disk.read_through(file, take); });
}

std::string sha256_read_back(FileSystem& disk, const Path& file) {
    return sha256_of_pieces([&](const Take& take) { disk.read_back(file, take); });
}

std::string sha256(std::string_view text) {
    return sha256(std::as_bytes(std::span(text)));
}

bool has_checksum(FileSystem& disk, const Path& file, std::string_view checksum) try {
    return sha256_of_file(disk, file) == checksum;
} catch (const DiskError& error) {
    if (!error.damaged()) throw;
    return false;
}

bool holds(FileSystem& disk, const Path& file, std::int64_t bytes, std::string_view checksum) {
    const FileState state = disk.state(file);
    return state.regular && state.bytes == bytes && has_checksum(disk, file, checksum);
}

}  // namespace quarterturn
