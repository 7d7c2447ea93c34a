#include "indexer/store/days_opened.h"

#include <algorithm>
#include <sstream>
#include <vector>

#include "indexer/store/settings_table.h"

namespace quarterturn {
namespace {

constexpr std::string_view days_setting = "opened on days";
constexpr std::ptrdiff_t most_days = 8;  // one before a leap, and seven after it
constexpr std::chrono::days long_leap{30};

// In the order in which they were seen.
std::vector<Date> days_opened(Database& database) {
    std::vector<Date> days;
    SettingsTable settings(database);
    auto text = settings.get(days_setting);
    if (!text) {  // as a version before this one noted them
        text = settings.get("opened before on").value_or("") + ' ' +
               settings.get("opened on").value_or("");
    }
    std::istringstream words(*text);
    for (std::string word; words >> word;) {
        if (const auto day = parse_date(word)) days.push_back(*day);
    }
    return days;
}

bool is_after_leap(Date to, Date from) {
    return std::chrono::local_days(to) - std::chrono::local_days(from) > long_leap;
}

std::vector<Date>::const_iterator last_two(const std::vector<Date>& days) {
    return days.size() > 1 ? days.end() - 2 : days.begin();
}

}  // namespace

void note_day_opened(Database& database, Date today) {
    std::vector<Date> days = days_opened(database);
    if (!days.empty() && days.back() == today) return;
    days.push_back(today);
    if (std::ssize(days) > most_days) days.erase(days.begin(), days.end() - most_days);
    std::string text;
    for (const Date day : days) text += iso_text(day) + ' ';
    SettingsTable(database).set(days_setting, text);
}

std::optional<Date> sure_day(Database& database) {
    const std::vector<Date> days = days_opened(database);
    if (days.empty()) return std::nullopt;
    const Date sure = *std::min_element(last_two(days), days.end());
    const auto leap = std::adjacent_find(days.rbegin(), days.rend(), is_after_leap);
    return leap == days.rend() ? sure : std::min(sure, *std::next(leap));
}

std::optional<Date> last_day_opened(Database& database) {
    const std::vector<Date> days = days_opened(database);
    if (days.empty()) return std::nullopt;
    return *std::max_element(last_two(days), days.end());
}

}  // namespace quarterturn
