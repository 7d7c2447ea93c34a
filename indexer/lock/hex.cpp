#include "indexer/lock/hex.h"

#include <sodium.h>

namespace quarterturn {

std::string to_hex(std::span<const unsigned char> bytes) {
    std::string hex(2 * bytes.size() + 1, '\0');  // libsodium ends it with a zero
    sodium_bin2hex(hex.data(), hex.size(), bytes.data(), bytes.size());
    hex.pop_back();
    return hex;
}

std::optional<std::vector<unsigned char>> from_hex(std::string_view hex, std::size_t bytes) {
    std::vector<unsigned char> result(bytes);
    std::size_t length = 0;
    const bool whole =
        hex.size() == 2 * bytes && sodium_hex2bin(result.data(), result.size(), hex.data(),
                                                  hex.size(), nullptr, &length, nullptr) == 0;
    if (!whole || length != bytes) return std::nullopt;
    return result;
}

}  // namespace quarterturn
