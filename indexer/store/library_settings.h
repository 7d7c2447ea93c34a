#pragma once
// What she can set for a library as a whole, each by a name that never changes.

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "indexer/record/paper.h"
#include "indexer/store/settings_table.h"

namespace quarterturn {

inline constexpr std::string_view business_name_setting = "business name";
inline constexpr std::string_view business_line_setting = "business line";
inline constexpr std::string_view paper_setting = "paper";

struct LibrarySetting {
    std::string_view name;
    std::string_view meaning;
};

inline constexpr std::array library_settings{
    LibrarySetting{business_name_setting, "stands at the foot of every page"},
    LibrarySetting{business_line_setting, "stands beside the name, and in records written out"},
    LibrarySetting{paper_setting,
                   "what sheets are laid out for: a4 (unless set), a3, a5 or letter"}};

std::optional<LibrarySetting> find_library_setting(std::string_view name);

// A sentence when the setting cannot be `value`; empty when it can.
std::string reason_against(const LibrarySetting& setting, std::string_view value);

// Her business as it stands at the foot of every page: "Pins and Paper · by appointment".
std::string business_words(SettingsTable settings);

// The paper for sheets when none is named.
Paper usual_paper(SettingsTable settings);

}  // namespace quarterturn
