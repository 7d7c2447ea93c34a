#include "indexer/store/journal.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <array>
#include <ranges>

#include "indexer/store/apply_changes.h"
#include "indexer/store/journal_tables.h"
#include "indexer/store/statement.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

// Columns of inspiration, and of pair from where it stands to what she chose of it.
constexpr std::size_t path_column = 3;
constexpr std::size_t place_column = 1;
constexpr std::size_t choice_columns = 6;

const std::string choice_json =
    "json_array(chosen_first, chosen_second, pinned, refused, first_gone, second_gone)";
constexpr auto no_choice = "[null,null,0,0,0,0]";
const std::string at_place = " WHERE look = ? AND kind = ? AND number = ? AND angle = ?";

bool hers(const std::vector<RowChange>& rows) {
    return std::ranges::any_of(rows, [](const RowChange& row) { return !is_made_anew(row); });
}

std::string choice_text(std::span<const Value> choice) {
    std::string text;
    for (const Value& value : choice) {
        const std::string one = text_of(value);
        text += (text.empty() ? "" : ",") + (one.empty() ? "null" : one);
    }
    return '[' + text + ']';
}

std::string choice_in(const Row& pair) {
    if (pair.empty()) return no_choice;
    return choice_text(std::span(pair).subspan(pair_choice_column, choice_columns));
}

// What is not told of the row, as it is.
Row filled(const Row& row, const Row& whole) {
    Row result = row;
    for (std::size_t i = 0; i < result.size(); ++i) {
        if (!result[i]) result[i] = whole[i];
    }
    return result;
}

ChoiceChange choice_change(Database& database, RowChange change) {
    if (!change.comes() && !change.goes()) {
        RowStatement pair(database, "SELECT * FROM pair WHERE id IS ?", {change.before.front()});
        in_words([&] { return pair.step(); });
        const Row whole = pair.row();
        change.before = filled(change.before, whole);
        change.after = whole;
    }
    const Row& row = change.comes() ? change.after : change.before;
    return {whole_number(row[place_column]),
            text_of(row[place_column + 1]),
            whole_number(row[place_column + 2]),
            text_of(row[place_column + 3]),
            choice_in(change.before),
            choice_in(change.after)};
}

Changeset changes_of(Database& database, std::int64_t action) {
    return in_words([&] {
        SQLite::Statement kept(database.handle(),
                               "SELECT changes FROM records_change WHERE action = ?");
        kept.bind(1, action);
        return kept.executeStep() ? kept.getColumn(0).getString() : std::string();
    });
}

std::vector<ChoiceChange> choices_of(Database& database, std::int64_t action) {
    return Statement(database,
                     "SELECT look, kind, number, angle, before, after FROM choice_change "
                     "WHERE action = ?")
        .with(action)
        .rows([](const Statement& row) {
            ChoiceChange change;
            row.read(change.look, change.kind, change.number, change.angle, change.before,
                     change.after);
            return change;
        });
}

void choose(Database& database, const ChoiceChange& change) {
    const auto now = Statement(database, "SELECT " + choice_json + " FROM pair" + at_place)
                         .with(change.look, change.kind, change.number, change.angle)
                         .value<std::string>();
    if (now.value_or(no_choice) != change.before) throw it_was_changed_since();
    run(database, "INSERT OR IGNORE INTO pair (look, kind, number, angle) VALUES (?, ?, ?, ?)",
        change.look, change.kind, change.number, change.angle);
    std::string columns;
    int place = 0;
    for (const std::string column :
         {"chosen_first", "chosen_second", "pinned", "refused", "first_gone", "second_gone"}) {
        columns += (columns.empty() ? "" : ", ") + column + " = json_extract(?1, '$[" +
                   std::to_string(place++) + "]')";
    }
    run(database,
        "UPDATE pair SET " + columns +
            " WHERE look = ?2 AND kind = ?3 AND number = ?4 AND "
            "angle = ?5",
        change.after, change.look, change.kind, change.number, change.angle);
}

void choose_all(Database& database, const std::vector<ChoiceChange>& changes) {
    if (changes.empty()) return;
    hold_references(database);
    for (const ChoiceChange& change : changes) choose(database, change);
    refuse_broken_references(database);
}

