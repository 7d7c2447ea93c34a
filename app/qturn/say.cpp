#include "app/qturn/say.h"

#include <algorithm>
#include <cstdint>
#include <sstream>

namespace quarterturn {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";  // U+FFFD

struct CodePoint {
    std::uint32_t value = 0;
    std::size_t bytes = 0;  // 0: no UTF-8
};

bool continues(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// The first code point of a text that is not empty, by table 3-7 of the Unicode Standard.
CodePoint first_code_point(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text.front());
    if (lead < 0x80) return {lead, 1};
    const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < bytes) return {};
    std::uint32_t value = lead & (0xFFU >> (bytes + 1));
    for (const char byte : text.substr(1, bytes - 1)) {
        if (!continues(byte)) return {};
        value = (value << 6U) | (static_cast<unsigned char>(byte) & 0x3FU);
    }
    const bool too_long = value < (bytes == 4 ? 0x10000U : bytes == 3 ? 0x800U : 0x80U);
    const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
    if (too_long || surrogate || value > 0x10FFFF) return {};
    return {value, bytes};
}

bool commands_the_terminal(std::uint32_t value) {
    const bool control = value < 0x20 || (value >= 0x7F && value < 0xA0);
    const bool turns_direction =
        (value >= 0x202A && value <= 0x202E) || (value >= 0x2066 && value <= 0x2069);
    const bool ends_line = value == 0x2028 || value == 0x2029;
    return control || turns_direction || ends_line;
}

std::size_t width(std::string_view text) {
    return text.size() -
           static_cast<std::size_t>(std::count_if(text.begin(), text.end(), continues));
}

}  // namespace

std::string safe_text(std::string_view text) {
    std::string safe;
    while (!text.empty()) {
        const CodePoint point = first_code_point(text);
        if (text.front() == '\n' || text.front() == '\t') {
            safe += ' ';
        } else if (point.bytes == 0 || commands_the_terminal(point.value)) {
            safe += replacement;
        } else {
            safe += text.substr(0, point.bytes);
        }
        text.remove_prefix(std::max<std::size_t>(point.bytes, 1));
    }
    return safe;
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? " and " : ", ";
        text += words[i];
    }
    return text;
}

std::vector<std::string> columns(const std::vector<std::vector<std::string>>& rows) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], width(row[i]));
    }
    std::vector<std::string> lines;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            line += row[i] + std::string(widths[i] - width(row[i]) + 2, ' ');
        }
        line.erase(line.find_last_not_of(' ') + 1);
        lines.push_back(line);
    }
    return lines;
}

std::vector<std::string> split_lines(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

void append(std::vector<std::string>& lines, const std::vector<std::string>& more) {
    lines.insert(lines.end(), more.begin(), more.end());
}

}  // namespace quarterturn
