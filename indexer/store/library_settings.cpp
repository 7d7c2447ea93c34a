#include "indexer/store/library_settings.h"

#include <algorithm>
#include <charconv>

namespace quarterturn {
namespace {

std::string reason_against_paper(std::string_view value) {
    if (parse_paper(value)) return {};
    std::string known;
    for (const Paper paper : all_papers) {
        if (!known.empty()) known += paper == all_papers.back() ? " and " : ", ";
        known += word(paper);
    }
    return "'" + std::string(value) + "' is no paper size. Known are " + known + ".";
}

std::optional<int> number_in(std::string_view text, int least, int most) {
    int number = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = problem == std::errc() && end == text.data() + text.size();
    if (!whole || number < least || number > most) return std::nullopt;
    return number;
}

std::optional<int> percent_in(std::string_view text) {
    return number_in(text, 0, most_spare_percent);
}

std::string reason_against_years(std::string_view value) {
    if (number_in(value, 1, most_keep_years)) return {};
    return "'" + std::string(value) + "' is no number of years: name one from 1 to " +
           std::to_string(most_keep_years) + ".";
}

std::string reason_against_days(std::string_view value) {
    if (number_in(value, 1, most_backup_days)) return {};
    return "'" + std::string(value) + "' is no number of days: name one from 1 to " +
           std::to_string(most_backup_days) + ".";
}

std::string reason_against_spare(std::string_view value) {
    if (percent_in(value)) return {};
    return "'" + std::string(value) + "' is no spare margin: name a number from 0 to " +
           std::to_string(most_spare_percent) + ".";
}

std::string_view without_space_around(std::string_view text) {
    constexpr std::string_view space = " \t\n";
    const std::size_t begin = text.find_first_not_of(space);
    if (begin == std::string_view::npos) return {};
    return text.substr(begin, text.find_last_not_of(space) - begin + 1);
}

std::vector<std::string> families_in(std::string_view list) {
    std::vector<std::string> families;
    while (!list.empty()) {
        const std::size_t comma = std::min(list.find(','), list.size());
        const std::string family(without_space_around(list.substr(0, comma)));
        if (!family.empty() && std::ranges::find(families, family) == families.end()) {
            families.push_back(family);
        }
        list.remove_prefix(std::min(comma + 1, list.size()));
    }
    return families;
}

std::string reason_against_families(std::string_view value) {
    if (!families_in(value).empty()) return {};
    return "Name at least one look family, with commas between several: low bun, plait.";
}

}  // namespace

std::optional<LibrarySetting> find_library_setting(std::string_view name) {
    const auto found = std::ranges::find(library_settings, name, &LibrarySetting::name);
    if (found == library_settings.end()) return std::nullopt;
    return *found;
}

std::string reason_against(const LibrarySetting& setting, std::string_view value) {
    if (setting.name == paper_setting) return reason_against_paper(value);
    if (setting.name == spare_setting) return reason_against_spare(value);
    if (setting.name == keep_looks_setting) return reason_against_years(value);
    if (setting.name == backup_days_setting) return reason_against_days(value);
    if (setting.name == families_setting) return reason_against_families(value);
    return {};
}

std::string business_words(SettingsTable settings) {
    std::string words = settings.get(business_name_setting).value_or("");
    const std::string line = settings.get(business_line_setting).value_or("");
    if (!words.empty() && !line.empty()) words += " · ";
    return words + line;
}

int spare_percent(SettingsTable settings) {
    return percent_in(settings.get(spare_setting).value_or("")).value_or(usual_spare_percent);
}

std::optional<int> keep_looks_years(SettingsTable settings) {
    return number_in(settings.get(keep_looks_setting).value_or(""), 1, most_keep_years);
}

int backup_days(SettingsTable settings) {
    return number_in(settings.get(backup_days_setting).value_or(""), 1, most_backup_days)
        .value_or(usual_backup_days);
}

std::vector<std::string> look_families(SettingsTable settings) {
    std::vector<std::string> own = families_in(settings.get(families_setting).value_or(""));
    if (!own.empty()) return own;
    return {usual_look_families.begin(), usual_look_families.end()};
}

Paper usual_paper(SettingsTable settings) {
    return parse_paper(settings.get(paper_setting).value_or("")).value_or(Paper::a4);
}

}  // namespace quarterturn
