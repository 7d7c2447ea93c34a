#include "indexer/backup/manifest.h"

#include <charconv>

namespace quarterturn {
namespace {

constexpr std::string_view mark_remark = "# backup ";
constexpr std::string_view erasure_remark = "# erased up to ";
constexpr std::string_view between = "  ";
constexpr std::size_t checksum_digits = 64;

// As GNU coreutils does it: a line whose name needs it begins with a backslash.
std::string escaped(std::string_view name) {
    std::string text;
    for (const char c : name) {
        if (c == '\\') {
            text += "\\\\";
        } else if (c == '\n') {
            text += "\\n";
        } else if (c == '\r') {
            text += "\\r";
        } else {
            text += c;
        }
    }
    return text;
}

std::optional<std::string> unescaped(std::string_view text) {
    std::string name;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\\') {
            name += text[i];
            continue;
        }
        if (++i == text.size()) return std::nullopt;
        if (text[i] != '\\' && text[i] != 'n' && text[i] != 'r') return std::nullopt;
        name += text[i] == 'n' ? '\n' : text[i] == 'r' ? '\r' : '\\';
    }
    return name;
}

bool is_checksum(std::string_view text) {
    return text.size() == checksum_digits &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

bool read_file_line(std::string_view line, Manifest& manifest) {
    const bool escapes = line.starts_with('\\');
    if (escapes) line.remove_prefix(1);
    const std::string_view checksum = line.substr(0, checksum_digits);
    if (!is_checksum(checksum)) return false;
    line.remove_prefix(checksum_digits);
    if (!line.starts_with(between)) return false;
    line.remove_prefix(between.size());
    const auto name = escapes ? unescaped(line) : std::string(line);
    if (!name || !lies_in_backup(*name)) return false;
    manifest.files[*name] = checksum;
    return true;
}

bool read_line(std::string_view line, Manifest& manifest) {
    if (line.starts_with(mark_remark)) {
        manifest.mark = line.substr(mark_remark.size());
        return true;
    }
    if (line.starts_with(erasure_remark)) {
        line.remove_prefix(erasure_remark.size());
        const char* const end = line.data() + line.size();
        return std::from_chars(line.data(), end, manifest.last_erasure.value).ptr == end;
    }
    return line.empty() || line.starts_with('#') || read_file_line(line, manifest);
}

}  // namespace

bool lies_in_backup(const std::string& path) {
    const std::filesystem::path place(path);
    return !path.empty() && place.is_relative() && std::ranges::find(place, "..") == place.end();
}

std::string manifest_text(const Manifest& manifest) {
    std::string text(mark_remark);
    text += manifest.mark + '\n' + std::string(erasure_remark) +
            std::to_string(manifest.last_erasure.value) + '\n';
    for (const auto& [path, checksum] : manifest.files) {
        const std::string name = escaped(path);
        if (name != path) text += '\\';
        text.append(checksum).append(between).append(name) += '\n';
    }
    return text;
}

std::optional<Manifest> parse_manifest(std::string_view text) {
    Manifest manifest;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        if (end == std::string_view::npos) return std::nullopt;  // cut off
        if (!read_line(text.substr(0, end), manifest)) return std::nullopt;
        text.remove_prefix(end + 1);
    }
    if (manifest.mark.empty()) return std::nullopt;
    return manifest;
}

}  // namespace quarterturn
