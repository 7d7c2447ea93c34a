#pragma once
// What a file name or a keyword says of the angle: a suggestion only.
//
// Read as words: parted by anything that is no letter or digit, between letters and digits, and
// before a capital ("LeftBack"). Only whole words count: "leftover.jpg" says nothing. Three-quarter
// may be written "three-quarter", "threequarter", "3-quarter", "3-4" or "¾", before or after the
// side. What says two different angles says nothing; so does "left34", which may be the left
// three-quarter or the 34th photo of the left.

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "indexer/record/photo.h"

namespace quarterturn {

struct AngleSuggestion {
    Angle angle = Angle::front;
    std::string source;  // "keyword 'left'", "file name"
};

// Keywords are looked at first, all of them together; the file name only when they say no angle.
std::optional<AngleSuggestion> suggest_angle(std::string_view file_name,
                                             std::span<const std::string> keywords);

// The angle to ask her about: what her file said, else what a face detector saw, the right way
// round when the photo is tagged mirrored. A face that looks at the camera asks for the front, one
// profile for its side; no face says nothing, since many things hide a face.
std::optional<AngleSuggestion> suggest_angle(const Photo& photo);

}  // namespace quarterturn
