// What the two photos of a pair seem to differ in, as sentences.

#include <array>
#include <cmath>

#include "indexer/sheet/laid_pair.h"

namespace quarterturn {
namespace {

constexpr const char* as_far = " than at the trial, as far as the photos can tell.";

int halves_of(double centimetres) {
    return static_cast<int>(std::lround(std::abs(centimetres) * 2));
}

// "1.5 cm"
std::string length_said(double centimetres) {
    const int halves = halves_of(centimetres);
    return std::to_string(halves / 2) + (halves % 2 == 1 ? ".5" : "") + " cm";
}

// What it is called to be further on this way in a photo of this angle.
struct WayWords {
    const char* left;  // of the picture
    const char* right;
    const char* up = "higher";
    const char* down = "lower";
};

WayWords way_words(std::optional<Angle> angle) {
    switch (angle.value_or(Angle::detail)) {
        case Angle::front:
            return {"further to her right", "further to her left"};
        case Angle::back:
            return {"further to her left", "further to her right"};
        case Angle::left:
            return {"further forward", "further back"};
        case Angle::right:
            return {"further back", "further forward"};
        case Angle::crown:
            return {"further to her left", "further to her right", "further forward",
                    "further back"};
        case Angle::left_three_quarter:
        case Angle::right_three_quarter:
        case Angle::detail:
            break;
    }
    return {"further left in the picture", "further right in the picture"};
}

std::string moved_words(const AccessoryMove& move, const WayWords& words) {
    std::string text;
    for (const auto& [size, less, more] : {std::tuple(move.higher, words.down, words.up),
                                           std::tuple(move.right, words.left, words.right)}) {
        if (halves_of(size) == 0) continue;
        if (!text.empty()) text += " and ";
        text += length_said(size) + " " + (size < 0 ? less : more);
    }
    return text;
}

void add_hair(std::vector<std::string>& hints, const HairHeight& hair) {
    if (!hair.centimetres) {
        hints.emplace_back(
            "Whether the hair stands as high cannot be told: it does not stand out from the "
            "background.");
    } else if (hair.differs()) {
        hints.push_back("The hair stands about " + length_said(*hair.centimetres) +
                        (*hair.centimetres > 0 ? " higher" : " lower") + as_far);
    }
}

void add_accessory(std::vector<std::string>& hints, const LaidPair& pair) {
    const AccessoryPlace& place = pair.accessory;
    if (place.differs()) {
        hints.push_back("The accessory sits about " +
                        moved_words(*place.move, way_words(pair.angle)) + as_far);
    } else if (!place.move) {
        const bool in_one = place.first.has_value() != place.second.has_value();
        const bool in_both = place.first && place.second;
        hints.push_back(std::string("Whether an accessory sits as agreed cannot be told: ") +
                        (in_both  ? "what stands out from the hair is not alike in both photos."
                         : in_one ? "one stands out from the hair in one photo only."
                                  : "none stands out from the hair."));
    }
}

}  // namespace

std::vector<std::string> hint_words(const LaidPair& pair) {
    if (!pair.no_hint.empty()) {
        return {"Whether hair and accessory are as agreed cannot be told: " + pair.no_hint + "."};
    }
    std::vector<std::string> hints;
    add_hair(hints, pair.hair);
    add_accessory(hints, pair);
    return hints;
}

}  // namespace quarterturn
