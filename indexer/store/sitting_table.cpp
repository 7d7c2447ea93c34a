#include "indexer/store/sitting_table.h"

#include "indexer/store/search_words.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_sittings =
    "SELECT id, client, wedding, kind, starts, ends, note FROM sitting ";
const std::string sittings_in_order = " ORDER BY starts, id";

Sitting sitting_in(const Statement& row) {
    Sitting sitting;
    row.read(sitting.id, sitting.client, sitting.wedding, sitting.kind, sitting.starts,
             sitting.ends, sitting.note);
    return sitting;
}

void check(const Sitting& sitting) {
    refuse_unless_text("the sitting's note", sitting.note);
    if (sitting.ends < sitting.starts) {
        throw StoreError("The sitting ends (" + iso_text(sitting.ends) + ") before it starts (" +
                         iso_text(sitting.starts) + "): correct one of the two.");
    }
}

}  // namespace

SittingId SittingTable::add(const Sitting& sitting) {
    check(sitting);
    Transaction transaction(*database_);
    const auto id = insert<SittingId>(
        *database_,
        "INSERT INTO sitting (client, wedding, kind, starts, ends, note) VALUES (?, ?, ?, ?, ?, ?)",
        sitting.client, sitting.wedding, sitting.kind, sitting.starts, sitting.ends, sitting.note);
    index_words(*database_, WordsOf::sitting, id);
    transaction.commit();
    return id;
}

void SittingTable::change(const Sitting& sitting) {
    check(sitting);
    Transaction transaction(*database_);
    update_one(*database_, "sitting " + std::to_string(sitting.id.value),
               "UPDATE sitting SET client = ?, wedding = ?, kind = ?, starts = ?, ends = ?, "
               "note = ? WHERE id = ?",
               sitting.client, sitting.wedding, sitting.kind, sitting.starts, sitting.ends,
               sitting.note, sitting.id);
    index_words(*database_, WordsOf::sitting, sitting.id);
    transaction.commit();
}

std::optional<Sitting> SittingTable::find(SittingId id) {
    return Statement(*database_, select_sittings + "WHERE id = ?").with(id).first(sitting_in);
}

std::vector<Sitting> SittingTable::all() {
    return Statement(*database_, select_sittings + sittings_in_order).rows(sitting_in);
}

std::vector<Sitting> SittingTable::of_client(ClientId client) {
    return Statement(*database_, select_sittings + "WHERE client = ?" + sittings_in_order)
        .with(client)
        .rows(sitting_in);
}

}  // namespace quarterturn
