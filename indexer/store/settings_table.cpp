#include "indexer/store/settings_table.h"

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {

std::optional<std::string> SettingsTable::get(std::string_view name) {
    return Statement(*database_, "SELECT value FROM setting WHERE name = ?")
        .with(name)
        .value<std::string>();
}

void SettingsTable::set(std::string_view name, std::string_view value) {
    refuse_unless_text("the setting " + std::string(name), value);
    run(*database_, "INSERT OR REPLACE INTO setting (name, value) VALUES (?, ?)", name, value);
}

void SettingsTable::clear(std::string_view name) {
    run(*database_, "DELETE FROM setting WHERE name = ?", name);
}

}  // namespace quarterturn
