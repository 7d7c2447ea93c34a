#pragma once
// What actions changed in her records and in what she chose of pairs, kept in the library file for
// a day, so that it can be undone and done again. Photos are kept by History itself.

#include <span>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/store/row_changes.h"

namespace quarterturn {

constexpr int journal_hours = 24;

// Pairs are made anew with other numbers: theirs is the place, not the row.
struct ChoiceChange {
    std::int64_t look;
    std::string kind;
    std::int64_t number;
    std::string angle;
    std::string before;  // the six columns of a choice as JSON
    std::string after;
};

struct JournalEntry {
    Changeset rows;
    std::vector<ChoiceChange> choices;

    bool empty() const { return rows.empty() && choices.empty(); }
};

// Takes down what is changed from its making on, within a transaction.
class JournalRecorder {
  public:
    explicit JournalRecorder(Database& database);

    JournalEntry taken_down();

  private:
    Database& database_;
    RowRecorder rows_;
    RowRecorder pairs_;
};

// An action with an empty entry is a stop.
void keep_entry(Database& database, std::int64_t action, const JournalEntry& entry);
bool is_stop(Database& database, std::int64_t action);

// Within a transaction. Each throws NotApplied.
void take_back_entry(Database& database, std::int64_t action);
void do_entry_again(Database& database, std::int64_t action);

// Whether a sitting comes, goes or changes with it, by which photos are placed.
bool entry_moves_sittings(Database& database, std::int64_t action);

// Removes the actions of which `condition` holds, in SQL about the table action. Pictures from
// clients that only they still knew are listed as files to remove.
void let_actions_go(Database& database, const std::string& condition);

// Removes what was kept of edits that name one of these photos.
void let_edits_of_photos_go(Database& database, std::span<const PhotoId> photos);

}  // namespace quarterturn
