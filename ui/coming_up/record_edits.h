#pragma once
// Edits of clients, weddings, sittings and looks that know their way back.

#include <optional>

#include "indexer/record/people.h"
#include "ui/shell/edits.h"

namespace quarterturn {

Edit change_client(const Client& before, const Client& after);
Edit change_look(const Look& before, const Look& after);

Edit add_client(const Client& client);
Edit add_look(const Look& look);

// Adds the sitting when it has no number yet. `looks` are the client's looks that it works on, as
// they are now; the others of hers are taken off it.
Edit save_sitting(const Sitting& before, const Sitting& after, const std::vector<Look>& looks);

// A party may name people who are no clients yet: they are added with the wedding.
struct NamedMember {
    std::string name;
    std::string role;
    std::optional<ClientId> client = {};  // chosen among several of that name
};
// Adds the wedding when it has no number yet.
Edit save_wedding(const std::optional<Wedding>& before, const Wedding& after,
                  const std::vector<NamedMember>& party);

}  // namespace quarterturn
