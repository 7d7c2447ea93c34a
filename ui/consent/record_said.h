#pragma once
// What she said, recorded in one step with the paper that shows it.

#include "indexer/looks/consents.h"

namespace quarterturn {

// What is recorded for these uses; the entry's own use is not looked at.
struct Said {
    ConsentEntry entry;
    std::vector<Use> uses;
};

// All of it with the paper, or nothing. An empty path: without a paper. Throws what
// record_consent() and attach_paper() throw.
void record_said(Library& library, const std::vector<Said>& all, const Path& paper);

// What went out under her consents and may not be shown any longer.
std::vector<ToTakeDown> to_take_down_of(Library& library, ClientId client, Date today);

}  // namespace quarterturn
