#pragma once
// Pictures for clients who allow only their hair to be shown. The search for faces can miss one, so
// that a picture counts only when she has looked at it and said so.

#include "indexer/image/decode.h"
#include "indexer/record/hair_only.h"
#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* hair_only_caution =
    "The search for faces can miss one: look at the whole picture, its rim, mirrors and windows "
    "too, before you confirm it.";

// The photo as it is to be shown: upright, the right way round. Throws StoreError and
// std::runtime_error when it cannot be read.
cv::Mat picture_the_right_way_round(Library& library, Decoder& decoder, const Photo& photo);

struct HairOnlyPicture {
    HairOnly how;  // with the checksum of the JPEG
    cv::Mat bgr;
    std::vector<std::byte> jpeg;
    bool face_found = false;  // the search found what may be a face in it
};

// Those without a face that was found come first. To be looked at, they are her own work: throws
// StoreError where that is refused on the day (looks/passing_on.h), and as
// picture_the_right_way_round.
std::vector<HairOnlyPicture> propose_hair_only(Library& library, Decoder& decoder,
                                               const Photo& photo, Date on);

// Made as she says it: `how` with its way and box. Throws the same, StoreError too when the search
// found a face in what comes of it, and std::runtime_error when the box lies outside the picture.
HairOnlyPicture make_hair_only(Library& library, Decoder& decoder, const Photo& photo, HairOnly how,
                               Date on);

// Her word that she looked at it and it shows no face; undo stops there, and where it is taken
// back. Throws as make_hair_only, and StoreError when the photo makes another picture by now than
// the one with the checksum.
HairOnly confirm_hair_only(Library& library, Decoder& decoder, const HairOnly& looked_at,
                           LocalTime now);
void forget_hair_only(Library& library, const Photo& photo);

// What was confirmed, made anew. Throws StoreError when another picture comes of it than she looked
// at.
cv::Mat confirmed_picture(Library& library, Decoder& decoder, const HairOnly& confirmed);

}  // namespace quarterturn
