#pragma once
// What clients allow, as lines and as JSON.

#include "app/qturn/reply.h"
#include "indexer/looks/consent_json.h"
#include "indexer/looks/consents.h"

namespace quarterturn {

inline constexpr const char* consent_caution =
    "This keeps what you record and is no legal advice: local law and the photographer's contract "
    "rule, and with children above all.";

nlohmann::json to_json(const Against& against);

// Their lines, numbered, with the papers; and "entries".
void add_entries(Reply& reply, const std::vector<ConsentEntry>& entries);

}  // namespace quarterturn
