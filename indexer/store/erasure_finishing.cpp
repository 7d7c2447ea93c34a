// What of an erasure is still to be done once the records are gone.

#include "indexer/store/erasure_table.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

// Whether no other program was in its way.
bool journal_emptied(Database& database) {
    std::int64_t busy = 0;
    Statement checkpoint(database, "PRAGMA wal_checkpoint(TRUNCATE)");
    if (checkpoint.step()) checkpoint.read(busy);
    return busy == 0;
}

void empty_journal(Database& database) {
    if (!journal_emptied(database)) {
        throw StoreError(
            "Another program has the library open, so the journal of the records could not be "
            "emptied: close it and run the command again. Everything else is erased.");
    }
}

// The words may say her name, and leave the journal too.
void forget_where(Database& database, const std::string& which) {
    const bool any =
        *Statement(database, "SELECT EXISTS (SELECT 1 FROM erasure_left WHERE " + which + ")")
             .value<bool>();
    if (!any) return;
    run(database, "DELETE FROM erasure_left WHERE " + which);
    (void)journal_emptied(database);
}

}  // namespace

std::vector<std::string> ErasureTable::files_left() {
    return Statement(*database_, "SELECT path FROM erasure_file ORDER BY path")
        .rows([](const Statement& row) {
            std::string path;
            row.read(path);
            return path;
        });
}

void ErasureTable::file_is_gone(std::string_view path) {
    run(*database_, "DELETE FROM erasure_file WHERE path = ?", path);
}

bool ErasureTable::any_unfinished() {
    return *Statement(*database_,
                      "SELECT EXISTS (SELECT 1 FROM erasure WHERE finished = 0) OR "
                      "EXISTS (SELECT 1 FROM erasure_file)")
                .value<bool>();
}

std::vector<UnfinishedErasure> ErasureTable::unfinished() {
    return Statement(*database_,
                     "SELECT id, erased_on, photos, looks, sought FROM erasure WHERE finished = 0 "
                     "ORDER BY id")
        .rows([](const Statement& row) {
            UnfinishedErasure found;
            std::optional<std::string> sought;
            Erasure& erasure = found.erasure;
            row.read(erasure.id, erasure.on, erasure.photos, erasure.looks, sought);
            if (sought) found.sought = sought_from(*sought);
            return found;
        });
}

void ErasureTable::finish(const std::vector<FoundLeft>& found) {
    run(*database_, "VACUUM");
    empty_journal(*database_);
    Transaction both(*database_);
    for (const auto& [erasure, said] : found) {
        const std::optional<std::string> file =
            said.file.empty() ? std::nullopt : std::optional(said.file.native());
        run(*database_, "INSERT INTO erasure_left (erasure, file, words) VALUES (?, ?, ?)", erasure,
            file, said.words);
    }
    run(*database_, "UPDATE erasure SET sought = NULL WHERE sought IS NOT NULL");
    both.commit();
    // Overwritten in the records, since deleting is secure there, and in the journal by this.
    empty_journal(*database_);
    run(*database_, "UPDATE erasure SET finished = 1");
}

std::vector<ErasureLeft> ErasureTable::left() {
    return Statement(*database_,
                     "SELECT l.id, e.erased_on, l.file, l.words, l.told FROM erasure_left l JOIN "
                     "erasure e ON e.id = l.erasure WHERE e.finished = 1 ORDER BY l.erasure, l.id")
        .rows([](const Statement& row) {
            ErasureLeft left;
            std::optional<std::string> file;
            row.read(left.id, left.erased_on, file, left.said.words, left.told);
            if (file) left.said.file = *file;
            return left;
        });
}

void ErasureTable::note_told() {
    if (!*Statement(*database_, "SELECT EXISTS (SELECT 1 FROM erasure_left WHERE told = 0)")
              .value<bool>()) {
        return;
    }
    run(*database_, "UPDATE erasure_left SET told = 1 WHERE told = 0");
    forget_where(*database_, "file IS NULL");
}

void ErasureTable::forget_all_left() {
    forget_where(*database_, "TRUE");
}

void ErasureTable::forget_left(std::int64_t id) {
    forget_where(*database_, "id = " + std::to_string(id));
}

}  // namespace quarterturn
