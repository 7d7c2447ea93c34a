#include "indexer/store/row_counts.h"

#include <algorithm>
#include <array>
#include <map>

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

// An ending can be any word of hers; those that say what a file is cannot name anybody.
constexpr std::array<std::string_view, 12> known_endings{
    "jpg", "jpeg", "heic", "heif", "png", "tif", "tiff", "webp", "dng", "cr2", "nef", "arw"};

std::string ending_of(const std::string& folded_name) {
    const std::string ending = folded_name.substr(folded_name.rfind('.') + 1);
    return std::ranges::find(known_endings, ending) == known_endings.end() ? "other" : ending;
}

}  // namespace

std::vector<RowCount> row_counts(Database& database) {
    std::vector<RowCount> counts;
    Statement names(database,
                    "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' "
                    "AND name NOT LIKE 'sqlite%' ORDER BY name");
    while (names.step()) {
        RowCount count;
        names.read(count.table);
        count.rows = Statement(database, "SELECT count(*) FROM " + count.table)
                         .value<std::int64_t>()
                         .value();
        counts.push_back(std::move(count));
    }
    return counts;
}

std::vector<RowCount> photo_counts_by_ending(Database& database) {
    std::map<std::string, std::int64_t> by_ending;
    Statement names(database, "SELECT folded_name FROM photo");
    while (names.step()) {
        std::string name;
        names.read(name);
        ++by_ending[ending_of(name)];
    }
    std::vector<RowCount> counts;
    for (const auto& [ending, photos] : by_ending) counts.push_back({ending, photos});
    return counts;
}

}  // namespace quarterturn
