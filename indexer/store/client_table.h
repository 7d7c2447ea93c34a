#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Lists are in the order of names. All functions throw StoreError.
class ClientTable {
  public:
    explicit ClientTable(Database& database) : database_(&database) {}

    ClientId add(const Client& client);  // client.id is not looked at; refuses an empty name
    void change(const Client& client);
    std::optional<Client> find(ClientId id);
    std::vector<Client> all();
    std::vector<Client> named(std::string_view name);  // the whole name, case folded (any script)

  private:
    Database* database_;
};

}  // namespace quarterturn
