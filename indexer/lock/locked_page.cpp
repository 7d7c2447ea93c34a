#include "indexer/lock/locked_page.h"

#include <sodium.h>

#include <algorithm>
#include <array>

namespace quarterturn {
namespace {

constexpr std::size_t used_bytes = page_bytes - reserved_bytes;
constexpr std::size_t page_nonce_bytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
static_assert(page_nonce_bytes + crypto_aead_xchacha20poly1305_ietf_ABYTES == reserved_bytes);

using Place = std::array<unsigned char, 1 + sizeof(std::uint64_t)>;

Place place_of(PageOf kind, std::uint64_t number) {
    Place place{static_cast<unsigned char>(kind)};
    for (std::size_t i = 1; i < place.size(); ++i) {
        place[i] = static_cast<unsigned char>(number >> (8 * (i - 1)) & 0xFFU);
    }
    return place;
}

}  // namespace

void seal_page(const LibraryKeys& keys, PageOf kind, std::uint64_t number,
               std::span<const unsigned char, page_bytes> page, Page sealed) {
    const Place place = place_of(kind, number);
    unsigned char* const nonce = sealed.data() + used_bytes;
    randombytes_buf(nonce, page_nonce_bytes);
    crypto_aead_xchacha20poly1305_ietf_encrypt_detached(
        sealed.data(), nonce + page_nonce_bytes, nullptr, page.data(), used_bytes, place.data(),
        place.size(), nullptr, nonce, keys.records().data());
}

bool open_page(const LibraryKeys& keys, PageOf kind, std::uint64_t number, Page page) {
    const Place place = place_of(kind, number);
    const unsigned char* const nonce = page.data() + used_bytes;
    const bool sound = crypto_aead_xchacha20poly1305_ietf_decrypt_detached(
                           page.data(), nullptr, page.data(), used_bytes, nonce + page_nonce_bytes,
                           place.data(), place.size(), nonce, keys.records().data()) == 0;
    std::ranges::fill(page.last(sound ? reserved_bytes : page_bytes), 0);
    return sound;
}

}  // namespace quarterturn
