#pragma once
// What she says of pairs, looks and filters: actions that can be undone. Each throws StoreError.

#include "indexer/record/pair.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// Nothing: the best one.
Edit choose_frames_edit(const Pair& pair, std::optional<PhotoId> first,
                        std::optional<PhotoId> second);
Edit pin_edit(const Pair& pair, bool pinned);
Edit refuse_edit(const Pair& pair, bool refused);

// Nothing: what the recipe says holds.
Edit say_fact(LookId look, Fact fact, const std::vector<std::string>& values);

Edit keep_filter(const KeptPairFilter& filter);
Edit forget_filter(const std::string& name);

// A picture that a client brought, as somebody else's work. Also throws DiskError.
Edit keep_picture(const Path& picture, ClientId client, LocalTime now);

}  // namespace quarterturn