std::vector<std::int64_t> actions_with_entries(Database& database, const std::string& condition) {
    return Statement(database,
                     "SELECT id FROM action JOIN records_change ON records_change.action "
                     "= action.id WHERE " +
                         condition)
        .rows([](const Statement& row) {
            std::int64_t action = 0;
            row.read(action);
            return action;
        });
}

void list_left_pictures(Database& database, std::int64_t action) {
    for (const RowChange& change : rows_in(changes_of(database, action))) {
        if (change.table != "inspiration") continue;
        for (const Row& row : {change.before, change.after}) {
            if (row.empty() || !row[path_column]) continue;
            run(database,
                "INSERT OR IGNORE INTO erasure_file SELECT ?1 WHERE NOT EXISTS "
                "(SELECT 1 FROM inspiration WHERE path = ?1)",
                text_of(row[path_column]));
        }
    }
}

}  // namespace

JournalRecorder::JournalRecorder(Database& database)
    : database_(database),
      rows_(database, [](std::string_view table) { return journal_place(table).has_value(); }),
      pairs_(database, [](std::string_view table) { return table == "pair"; }) {}

JournalEntry JournalRecorder::taken_down() {
    JournalEntry entry;
    entry.rows = rows_.taken_down();
    if (!hers(rows_in(entry.rows))) entry.rows.clear();
    for (const RowChange& change : rows_in(pairs_.taken_down())) {
        ChoiceChange choice = choice_change(database_, change);
        if (choice.before != choice.after) entry.choices.push_back(std::move(choice));
    }
    return entry;
}

void keep_entry(Database& database, std::int64_t action, const JournalEntry& entry) {
    in_words([&] {
        SQLite::Statement keep(database.handle(),
                               "INSERT INTO records_change (action, done_at, changes) "
                               "VALUES (?, unixepoch(), ?)");
        keep.bind(1, action);
        keep.bind(2, entry.rows.data(), static_cast<int>(entry.rows.size()));
        keep.exec();
    });
    Statement choose(database,
                     "INSERT INTO choice_change (action, look, kind, number, angle, before, after) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?)");
    for (const ChoiceChange& change : entry.choices) {
        choose
            .with(action, change.look, change.kind, change.number, change.angle, change.before,
                  change.after)
            .run();
    }
}

bool is_stop(Database& database, std::int64_t action) {
    return *Statement(database,
                      "SELECT EXISTS (SELECT 1 FROM records_change WHERE action = ?1 AND changes = "
                      "x'') AND NOT EXISTS (SELECT 1 FROM choice_change WHERE action = ?1)")
                .with(action)
                .value<bool>();
}

void take_back_entry(Database& database, std::int64_t action) {
    std::vector<ChoiceChange> choices = choices_of(database, action);
    for (ChoiceChange& change : choices) std::swap(change.before, change.after);
    choose_all(database, choices);
    std::vector<RowChange> rows;
    for (RowChange& change : rows_in(changes_of(database, action))) {
        rows.push_back(backwards(std::move(change)));
    }
    apply_changes(database, rows);
}

void do_entry_again(Database& database, std::int64_t action) {
    apply_changes(database, rows_in(changes_of(database, action)));
    choose_all(database, choices_of(database, action));
}

bool entry_moves_sittings(Database& database, std::int64_t action) {
    return std::ranges::any_of(rows_in(changes_of(database, action)),
                               [](const RowChange& change) { return change.table == "sitting"; });
}

void let_actions_go(Database& database, const std::string& condition) {
    for (const std::int64_t action : actions_with_entries(database, condition)) {
        list_left_pictures(database, action);
    }
    run(database, "DELETE FROM action WHERE " + condition);
}

void let_edits_of_photos_go(Database& database, std::span<const PhotoId> photos) {
    std::vector<std::int64_t> naming;
    for (const std::int64_t action : actions_with_entries(database, "TRUE")) {
        const bool names =
            std::ranges::any_of(rows_in(changes_of(database, action)),
                                [&](const RowChange& change) { return is_about(change, photos); });
        if (names) naming.push_back(action);
    }
    let_actions_go(database, "id IN (SELECT value FROM json_each('" + json_list(naming) + "'))");
}

}  // namespace quarterturn
