#pragma once
// Signing a look off, reopening it, and writing it out as a folder that carries its own checksums.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/looks/look_state.h"

namespace quarterturn {

// Signs, or answers the reasons against it and changes nothing. Every photo file that is sealed is
// read and must match its checksum.
std::vector<std::string> sign_off(Library& library, LookId look, LocalTime now);

void reopen(Library& library, LookId look, std::string_view because, LocalTime now);

// Writes the signed-off look into a new folder as a bag (RFC 8493, BagIt 1.0): photos, recipe,
// record in words. Throws StoreError when the look is not signed off or has changed since, and
// DiskError.
void export_record(Library& library, LookId look, const Path& folder, LocalTime now);

}  // namespace quarterturn
