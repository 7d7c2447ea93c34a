#pragma once
// What she can set for a library as a whole, each by a name that never changes.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/look_facts.h"
#include "indexer/record/paper.h"
#include "indexer/store/settings_table.h"

namespace quarterturn {

inline constexpr std::string_view business_name_setting = "business name";
inline constexpr std::string_view business_line_setting = "business line";
inline constexpr std::string_view business_contact_setting = "business contact";
inline constexpr std::string_view paper_setting = "paper";
inline constexpr std::string_view spare_setting = "spare pins percent";
inline constexpr std::string_view families_setting = "look families";
inline constexpr std::string_view keep_looks_setting = "keep looks years";
inline constexpr std::string_view backup_days_setting = "backup days";

// Of pins how many more than the recipes need, in per cent, unless she sets another margin.
inline constexpr int usual_spare_percent = 20;
inline constexpr int most_spare_percent = 1000;
inline constexpr int most_keep_years = 100;
// After how many days she is told that new photos are in no backup.
inline constexpr int usual_backup_days = 30;
inline constexpr int most_backup_days = 1000;

struct LibrarySetting {
    std::string_view name;
    std::string_view meaning;
};

inline constexpr std::array library_settings{
    LibrarySetting{business_name_setting, "stands at the foot of every page"},
    LibrarySetting{business_line_setting, "stands beside the name, and in records written out"},
    LibrarySetting{paper_setting,
                   "what sheets are laid out for: a4 (unless set), a3, a5 or letter"},
    LibrarySetting{spare_setting,
                   "how many more pins than needed the kit list asks for (20 unless set)"},
    LibrarySetting{families_setting,
                   "the families that looks are sorted into, with commas between (low ponytail, "
                   "low bun, high bun, half up, down, plait, waves unless set)"},
    LibrarySetting{business_contact_setting, "how clients reach you: stands on the consent form"},
    LibrarySetting{keep_looks_setting,
                   "how many years after her last day a client's looks are kept before they are "
                   "proposed for erasure (never unless set)"},
    LibrarySetting{backup_days_setting,
                   "after how many days you are told that new photos are in no backup (30 unless "
                   "set)"}};

std::optional<LibrarySetting> find_library_setting(std::string_view name);

// A sentence when the setting cannot be `value`; empty when it can.
std::string reason_against(const LibrarySetting& setting, std::string_view value);

// Her business as it stands at the foot of every page: "Pins and Paper · by appointment".
std::string business_words(SettingsTable settings);

// The margin she has set, else the usual one.
int spare_percent(SettingsTable settings);

// Nothing: until she erases them.
std::optional<int> keep_looks_years(SettingsTable settings);

// What she has set, else the usual ones.
int backup_days(SettingsTable settings);

// Her list of look families, else the usual one; each once, without white space around it.
std::vector<std::string> look_families(SettingsTable settings);

// The paper for sheets when none is named.
Paper usual_paper(SettingsTable settings);

}  // namespace quarterturn
