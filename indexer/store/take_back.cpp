// Taking back what was added, and adding it again under its old number: what undo and redo of a new
// client, wedding, sitting or look need. Nothing goes that something else hangs on.

#include "indexer/store/client_table.h"
#include "indexer/store/look_table.h"
#include "indexer/store/search_words.h"
#include "indexer/store/sitting_table.h"
#include "indexer/store/statement.h"
#include "indexer/store/wedding_table.h"

namespace quarterturn {
namespace {

template <class RowId>
void refuse_if_used(Database& database, RowId id, const std::string& what,
                    std::initializer_list<const char*> columns) {
    for (const std::string column : columns) {
        const std::string table = column.substr(0, column.find('.'));
        Statement find(database,
                       "SELECT EXISTS (SELECT 1 FROM " + table + " WHERE " + column + " = ?)");
        const std::optional<bool> used = find.with(id).template value<bool>();
        if (*used) {
            throw StoreError("The " + what + " cannot be taken back, since other records belong " +
                             "to it by now: take those back first.");
        }
    }
}

}  // namespace

void ClientTable::remove(ClientId id) {
    refuse_if_used(*database_, id, "client",
                   {"sitting.client", "look.client", "party_member.client", "photo_shown.client",
                    "consent.client"});
    Transaction transaction(*database_);
    update_one(*database_, "client " + std::to_string(id.value), "DELETE FROM client WHERE id = ?",
               id);
    index_words(*database_, WordsOf::client, id);
    transaction.commit();
}

void ClientTable::put_back(const Client& client) {
    Transaction transaction(*database_);
    run(*database_, "INSERT INTO client (id, name, folded_name, note) VALUES (?, '', '', '')",
        client.id);
    change(client);
    transaction.commit();
}

void WeddingTable::remove(WeddingId id) {
    refuse_if_used(*database_, id, "wedding", {"sitting.wedding", "look.wedding"});
    Transaction transaction(*database_);
    update_one(*database_, "wedding " + std::to_string(id.value),
               "DELETE FROM wedding WHERE id = ?", id);
    index_words(*database_, WordsOf::wedding, id);
    transaction.commit();
}

void WeddingTable::put_back(const Wedding& wedding) {
    Transaction transaction(*database_);
    run(*database_,
        "INSERT INTO wedding (id, name, folded_name, date, venue, ready_by) "
        "VALUES (?, '', '', '', '', '')",
        wedding.id);
    change(wedding);
    transaction.commit();
}

void SittingTable::remove(SittingId id) {
    refuse_if_used(*database_, id, "sitting",
                   {"photo.sitting", "look_sitting.sitting", "recipe_revision.sitting"});
    Transaction transaction(*database_);
    update_one(*database_, "sitting " + std::to_string(id.value),
               "DELETE FROM sitting WHERE id = ?", id);
    index_words(*database_, WordsOf::sitting, id);
    transaction.commit();
}

void SittingTable::put_back(const Sitting& sitting) {
    Transaction transaction(*database_);
    run(*database_,
        "INSERT INTO sitting (id, client, kind, starts, ends, note) VALUES (?, ?, '', 0, 0, '')",
        sitting.id, sitting.client);
    change(sitting);
    transaction.commit();
}

void LookTable::remove(LookId id) {
    refuse_if_used(*database_, id, "look",
                   {"photo.look", "recipe_revision.look", "recipe_draft.look", "sign_off.look",
                    "shot_list.look", "waiver.look"});
    Transaction transaction(*database_);
    update_one(*database_, "look " + std::to_string(id.value), "DELETE FROM look WHERE id = ?", id);
    index_words(*database_, WordsOf::look, id);
    transaction.commit();
}

void LookTable::put_back(const Look& look) {
    Transaction transaction(*database_);
    run(*database_,
        "INSERT INTO look (id, client, name, folded_name, worn) VALUES (?, ?, '', '', '')", look.id,
        look.client);
    change(look);
    transaction.commit();
}

}  // namespace quarterturn
