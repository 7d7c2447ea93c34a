#include <SQLiteCpp/SQLiteCpp.h>

#include <array>
#include <string>

#include "indexer/store/database.h"
#include "indexer/store/migrations/migrations.h"
#include "indexer/store/word_letters.h"

namespace quarterturn {

std::span<const Migration> all_migrations() {
    static const std::array migrations{
        first_tables,    search_words, recipe_drafts,   kit_ticks,    wedding_mornings,
        boards,          photo_pairs,  hair_looks,      inspirations, clients_done,
        consent_records, erasures,     pair_windows,    photo_bin,    backups,
        undo_journal,    photos_gone,  large_libraries, pair_changes, wedding_day_sittings,
        found_heads,     sought_after, erasures_left,   plain_words,  places_of_photos};
    return migrations;
}

int schema_version(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

void migrate(SQLite::Database& database, std::span<const Migration> migrations) {
    know_word_letters(database);
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    const auto done = static_cast<std::size_t>(schema_version(database));
    for (const Migration& step : migrations.subspan(std::min(done, migrations.size()))) {
        database.exec(std::string(step.sql));
    }
    database.exec("PRAGMA user_version = " + std::to_string(migrations.size()));
    if (SQLite::Statement(database, "PRAGMA foreign_key_check").executeStep()) {
        throw StoreError(
            "The library's records could not be brought up to date, since some of them belong to "
            "others that are not there: nothing was changed; bring back the newest backup of "
            "records.sqlite.");
    }
    transaction.commit();
}

}  // namespace quarterturn
