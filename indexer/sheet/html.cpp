#include "indexer/sheet/html.h"

#include <array>

#include "indexer/store/code_points.h"

namespace quarterturn {
namespace {

constexpr std::string_view base64_letters =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

// HTML, 13.2.3.5 and 13.5: noncharacters and control characters are errors in a document.
bool forbidden(UChar32 point) {
    const bool control = point < 0x20 || (point >= 0x7f && point < 0xa0);
    return control || U_IS_UNICODE_NONCHAR(point);
}

void append(std::string& text, UChar32 point) {
    std::array<char, U8_MAX_LENGTH> bytes{};
    std::int32_t length = 0;
    U8_APPEND_UNSAFE(bytes, length, point);
    text.append(bytes.data(), static_cast<std::size_t>(length));
}

void append_escaped(std::string& text, UChar32 point) {
    switch (point) {
        case '&':
            text += "&amp;";
            break;
        case '<':
            text += "&lt;";
            break;
        case '>':
            text += "&gt;";
            break;
        case '"':
            text += "&quot;";
            break;
        case '\'':
            text += "&#39;";
            break;
        case '\n':
        case '\t':
            text += ' ';
            break;
        default:
            append(text, forbidden(point) ? 0xfffd : point);
    }
}

}  // namespace

std::string html_text(std::string_view words) {
    std::string text;
    each_code_point(words, [&](UChar32 point) { append_escaped(text, point); });
    return text;
}

std::string base64(std::span<const std::byte> bytes) {
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t taken = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            group = (group << 8U) | (k < taken ? std::to_integer<std::uint32_t>(bytes[i + k]) : 0U);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            text += k <= taken ? base64_letters[(group >> (18 - 6 * k)) & 0x3fU] : '=';
        }
    }
    return text;
}

}  // namespace quarterturn
