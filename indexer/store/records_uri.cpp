#include "indexer/store/records_uri.h"

#include <string_view>

namespace quarterturn {

std::string records_uri(const Path& file, const std::string& parameters) {
    constexpr std::string_view plain =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789/-._~";
    constexpr std::string_view digits = "0123456789abcdef";
    std::string uri = "file:";
    for (const char c : file.native()) {
        if (plain.find(c) != std::string_view::npos) {
            uri += c;
        } else {
            const auto byte = static_cast<unsigned char>(c);
            uri.append({'%', digits[byte >> 4U], digits[byte & 15U]});
        }
    }
    return uri + '?' + parameters;
}

}  // namespace quarterturn
