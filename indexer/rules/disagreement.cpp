#include "indexer/rules/disagreement.h"

namespace quarterturn {
namespace {

// What the picture would show had it been taken without a mirror.
HeadSigns right_way_round(HeadSigns signs, bool mirrored) {
    if (mirrored) std::swap(signs.profile_to_left, signs.profile_to_right);
    return signs;
}

std::optional<std::string> ask_about_front(const HeadSigns& signs) {
    if (signs.frontal_face) return std::nullopt;
    if (signs.profile_to_left || signs.profile_to_right) {
        return "The photo is tagged front, but a face is seen from the side. Is it the front?";
    }
    return "The photo is tagged front, but no face was found in it. Is it the front?";
}

std::optional<std::string> ask_about_back(const HeadSigns& signs) {
    if (!signs.frontal_face && !signs.profile_to_left && !signs.profile_to_right) {
        return std::nullopt;
    }
    return "The photo is tagged back, but a face was found in it. Is it the back?";
}

// From the client's left side her face looks to the viewer's left, and so on the right. A face that
// looks straight at the camera is seen both ways round by the profile cascade, and so it may in a
// three-quarter view, but not from the side.
std::optional<std::string> ask_about_side(const HeadSigns& signs, Angle angle) {
    const std::string tag{word(angle)};
    if (signs.frontal_face && (angle == Angle::left || angle == Angle::right)) {
        return "The photo is tagged " + tag + ", but the face looks at the camera. Is it the " +
               tag + "?";
    }
    const bool left = angle == Angle::left || angle == Angle::left_three_quarter;
    const bool as_tagged = left ? signs.profile_to_left : signs.profile_to_right;
    const bool other_way = left ? signs.profile_to_right : signs.profile_to_left;
    if (!other_way || as_tagged) return std::nullopt;
    return "The photo is tagged " + tag + ", but her face looks the other way. Is it the " +
           std::string{word(mirrored(angle))} + ", or was it taken in a mirror?";
}

}  // namespace

std::optional<std::string> disagreement(const Photo& photo) {
    if (!photo.head_signs || !photo.tags.angle) return std::nullopt;
    const HeadSigns signs = right_way_round(*photo.head_signs, photo.tags.mirrored);
    switch (*photo.tags.angle) {
        case Angle::front:
            return ask_about_front(signs);
        case Angle::back:
            return ask_about_back(signs);
        case Angle::left:
        case Angle::right:
        case Angle::left_three_quarter:
        case Angle::right_three_quarter:
            return ask_about_side(signs, *photo.tags.angle);
        case Angle::crown:
        case Angle::detail:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace quarterturn
