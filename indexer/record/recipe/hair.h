#pragma once
// The hair as it came, and what to beware of. Empty where nothing is said.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/time.h"

namespace quarterturn {

struct HairOnTheDay {
    std::string washed;  // when
    std::string damp;    // "damp", "dry", "rough-dried"
    std::string length;
    std::string texture;
    std::string density;
    std::string colour;  // and highlights
    std::string layers;  // which side sections are too short to reach the back
    std::string extensions;
    std::string changed;  // since the last sitting

    bool operator==(const HairOnTheDay&) const = default;
};

struct Sensitivity {
    std::string to;
    std::optional<Date> patch_tested;
    std::string result;

    bool operator==(const Sensitivity&) const = default;
};

struct CautionDetails {
    std::vector<Sensitivity> sensitivities;
    std::string scalp;
    std::string tender;  // spots

    bool operator==(const CautionDetails&) const = default;
};

}  // namespace quarterturn
