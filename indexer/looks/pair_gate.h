#pragma once
// Pairs before the gate: both photos must pass it (rules/gate.h).

#include <span>
#include <string>
#include <vector>

#include "indexer/looks/photo_gate.h"

namespace quarterturn {

// What stands against showing both photos for a use on a day, a sentence each: what is the same of
// both once, what is about the photos and not about a person with their files' names. Where a face
// stands against it, that no picture without it helps. Empty: nothing does.
std::vector<std::string> against_both(PhotoGate& gate, const Photo& first, const Photo& second,
                                      Use use, Date on);

// For each pair the uses that both its photos may go for on that day; a fixed number of statements,
// however many pairs. A photo in which nobody has looked for a face counts as one that shows it.
// Throws StoreError.
std::vector<std::vector<Use>> allowed_uses(Library& library, std::span<const Pair> pairs, Date on);
// The same where they are few: reads nothing of others.
std::vector<std::vector<Use>> allowed_uses_of_few(Library& library, std::span<const Pair> pairs,
                                                  Date on);

}  // namespace quarterturn
