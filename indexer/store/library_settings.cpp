#include "indexer/store/library_settings.h"

#include <algorithm>

namespace quarterturn {

std::optional<LibrarySetting> find_library_setting(std::string_view name) {
    const auto found = std::ranges::find(library_settings, name, &LibrarySetting::name);
    if (found == library_settings.end()) return std::nullopt;
    return *found;
}

std::string reason_against(const LibrarySetting& setting, std::string_view value) {
    if (setting.name != paper_setting || parse_paper(value)) return {};
    std::string known;
    for (const Paper paper : all_papers) {
        if (!known.empty()) known += paper == all_papers.back() ? " and " : ", ";
        known += word(paper);
    }
    return "'" + std::string(value) + "' is no paper size. Known are " + known + ".";
}

std::string business_words(SettingsTable settings) {
    std::string words = settings.get(business_name_setting).value_or("");
    const std::string line = settings.get(business_line_setting).value_or("");
    if (!words.empty() && !line.empty()) words += " · ";
    return words + line;
}

Paper usual_paper(SettingsTable settings) {
    return parse_paper(settings.get(paper_setting).value_or("")).value_or(Paper::a4);
}

}  // namespace quarterturn
