#pragma once
// The steps from an empty file to the newest schema. A step that has been released never changes:
// a further change is a further step, in a file of its own, added to all_migrations().

#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

namespace quarterturn {

struct Migration {
    std::string_view sql;  // statements, each ended by ';'
};

std::span<const Migration> all_migrations();

extern const Migration first_tables;
extern const Migration search_words;
extern const Migration recipe_drafts;
extern const Migration kit_ticks;
extern const Migration wedding_mornings;
extern const Migration boards;
extern const Migration photo_pairs;
extern const Migration hair_looks;
extern const Migration inspirations;
extern const Migration clients_done;
extern const Migration consent_records;
extern const Migration erasures;
extern const Migration pair_windows;
extern const Migration photo_bin;
extern const Migration backups;
extern const Migration undo_journal;
extern const Migration photos_gone;
extern const Migration large_libraries;
extern const Migration pair_changes;
extern const Migration wedding_day_sittings;
extern const Migration found_heads;
extern const Migration sought_after;
extern const Migration erasures_left;
extern const Migration plain_words;
extern const Migration places_of_photos;

// SQLite's user_version, which counts the steps that a file has behind it.
int schema_version(SQLite::Database& database);

// Takes the steps that are missing, all in one transaction: after a failure the file is as before.
// Foreign keys must be off, so that a step can rebuild tables; they are checked before the commit.
// Throws StoreError and SQLite::Exception.
void migrate(SQLite::Database& database, std::span<const Migration> migrations);

}  // namespace quarterturn
