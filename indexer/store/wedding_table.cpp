#include "indexer/store/wedding_table.h"

#include "indexer/store/search_words.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// One row for each member of the party, or one without a member.
const std::string select_weddings =
    "SELECT wedding.id, name, date, venue, ready_by, party_member.client, party_member.role "
    "FROM wedding LEFT JOIN party_member ON party_member.wedding = wedding.id ";
const std::string weddings_in_order = " ORDER BY date, wedding.id, party_member.place";

std::vector<Wedding> weddings_in(Statement& statement) {
    std::vector<Wedding> weddings;
    while (statement.step()) {
        Wedding wedding;
        std::optional<ClientId> client;
        std::optional<std::string> role;
        statement.read(wedding.id, wedding.name, wedding.date, wedding.venue, wedding.ready_by,
                       client, role);
        if (weddings.empty() || weddings.back().id != wedding.id) weddings.push_back(wedding);
        if (client) weddings.back().party.push_back({*client, role.value_or("")});
    }
    return weddings;
}

void check(const Wedding& wedding) {
    refuse_unless_name("the wedding's name", wedding.name);
    refuse_unless_text("the venue of " + wedding.name, wedding.venue);
    refuse_unless_text("the ready-by time of " + wedding.name, wedding.ready_by);
    if (!wedding.date.ok()) {
        throw StoreError("For the date of " + wedding.name +
                         ", a day was given that no calendar has: correct it.");
    }
    std::vector<ClientId> members;
    for (const PartyMember& member : wedding.party) {
        refuse_unless_text("a role in the party of " + wedding.name, member.role);
        if (std::find(members.begin(), members.end(), member.client) != members.end()) {
            throw StoreError("A client is in the party of " + wedding.name +
                             " twice: leave one of the two out.");
        }
        members.push_back(member.client);
    }
}

void write_party(Database& database, WeddingId id, const std::vector<PartyMember>& party) {
    run(database, "DELETE FROM party_member WHERE wedding = ?", id);
    Statement add(database,
                  "INSERT INTO party_member (wedding, place, client, role) VALUES (?, ?, ?, ?)");
    int place = 0;
    for (const PartyMember& member : party) {
        add.with(id, place++, member.client, member.role).run();
    }
}

}  // namespace

WeddingId WeddingTable::add(const Wedding& wedding) {
    check(wedding);
    Transaction transaction(*database_);
    const auto id = insert<WeddingId>(
        *database_,
        "INSERT INTO wedding (name, folded_name, date, venue, ready_by) VALUES (?, ?, ?, ?, ?)",
        wedding.name, folded(wedding.name), wedding.date, wedding.venue, wedding.ready_by);
    write_party(*database_, id, wedding.party);
    index_words(*database_, WordsOf::wedding, id);
    transaction.commit();
    return id;
}

void WeddingTable::change(const Wedding& wedding) {
    check(wedding);
    Transaction transaction(*database_);
    update_one(*database_, "wedding " + std::to_string(wedding.id.value),
               "UPDATE wedding SET name = ?, folded_name = ?, date = ?, venue = ?, ready_by = ? "
               "WHERE id = ?",
               wedding.name, folded(wedding.name), wedding.date, wedding.venue, wedding.ready_by,
               wedding.id);
    write_party(*database_, wedding.id, wedding.party);
    index_words(*database_, WordsOf::wedding, wedding.id);
    transaction.commit();
}

std::optional<Wedding> WeddingTable::find(WeddingId id) {
    Statement statement(*database_, select_weddings + "WHERE wedding.id = ?" + weddings_in_order);
    return first_of(weddings_in(statement.with(id)));
}

std::vector<Wedding> WeddingTable::all() {
    Statement statement(*database_, select_weddings + weddings_in_order);
    return weddings_in(statement);
}

std::vector<Wedding> WeddingTable::named(std::string_view name) {
    Statement statement(*database_, select_weddings + "WHERE folded_name = ?" + weddings_in_order);
    return weddings_in(statement.with(folded(name)));
}

std::vector<Wedding> SomeRecords::weddings(std::span<const WeddingId> ids) {
    const std::string list = json_list(ids);
    Statement statement(*database_, select_weddings +
                                        "WHERE wedding.id IN (SELECT value FROM json_each(?))" +
                                        weddings_in_order);
    return weddings_in(statement.with(list));
}

std::vector<Wedding> SomeRecords::weddings_on(const DaysFrom& days) {
    Statement statement(
        *database_, select_weddings + "WHERE date >= coalesce(?, '') AND date < coalesce(?, '~')" +
                        weddings_in_order);
    return weddings_in(statement.with(days.first, days.end));
}

std::vector<Wedding> SomeRecords::weddings_with(std::span<const ClientId> clients) {
    const std::string list = json_list(clients);
    Statement statement(*database_,
                        select_weddings +
                            "WHERE wedding.id IN (SELECT wedding FROM party_member WHERE client IN "
                            "(SELECT value FROM json_each(?)))" +
                            weddings_in_order);
    return weddings_in(statement.with(list));
}

}  // namespace quarterturn
