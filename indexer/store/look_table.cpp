#include "indexer/store/look_table.h"

#include <algorithm>
#include <map>

#include "indexer/store/client_table.h"
#include "indexer/store/search_words.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// One row for each sitting of a look, or one without a sitting.
const std::string select_looks =
    "SELECT look.id, client, wedding, name, worn, look_sitting.sitting "
    "FROM look LEFT JOIN look_sitting ON look_sitting.look = look.id ";
const std::string looks_in_order = " ORDER BY look.id, look_sitting.place";

const std::string select_names =
    "SELECT look.id, look.name, client.name FROM look JOIN client ON client.id = look.client ";

LookName name_in(const Statement& row) {
    LookName name;
    row.read(name.look, name.name, name.client);
    return name;
}

std::vector<Look> looks_in(Statement& statement) {
    std::vector<Look> looks;
    while (statement.step()) {
        Look look;
        std::optional<SittingId> sitting;
        statement.read(look.id, look.client, look.wedding, look.name, look.worn, sitting);
        if (looks.empty() || looks.back().id != look.id) looks.push_back(look);
        if (sitting) looks.back().sittings.push_back(*sitting);
    }
    return looks;
}

void check(const Look& look) {
    refuse_unless_name("the look's name", look.name);
    std::vector<SittingId> sittings = look.sittings;
    std::sort(sittings.begin(), sittings.end());
    if (std::adjacent_find(sittings.begin(), sittings.end()) != sittings.end()) {
        throw StoreError("The look " + look.name +
                         " names one sitting twice: leave one of the two out.");
    }
}

void write_sittings(Database& database, LookId id, const std::vector<SittingId>& sittings) {
    run(database, "DELETE FROM look_sitting WHERE look = ?", id);
    Statement add(database, "INSERT INTO look_sitting (look, place, sitting) VALUES (?, ?, ?)");
    int place = 0;
    for (const SittingId sitting : sittings) add.with(id, place++, sitting).run();
}

std::vector<Look> by_client(std::vector<Look> looks, const std::vector<Client>& clients) {
    std::map<ClientId, std::size_t> place;
    for (const Client& client : clients) place.emplace(client.id, place.size());
    std::ranges::stable_sort(looks, {}, [&](const Look& look) { return place.at(look.client); });
    return looks;
}

std::vector<Look> by_name(SomeRecords& records, std::vector<Look> looks) {
    std::vector<ClientId> whose;
    for (const Look& look : looks) whose.push_back(look.client);
    return by_client(std::move(looks), records.clients(whose));
}

}  // namespace

LookId LookTable::add(const Look& look) {
    check(look);
    Transaction transaction(*database_);
    const auto id = insert<LookId>(
        *database_,
        "INSERT INTO look (client, wedding, name, folded_name, worn) VALUES (?, ?, ?, ?, ?)",
        look.client, look.wedding, look.name, folded(look.name), look.worn);
    write_sittings(*database_, id, look.sittings);
    index_words(*database_, WordsOf::look, id);
    transaction.commit();
    return id;
}

void LookTable::change(const Look& look) {
    check(look);
    Transaction transaction(*database_);
    update_one(*database_, "look " + std::to_string(look.id.value),
               "UPDATE look SET client = ?, wedding = ?, name = ?, folded_name = ?, worn = ? "
               "WHERE id = ?",
               look.client, look.wedding, look.name, folded(look.name), look.worn, look.id);
    write_sittings(*database_, look.id, look.sittings);
    index_words(*database_, WordsOf::look, look.id);
    transaction.commit();
}

std::optional<Look> LookTable::find(LookId id) {
    Statement statement(*database_, select_looks + "WHERE look.id = ?" + looks_in_order);
    return first_of(looks_in(statement.with(id)));
}

std::vector<Look> LookTable::all() {
    Statement statement(*database_, select_looks + looks_in_order);
    return by_client(looks_in(statement), ClientTable(*database_).all());
}

std::vector<LookName> LookTable::names() {
    return Statement(*database_, select_names + "ORDER BY look.id").rows(name_in);
}

std::vector<LookName> LookTable::names_of(std::span<const LookId> looks) {
    return Statement(*database_, select_names + "WHERE look.id IN (SELECT value FROM json_each(?))")
        .with(json_list(looks))
        .rows(name_in);
}

std::vector<Look> LookTable::of_client(ClientId client) {
    Statement statement(*database_, select_looks + "WHERE client = ?" + looks_in_order);
    return looks_in(statement.with(client));
}

std::vector<Look> LookTable::of_sitting(SittingId sitting) {
    Statement statement(*database_,
                        select_looks +
                            "WHERE look.id IN (SELECT look FROM look_sitting WHERE sitting = ?)" +
                            looks_in_order);
    return looks_in(statement.with(sitting));
}

std::vector<Look> LookTable::named(std::string_view name) {
    Statement statement(*database_, select_looks + "WHERE folded_name = ?" + looks_in_order);
    return looks_in(statement.with(folded(name)));
}

std::vector<Look> SomeRecords::looks_of(std::span<const WeddingId> weddings,
                                        std::span<const SittingId> sittings) {
    const std::string of_weddings = json_list(weddings);
    const std::string of_sittings = json_list(sittings);
    Statement statement(*database_,
                        select_looks +
                            "WHERE look.wedding IN (SELECT value FROM json_each(?)) OR look.id IN "
                            "(SELECT look FROM look_sitting WHERE sitting IN "
                            "(SELECT value FROM json_each(?)))" +
                            looks_in_order);
    return by_name(*this, looks_in(statement.with(of_weddings, of_sittings)));
}

std::vector<Look> SomeRecords::looks(std::span<const LookId> ids) {
    const std::string list = json_list(ids);
    Statement statement(
        *database_,
        select_looks + "WHERE look.id IN (SELECT value FROM json_each(?))" + looks_in_order);
    return by_name(*this, looks_in(statement.with(list)));
}

std::vector<Look> SomeRecords::looks_of_clients_of(std::span<const LookId> looks) {
    const std::string list = json_list(looks);
    Statement statement(*database_, select_looks +
                                        "WHERE client IN (SELECT client FROM look WHERE id IN "
                                        "(SELECT value FROM json_each(?)))" +
                                        looks_in_order);
    return by_name(*this, looks_in(statement.with(list)));
}

std::map<LookId, ClientId> SomeRecords::clients_of(std::span<const LookId> looks) {
    const std::string list = json_list(looks);
    std::map<LookId, ClientId> clients;
    Statement statement(*database_,
                        "SELECT id, client FROM look WHERE id IN (SELECT value FROM json_each(?))");
    statement.with(list);
    while (statement.step()) {
        LookId look;
        ClientId client;
        statement.read(look, client);
        clients.emplace(look, client);
    }
    return clients;
}

}  // namespace quarterturn
