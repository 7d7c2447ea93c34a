#include "app/qturn/import_words.h"

#include <algorithm>

#include "app/qturn/say.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_named_of_one_reason = 20;

std::string without_front(const std::string& sentence, const std::string& front) {
    return sentence.starts_with(front + ' ') ? sentence.substr(front.size() + 1) : sentence;
}

std::vector<std::string> lines_of_reason(const std::string& reason,
                                         const std::vector<std::string>& files) {
    if (files.size() == 1) return {"  " + files.front() + ": " + reason};
    if (files.size() > most_named_of_one_reason) {
        return {"  " + files.front() + " and " + count_text(files.size() - 1, "other file") +
                ", which --json names: " + reason};
    }
    std::vector<std::string> lines{"  " + count_text(files.size(), "file") + ": " + reason};
    for (const std::string& file : files) lines.push_back("    " + file);
    return lines;
}

}  // namespace

nlohmann::json paths_json(const std::vector<Path>& paths) {
    auto list = nlohmann::json::array();
    for (const Path& path : paths) list.push_back(path.string());
    return list;
}

nlohmann::json refused_json(const std::vector<RefusedFile>& refused) {
    auto list = nlohmann::json::array();
    for (const RefusedFile& file : refused) {
        list.push_back({{"file", file.file.string()}, {"reason", file.reason}});
    }
    return list;
}

std::vector<std::string> in_bin_lines(std::size_t photos) {
    if (photos == 0) return {};
    const bool one = photos == 1;
    return {count_text(photos, "photo") + (one ? " of these lies" : " of these lie") +
            " in the bin and " + (one ? "stays" : "stay") +
            " there: take out what you want with qturn bin take-out."};
}

// Without the path that begins many of them, so that a pulled card is told once.
std::vector<std::string> lines_by_reason(const std::vector<RefusedFile>& refused) {
    std::vector<std::pair<std::string, std::vector<std::string>>> by_reason;
    for (const RefusedFile& file : refused) {
        const std::string reason = without_front(file.reason, file.file.string());
        const auto known = std::ranges::find_if(
            by_reason, [&](const auto& group) { return group.first == reason; });
        auto& files = known == by_reason.end()
                          ? by_reason.emplace_back(reason, std::vector<std::string>{}).second
                          : known->second;
        files.push_back(file.file.string());
    }
    std::vector<std::string> lines;
    for (const auto& [reason, files] : by_reason) append(lines, lines_of_reason(reason, files));
    return lines;
}

std::vector<std::string> refused_lines(const std::vector<RefusedFile>& refused) {
    if (refused.empty()) return {};
    std::vector<std::string> lines{count_text(refused.size(), "file") + " cannot be taken:"};
    append(lines, lines_by_reason(refused));
    return lines;
}

}  // namespace quarterturn
