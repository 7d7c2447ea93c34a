#include "indexer/store/journal_tables.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr std::array made_anew{"look_to_pair",   "pair_alignment", "pair_window",  "hair_look",
                               "action",         "tag_change",     "shift_change", "bin_change",
                               "records_change", "choice_change",  "found_head",
                               "pair_change"};

constexpr std::size_t said_column = 3;  // of look_fact

bool says_something(const Row& pair) {
    return std::any_of(pair.begin() + pair_choice_column, pair.end(),
                       [](const Value& value) { return whole_number(value) != 0; });
}

struct PhotoColumn {
    std::string_view table;
    std::size_t column;
};

constexpr std::array photo_columns{PhotoColumn{"head_points", 0}, PhotoColumn{"photo_credit", 0},
                                   PhotoColumn{"photo_licence", 0}, PhotoColumn{"photo_seen", 0},
                                   PhotoColumn{"selection_photo", 2}};

}  // namespace

std::optional<std::size_t> journal_place(std::string_view table) {
    const auto found = std::ranges::find(journal_tables, table, &JournalTable::name);
    if (found == journal_tables.end()) return std::nullopt;
    return static_cast<std::size_t>(found - journal_tables.begin());
}

bool is_made_anew(std::string_view table) {
    return table.starts_with("words") || std::ranges::find(made_anew, table) != made_anew.end();
}

bool is_made_anew(const RowChange& change) {
    const Row& row = change.comes() ? change.after : change.before;
    if (change.table == "look_fact") return whole_number(row[said_column]) == 0;
    if (change.table == "pair") return !says_something(row);
    return is_made_anew(std::string_view(change.table));
}

bool is_about(const RowChange& change, std::span<const PhotoId> photos) {
    const auto found = std::ranges::find(photo_columns, change.table, &PhotoColumn::table);
    if (found == photo_columns.end()) return false;
    return std::ranges::any_of(std::array{&change.before, &change.after}, [&](const Row* row) {
        return !row->empty() && (*row)[found->column] &&
               std::ranges::find(photos, PhotoId{whole_number((*row)[found->column])}) !=
                   photos.end();
    });
}

}  // namespace quarterturn
