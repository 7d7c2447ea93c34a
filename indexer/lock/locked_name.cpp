#include "indexer/lock/locked_name.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <string_view>

namespace quarterturn {
namespace {

constexpr std::string_view small_letters = "abcdefghijklmnopqrstuvwxyz234567";
constexpr std::size_t name_mark_bytes = 16;
constexpr unsigned bits_of_small_letter = 5;
constexpr std::size_t longest_in_one = 255;
constexpr std::size_t front_letters = 200;
constexpr unsigned letter_mask = (1U << bits_of_small_letter) - 1;

std::string base32(std::string_view bytes) {
    std::string text;
    unsigned waiting = 0;
    unsigned waiting_bits = 0;
    for (const char byte : bytes) {
        waiting = waiting << 8U | static_cast<unsigned char>(byte);
        for (waiting_bits += 8; waiting_bits >= bits_of_small_letter;
             waiting_bits -= bits_of_small_letter) {
            text += small_letters[waiting >> (waiting_bits - bits_of_small_letter) & letter_mask];
        }
        waiting &= (1U << waiting_bits) - 1;
    }
    if (waiting_bits > 0) text += small_letters[waiting << (bits_of_small_letter - waiting_bits)];
    return text;
}

std::optional<std::string> from_base32(std::string_view text) {
    std::string bytes;
    unsigned waiting = 0;
    unsigned waiting_bits = 0;
    for (const char letter : text) {
        const std::size_t value = small_letters.find(letter);
        if (value == std::string_view::npos) return std::nullopt;
        waiting = waiting << bits_of_small_letter | static_cast<unsigned>(value);
        waiting_bits += bits_of_small_letter;
        if (waiting_bits < 8) continue;
        waiting_bits -= 8;
        bytes += static_cast<char>(waiting >> waiting_bits);
        waiting &= (1U << waiting_bits) - 1;
    }
    return bytes;
}

std::string name_mark(const LibraryKeys& keys, const std::string& folder, std::string_view name) {
    std::string both = folder;
    both.append(1, '\0').append(name);  // no path holds a zero
    std::string mark(name_mark_bytes, '\0');
    crypto_generichash(reinterpret_cast<unsigned char*>(mark.data()), mark.size(),
                       reinterpret_cast<const unsigned char*>(both.data()), both.size(),
                       keys.name_marks().data(), keys.name_marks().size());
    return mark;
}

// Encrypts and decrypts alike.
std::string crypted(const LibraryKeys& keys, const std::string& mark, std::string_view name) {
    std::array<unsigned char, crypto_stream_xchacha20_NONCEBYTES> nonce{};
    std::ranges::copy(mark, nonce.begin());
    std::string result(name.size(), '\0');
    crypto_stream_xchacha20_xor(reinterpret_cast<unsigned char*>(result.data()),
                                reinterpret_cast<const unsigned char*>(name.data()), name.size(),
                                nonce.data(), keys.name_stream().data());
    return result;
}

}  // namespace

std::string lock_name(const LibraryKeys& keys, const std::string& folder, const std::string& name) {
    const std::string mark = name_mark(keys, folder, name);
    return base32(mark + crypted(keys, mark, name));
}

std::optional<std::string> unlock_name(const LibraryKeys& keys, const std::string& folder,
                                       const std::string& locked) {
    const auto bytes = from_base32(locked);
    if (!bytes || bytes->size() <= name_mark_bytes) return std::nullopt;
    const std::string mark = bytes->substr(0, name_mark_bytes);
    std::string name = crypted(keys, mark, std::string_view(*bytes).substr(name_mark_bytes));
    // The second asks that the last letter had no bits to spare.
    if (name_mark(keys, folder, name) != mark || base32(*bytes) != locked) return std::nullopt;
    return name;
}

Path place_of_locked_name(const std::string& locked) {
    if (locked.size() <= longest_in_one) return locked;
    return Path(locked.substr(0, front_letters) + '-') / locked.substr(front_letters);
}

bool is_front_of_locked_name(const std::string& name) {
    return name.size() == front_letters + 1 && name.back() == '-' &&
           name.find_first_not_of(small_letters) == front_letters;
}

std::string joined_locked_name(const std::string& front, const std::string& rest) {
    return front.substr(0, front_letters) + rest;
}

bool looks_locked(const std::string& name) {
    const auto bytes = from_base32(name);
    return bytes && bytes->size() > name_mark_bytes && base32(*bytes) == name;
}

}  // namespace quarterturn
