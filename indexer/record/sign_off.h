#pragma once
// The stylist's word that a look is complete and can be repeated, sealed by checksums.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/shot_list.h"
#include "indexer/record/time.h"

namespace quarterturn {

struct SealedPhoto {
    PhotoId photo;
    std::string name;
    std::string sha256;
    std::string tags;  // "after, left" and "mirrored" as they were: what the photo stood for

    bool operator==(const SealedPhoto&) const = default;
};

// SHA-256 in lower-case hex.
struct Seal {
    std::vector<SealedPhoto> photos;
    std::string recipe_sha256;  // of the recipe's canonical JSON
    std::vector<Waiver> waivers;

    bool operator==(const Seal&) const = default;
};

struct SignOff {
    SignOffId id;
    LookId look;
    LocalTime signed_at{};
    Seal seal;
    std::optional<LocalTime> reopened_at;
    std::string reopened_because;

    bool operator==(const SignOff&) const = default;
};

}  // namespace quarterturn
