#pragma once
// As agreed, as made: what was agreed at the trial beside what was made on the wedding day, look by
// look and angle by angle.

#include "indexer/looks/running_order.h"
#include "indexer/rules/recipe_difference.h"

namespace quarterturn {

struct AgreedPair {
    Angle angle = Angle::front;
    std::optional<Photo> agreed;  // from before the day: one that is signed off goes first
    std::optional<Photo> made;    // from the wedding day

    bool both() const { return agreed && made; }
};

struct LookAsMade {
    Look look;
    std::optional<LocalTime> signed_at;  // when a sign-off stands
    std::vector<AgreedPair> pairs;       // left, front, right, back; then further ones with a photo
    std::vector<ToldChange> changes;     // in the recipe, since that sign-off
    // Of parting and accessory, by the recipes: see rules/recipe_hints.h. The first sentence says
    // that photos do not tell the parting, where there are photos from both days.
    std::vector<std::string> hints;
};

struct ClientAsMade {
    Client client;
    std::string role;         // may be empty
    std::vector<Seat> seats;  // hers, of the running order; none when there is no plan
    std::vector<LookAsMade> looks;
};

struct WeddingAsMade {
    Wedding wedding;
    std::vector<ClientAsMade> clients;  // by their first seat; those without one after them
};

// Photos of stage after count: of each angle the best usable one. Throws StoreError when there is
// no such wedding.
WeddingAsMade as_made(Library& library, WeddingId wedding);

// One of the day itself if there is one, else the last before it, else the next.
std::optional<WeddingId> wedding_to_compare(Library& library, Date today);

// A sitting on the wedding day, of this wedding.
bool is_on_the_day(const Sitting& sitting, const Wedding& wedding);

// The running order's seats; none where nothing can be planned.
std::vector<Seat> planned_seats(Library& library, WeddingId wedding);

}  // namespace quarterturn
