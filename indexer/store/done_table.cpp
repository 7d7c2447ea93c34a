#include "indexer/store/done_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void DoneTable::set(WeddingId wedding, ClientId client) {
    run(*database_, "INSERT OR IGNORE INTO client_done (wedding, client) VALUES (?, ?)", wedding,
        client);
}

void DoneTable::clear(WeddingId wedding, ClientId client) {
    run(*database_, "DELETE FROM client_done WHERE wedding = ? AND client = ?", wedding, client);
}

std::vector<ClientId> DoneTable::of_wedding(WeddingId wedding) {
    Statement rows(*database_, "SELECT client FROM client_done WHERE wedding = ? ORDER BY client");
    return rows.with(wedding).rows([](const Statement& row) {
        ClientId client;
        row.read(client);
        return client;
    });
}

}  // namespace quarterturn
