#pragma once
// Edits of clients, weddings, sittings and looks.

#include <optional>
#include <vector>

#include "ui/shell/edits.h"

namespace quarterturn {

// Each adds what has no number yet.
Edit save_client(const Client& client);
Edit save_look(const Look& look);

// `looks` are the client's looks that it works on, as they are now; the others of hers are taken
// off it.
Edit save_sitting(const Sitting& sitting, const std::vector<Look>& looks);

// A party may name people who are no clients yet: they are added with the wedding.
struct NamedMember {
    std::string name;
    std::string role;
    std::optional<ClientId> client = {};  // chosen among several of that name
};
Edit save_wedding(const Wedding& wedding, const std::vector<NamedMember>& party);

}  // namespace quarterturn
