#pragma once
// Which tables hold what she does in the window and can undo. The others are made from them
// (pairs, the search, small pictures' measures), only added to (consent, the ledger), or kept by
// History in another way (photos and what is chosen of pairs). A new table of records belongs here.

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "indexer/record/id.h"
#include "indexer/store/row_changes.h"

namespace quarterturn {

struct JournalTable {
    std::string_view name;
    bool has_others = false;  // rows of other tables hang on its rows
};

// Each after those that its rows hang on.
constexpr std::array journal_tables{JournalTable{"setting"},
                                    JournalTable{"client", true},
                                    JournalTable{"wedding", true},
                                    JournalTable{"sitting", true},
                                    JournalTable{"look", true},
                                    JournalTable{"party_member"},
                                    JournalTable{"look_sitting"},
                                    JournalTable{"shot_list", true},
                                    JournalTable{"shot_line"},
                                    JournalTable{"waiver"},
                                    JournalTable{"recipe_revision"},
                                    JournalTable{"recipe_draft"},
                                    JournalTable{"recipe_template"},
                                    JournalTable{"kit_tick"},
                                    JournalTable{"morning_stylist", true},
                                    JournalTable{"morning_break"},
                                    JournalTable{"morning_wish"},
                                    JournalTable{"morning_seat"},
                                    JournalTable{"step_tick"},
                                    JournalTable{"timer"},
                                    JournalTable{"client_done"},
                                    JournalTable{"head_points"},
                                    JournalTable{"look_fact"},
                                    JournalTable{"pair_filter", true},
                                    JournalTable{"pair_filter_value"},
                                    JournalTable{"inspiration"},
                                    JournalTable{"photo_credit", true},
                                    JournalTable{"photo_licence"},
                                    JournalTable{"photo_seen"},
                                    JournalTable{"selection", true},
                                    JournalTable{"selection_photo"}};

// From here on, the columns of pair hold what she chose.
constexpr std::size_t pair_choice_column = 10;

// Its place among them.
std::optional<std::size_t> journal_place(std::string_view table);

// Whether rows of the table, when they go with a row that others hang on, are made anew or are of
// no account.
bool is_made_anew(std::string_view table);

// The same of one row: facts that were read out of a recipe, a pair she said nothing of.
bool is_made_anew(const RowChange& change);

// Whether the row says something of one of these photos.
bool is_about(const RowChange& change, std::span<const PhotoId> photos);

}  // namespace quarterturn
