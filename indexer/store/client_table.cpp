#include "indexer/store/client_table.h"

#include "indexer/store/search_words.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_clients = "SELECT id, name, note FROM client ";

Client client_in(const Statement& row) {
    Client client;
    row.read(client.id, client.name, client.note);
    return client;
}

void check(const Client& client) {
    refuse_unless_name("the client's name", client.name);
    refuse_unless_text("the note on " + client.name, client.note);
}

}  // namespace

ClientId ClientTable::add(const Client& client) {
    check(client);
    Transaction transaction(*database_);
    const auto id = insert<ClientId>(
        *database_, "INSERT INTO client (name, folded_name, note) VALUES (?, ?, ?)", client.name,
        folded(client.name), client.note);
    index_words(*database_, WordsOf::client, id);
    transaction.commit();
    return id;
}

void ClientTable::change(const Client& client) {
    check(client);
    Transaction transaction(*database_);
    update_one(*database_, "client " + std::to_string(client.id.value),
               "UPDATE client SET name = ?, folded_name = ?, note = ? WHERE id = ?", client.name,
               folded(client.name), client.note, client.id);
    index_words(*database_, WordsOf::client, client.id);
    transaction.commit();
}

std::optional<Client> ClientTable::find(ClientId id) {
    return Statement(*database_, select_clients + "WHERE id = ?").with(id).first(client_in);
}

std::vector<Client> ClientTable::all() {
    auto clients = Statement(*database_, select_clients + "ORDER BY id").rows(client_in);
    sort_by_name(clients, &Client::name);
    return clients;
}

std::vector<Client> ClientTable::named(std::string_view name) {
    return Statement(*database_, select_clients + "WHERE folded_name = ? ORDER BY id")
        .with(folded(name))
        .rows(client_in);
}

std::vector<Client> SomeRecords::clients(std::span<const ClientId> ids) {
    const std::string list = json_list(ids);
    auto found =
        Statement(*database_,
                  select_clients + "WHERE id IN (SELECT value FROM json_each(?)) ORDER BY id")
            .with(list)
            .rows(client_in);
    sort_by_name(found, &Client::name);
    return found;
}

}  // namespace quarterturn
