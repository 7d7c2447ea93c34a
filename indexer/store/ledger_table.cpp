#include "indexer/store/ledger_table.h"

#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_exports =
    "SELECT id, photo, photo_name, photo_sha256, use, at, file, sha256, bytes, taken_on, "
    "export_taken_down.note, hair_only FROM export LEFT JOIN export_taken_down ON export = id ";

Exported export_in(const Statement& row) {
    Exported exported;
    std::optional<Date> taken_on;
    std::optional<std::string> note;
    row.read(exported.id, exported.photo, exported.photo_name, exported.photo_sha256, exported.use,
             exported.at, exported.file, exported.sha256, exported.bytes, taken_on, note,
             exported.hair_only);
    if (taken_on) exported.taken_down = TakenDown{*taken_on, note.value_or("")};
    return exported;
}

void read_lists(Database& database, std::vector<Exported>& exports) {
    Statement under(database, "SELECT consent FROM export_under WHERE export = ? ORDER BY consent");
    Statement places(database, "SELECT place FROM export_place WHERE export = ? ORDER BY id");
    for (Exported& exported : exports) {
        exported.under = under.with(exported.id).rows([](const Statement& row) {
            ConsentId id;
            row.read(id);
            return id;
        });
        exported.places = places.with(exported.id).rows([](const Statement& row) {
            std::string place;
            row.read(place);
            return place;
        });
    }
}

std::string not_in_ledger(ExportId id) {
    return "There is no export " + std::to_string(id.value) +
           " in the ledger: look its number up there.";
}

}  // namespace

ExportId LedgerTable::add(const Exported& exported) {
    Transaction transaction(*database_);
    const auto id = insert<ExportId>(
        *database_,
        "INSERT INTO export (photo, photo_name, photo_sha256, use, at, file, sha256, bytes, "
        "hair_only) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        exported.photo, exported.photo_name, exported.photo_sha256, exported.use, exported.at,
        exported.file, exported.sha256, exported.bytes, exported.hair_only);
    Statement add_under(*database_, "INSERT INTO export_under (export, consent) VALUES (?, ?)");
    for (const ConsentId consent : exported.under) add_under.with(id, consent).run();
    transaction.commit();
    return id;
}

void LedgerTable::add_place(ExportId id, std::string_view place) {
    refuse_unless_name("the place", place);
    if (!find(id)) throw StoreError(not_in_ledger(id));
    run(*database_, "INSERT INTO export_place (export, place) VALUES (?, ?)", id, place);
}

void LedgerTable::take_down(ExportId id, const TakenDown& taken_down) {
    refuse_unless_text("the note on what was taken down", taken_down.note);
    const auto exported = find(id);
    if (!exported) throw StoreError(not_in_ledger(id));
    if (exported->taken_down) {
        throw StoreError("Export " + std::to_string(id.value) + " was taken down on " +
                         iso_text(exported->taken_down->on) + " already.");
    }
    run(*database_, "INSERT INTO export_taken_down (export, taken_on, note) VALUES (?, ?, ?)", id,
        taken_down.on, taken_down.note);
}

std::optional<Exported> LedgerTable::find(ExportId id) {
    auto found = Statement(*database_, select_exports + "WHERE id = ?").with(id).rows(export_in);
    read_lists(*database_, found);
    return first_of(std::move(found));
}

std::vector<Exported> LedgerTable::all() {
    auto found = Statement(*database_, select_exports + "ORDER BY id").rows(export_in);
    read_lists(*database_, found);
    return found;
}

ExportId LedgerTable::next_id() {
    const auto last = Statement(*database_, "SELECT seq FROM sqlite_sequence WHERE name = 'export'")
                          .value<std::int64_t>();
    return ExportId{last.value_or(0) + 1};
}

std::vector<Exported> SomeRecords::exports_out_there() {
    auto found = Statement(*database_, select_exports + "WHERE taken_on IS NULL ORDER BY id")
                     .rows(export_in);
    read_lists(*database_, found);
    return found;
}

std::vector<Exported> SomeRecords::exports_under(std::span<const ConsentId> consents) {
    const std::string list = json_list(consents);
    auto found =
        Statement(*database_, select_exports +
                                  "WHERE id IN (SELECT export FROM export_under WHERE consent IN "
                                  "(SELECT value FROM json_each(?))) ORDER BY id")
            .with(list)
            .rows(export_in);
    read_lists(*database_, found);
    return found;
}

}  // namespace quarterturn
