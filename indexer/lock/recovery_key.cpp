#include "indexer/lock/recovery_key.h"

#include <sodium.h>

#include <array>
#include <cctype>

namespace quarterturn {
namespace {

constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t bits_of_letter = 5;
constexpr std::size_t key_letters = recovery_key_bytes * 8 / bits_of_letter;
constexpr std::size_t group_letters = 4;

// The five bits of each letter, the first bits first.
unsigned letter_bits(const unsigned char* bytes, std::size_t letter) {
    unsigned bits = 0;
    for (std::size_t i = 0; i < bits_of_letter; ++i) {
        const std::size_t bit = letter * bits_of_letter + i;
        bits = bits << 1U | (bytes[bit / 8] >> (7 - bit % 8) & 1U);
    }
    return bits;
}

void set_letter_bits(unsigned char* bytes, std::size_t letter, std::size_t bits) {
    for (std::size_t i = 0; i < bits_of_letter; ++i) {
        const std::size_t bit = letter * bits_of_letter + i;
        const auto value = static_cast<unsigned>(bits >> (bits_of_letter - 1 - i) & 1U);
        bytes[bit / 8] = static_cast<unsigned char>(bytes[bit / 8] | value << (7 - bit % 8));
    }
}

// A slip is missed once in a million (twenty bits).
std::string check_group(const Secret& key) {
    std::array<unsigned char, crypto_generichash_BYTES> hash{};
    crypto_generichash(hash.data(), hash.size(), key.data(), key.size(), nullptr, 0);
    std::string group;
    for (std::size_t i = 0; i < group_letters; ++i) group += letters[letter_bits(hash.data(), i)];
    return group;
}

char meant(char c) {
    const auto upper = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    if (upper == 'O') return '0';
    if (upper == 'I' || upper == 'L') return '1';
    return upper;
}

std::string without_gaps(std::string_view text) {
    std::string result;
    for (const char c : text) {
        const bool gap = std::isspace(static_cast<unsigned char>(c)) != 0 || c == '-';
        if (!gap) result += meant(c);
    }
    return result;
}

}  // namespace

Secret new_recovery_key() {
    Secret key(recovery_key_bytes);
    randombytes_buf(key.data(), key.size());
    return key;
}

std::string recovery_key_text(const Secret& key) {
    std::string text;
    for (std::size_t i = 0; i < key_letters; ++i) {
        text += letters[letter_bits(key.data(), i)];
        if (i % group_letters == group_letters - 1) text += '-';
    }
    return text + check_group(key);
}

bool looks_like_recovery_key(std::string_view text) {
    const std::string typed = without_gaps(text);
    return typed.size() == key_letters + group_letters &&
           typed.find_first_not_of(letters) == std::string::npos;
}

std::optional<Secret> parse_recovery_key(std::string_view text) {
    if (!looks_like_recovery_key(text)) return std::nullopt;
    const std::string typed = without_gaps(text);
    Secret key(recovery_key_bytes);
    sodium_memzero(key.data(), key.size());
    for (std::size_t i = 0; i < key_letters; ++i) {
        set_letter_bits(key.data(), i, letters.find(typed[i]));
    }
    if (typed.substr(key_letters) != check_group(key)) return std::nullopt;
    return key;
}

}  // namespace quarterturn
