#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/shot_list.h"
#include "indexer/store/database.h"

namespace quarterturn {

// A look and whose it is, by name.
struct LookName {
    LookId look;
    std::string name;
    std::string client;

    bool operator==(const LookName&) const = default;
};

// Looks, with the shot list and the waivers of each.
class LookTable {
  public:
    explicit LookTable(Database& database) : database_(&database) {}

    LookId add(const Look& look);
    void change(const Look& look);
    std::optional<Look> find(LookId id);
    std::vector<Look> all();        // by client's name, then in the order they were added
    std::vector<LookName> names();  // in the order they were added; cheap where there are thousands
    std::vector<LookName> names_of(std::span<const LookId> looks);  // in any order
    std::vector<Look> of_client(ClientId client);
    std::vector<Look> of_sitting(SittingId sitting);
    std::vector<Look> named(std::string_view name);

    // The look's own list, else her default, else default_shot_list().
    ShotList shot_list(LookId look);
    void set_shot_list(LookId look, const ShotList& list);
    ShotList own_default_shot_list();
    void set_own_default_shot_list(const ShotList& list);

    std::vector<Waiver> waivers(LookId look);
    // Replaces an older one; refuses an empty reason, and a shot that is not on the list.
    void waive(LookId look, const Waiver& waiver);
    void take_back_waiver(LookId look, const Shot& shot);

  private:
    Database* database_;
};

}  // namespace quarterturn
