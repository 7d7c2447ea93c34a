#include "app/qturn/import_words.h"

#include "app/qturn/say.h"
#include "indexer/disk/lines_by_reason.h"

namespace quarterturn {

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

std::vector<std::string> refused_lines(const std::vector<RefusedFile>& refused) {
    if (refused.empty()) return {};
    std::vector<std::string> lines{count_text(refused.size(), "file") + " cannot be taken:"};
    append(lines, lines_by_reason(refused));
    return lines;
}

std::vector<std::string> not_moved_lines(const std::vector<RefusedFile>& files) {
    if (files.empty()) return {};
    std::vector<std::string> lines{
        "Not moved to the folder of its sitting; qturn sort tries it again:"};
    append(lines, lines_by_reason(files));
    return lines;
}

}  // namespace quarterturn
