#pragma once
// Signing a look off, reopening it, and writing it out as a folder that carries its own checksums.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/looks/look_state.h"

namespace quarterturn {

// Signs, or answers the reasons against it and changes nothing. When nothing else stands against
// it, a draft of its recipe is saved as a revision, which is what is judged and signed, and every
// photo file that is to be sealed is read and must match its checksum.
std::vector<std::string> sign_off(Library& library, LookId look, LocalTime now);

// A sentence for each photo of the look whose file is gone or no longer holds what was brought in.
// Reads all of them.
std::vector<std::string> file_problems(Library& library, const LookState& state);

// Throws StoreError when the look is not signed off, or without a reason.
void reopen(Library& library, LookId look, std::string_view because, LocalTime now);

// Writes the signed-off look into a new folder as a bag (RFC 8493, BagIt 1.0): photos, recipe,
// record in words and as JSON. The folder appears under its name only when all of it is on the
// disk; until then it is built beside it. In its file names, what some disks cannot hold stands as
// '_', so that the manifest means the same to every tool; the original names are in the record.
// Throws StoreError when the look is not signed off or has changed since, when a photo's file has,
// when somebody shown declined or withdrew even the use "own record", or when something of that
// name is there already; DiskError when it cannot be written.
void export_record(Library& library, LookId look, const Path& folder, LocalTime now);

}  // namespace quarterturn
