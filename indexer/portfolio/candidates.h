#pragma once
// What she could show for a use, and what each still lacks.

#include <span>
#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/looks/photo_gate.h"

namespace quarterturn {

struct Candidate {
    Photo photo;
    Look look;
    std::vector<std::string> families;  // of the look
    bool signed_off = false;
    std::vector<std::string> lacks;  // what stands against it, in words
    std::string next;                // what to do about the first of them, in few words

    bool operator==(const Candidate&) const = default;
};

// Usable photos of finished looks (stage after): those that may go first, then those of signed-off
// looks, then the sharpest. Looks for faces where nobody has yet.
std::vector<Candidate> candidates(Library& library, Decoder& decoder, Use use, Date on);

// The photos of a selection that are still in the library, in its order.
std::vector<Photo> photos_in(Library& library, const PhotoSelection& selection);

struct FamilyCount {
    std::string family;
    int photos = 0;

    bool operator==(const FamilyCount&) const = default;
};

// How many of them that may go show each look family, the most frequent first; her whole list, so
// that what is never shown is seen.
std::vector<FamilyCount> balance(Library& library, const std::vector<Candidate>& all);

// How many of the photos show what her looks have of a fact, such as the hair's texture, the most
// frequent first; what is never shown stands there with 0.
struct FactCount {
    std::string value;
    int photos = 0;

    bool operator==(const FactCount&) const = default;
};
std::vector<FactCount> balance_of(Library& library, std::span<const PhotoId> photos, Fact fact);

}  // namespace quarterturn
