#include "indexer/intake/file_names.h"

namespace quarterturn {
namespace {

constexpr std::size_t longest_name =
    255;  // bytes, the limit of ext4, NTFS and exFAT alike or below
constexpr std::string_view forbidden = "/\\:*?\"<>|";

bool continues(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

// Length of the UTF-8 character at the front of `text`, or 0 when there is none (RFC 3629).
std::size_t character_length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80) return 1;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if (!continues(text[i])) return 0;
    }
    const unsigned second = byte(1);
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool surrogate = lead == 0xED && second > 0x9F;
    const bool beyond = lead == 0xF4 && second > 0x8F;
    return overlong || surrogate || beyond ? 0 : length;
}

// The longest front of valid UTF-8 `text` with whole characters and no more than `most` bytes.
std::string_view cut(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text;
    while (most > 0 && continues(text[most])) --most;
    return text.substr(0, most);
}

bool plain(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x20 && byte != 0x7F && forbidden.find(c) == std::string_view::npos;
}

void drop_trailing_points_and_spaces(std::string& text) {
    while (!text.empty() && (text.back() == '.' || text.back() == ' ')) text.pop_back();
}

std::string year_folder(Date date) {
    return "photos/" + iso_text(date).substr(0, 4) + '/';
}

std::string with_suffix(std::string_view name, const std::string& suffix) {
    const std::size_t point = name.rfind('.');
    const bool has_ending =
        point != std::string_view::npos && point > 0 && name.size() - point < 16;
    const std::string_view ending = has_ending ? name.substr(point) : std::string_view{};
    const std::string_view stem = name.substr(0, name.size() - ending.size());
    return std::string{cut(stem, longest_name - suffix.size() - ending.size())} + suffix +
           std::string{ending};
}

}  // namespace

std::string as_text(std::string_view file_name) {
    std::string text;
    while (!file_name.empty()) {
        const std::size_t length = character_length(file_name);
        text += length == 0 ? "_" : file_name.substr(0, length);
        file_name.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return text;
}

std::string as_folder_part(std::string_view text, std::size_t most_bytes) {
    std::string part;
    for (const char c : as_text(text)) {
        const char kept = plain(c) ? c : ' ';
        if (kept == ' ' && (part.empty() || part.back() == ' ')) continue;
        part += kept;
    }
    part = cut(part, most_bytes);
    drop_trailing_points_and_spaces(part);
    return part.empty() ? "unnamed" : part;
}

std::string sitting_folder(const Sitting& sitting, const Client& client) {
    const Date date = date_of(sitting.starts);
    return year_folder(date) + iso_text(date) + ' ' + as_folder_part(client.name) + ' ' +
           std::string{word(sitting.kind)};
}

std::string waiting_folder(const std::optional<LocalTime>& moment) {
    if (!moment) return "photos/undated";
    const Date date = date_of(*moment);
    return year_folder(date) + iso_text(date) + " not yet placed";
}

std::string numbered_name(std::string_view name, int number) {
    if (number <= 1) return std::string{name};
    return with_suffix(name, " (" + std::to_string(number) + ')');
}

std::string changed_name(std::string_view name, int number) {
    return numbered_name(with_suffix(name, " (changed)"), number);
}

}  // namespace quarterturn
