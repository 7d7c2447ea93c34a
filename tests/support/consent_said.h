#pragma once
// What a client says of one use, for the tests of all rooms that let photos out.

#include <array>

#include "indexer/looks/consents.h"
#include "tests/support/example_library.h"

namespace quarterturn {

inline void record_said(Library& library, ClientId client, ConsentSaid said, Use use) {
    ConsentEntry entry;
    entry.client = client;
    entry.said = said;
    entry.shown = ShownAs::with_her_face;
    entry.said_on = parse_date("2026-11-01").value();
    entry.recorded_at = at("2026-11-01T08:00");
    record_consent(library, entry, std::array{use});
}

}  // namespace quarterturn
