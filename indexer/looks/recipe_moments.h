#pragma once
// What can be set side by side to see what changed: every recipe of a client as it stood when it
// was saved, and at the sittings that were done from it.

#include <optional>
#include <vector>

#include "indexer/rules/coverage.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct RecipeMoment {
    Look look;
    RecipeRevision revision;
    std::optional<Sitting> sitting;  // at which it was written, or done from it as it was

    // The same look, revision and sitting.
    bool is(const RecipeMoment& other) const;
};

// By look, each from the first revision on. A sitting that wrote nothing and has photos stands with
// the revision that was the newest when it began, or else with the look's first; a revision that
// was written at no sitting stands alone only when none was done from it.
std::vector<RecipeMoment> recipe_moments(Library& library, ClientId client);

struct MomentPair {
    std::size_t was = 0;  // places among the moments
    std::size_t is = 0;
};

// What she most likely wants to see of a look: its newest moment against the one before, of another
// sitting if there is one; of a look with one moment only, against the newest of another look.
// Nothing when there is nothing to compare.
std::optional<MomentPair> likely_pair(const std::vector<RecipeMoment>& moments, LookId look);

// One angle, the best after photo of either side.
struct AnglePair {
    Angle angle = Angle::front;
    std::optional<Photo> was;
    std::optional<Photo> is;
};

// Every angle that either side has, left, front, right and back first. The photos of a moment are
// those of its look at its sitting, or all of the look where it has none. Where both sides would
// show the same photo there is none.
std::vector<AnglePair> angle_pairs(Library& library, const RecipeMoment& was,
                                   const RecipeMoment& is);

}  // namespace quarterturn
