#pragma once
// The pictures without a face as they are judged on screen, made away from the window's thread.

#include <QImage>
#include <vector>

#include "indexer/portfolio/hair_only.h"

namespace quarterturn {

struct JudgedPicture {
    HairOnly how;
    bool face_found = false;
    QImage image;  // no larger than a screen
};

struct HairOnlyPictures {
    QImage whole;
    std::vector<JudgedPicture> proposed;
};

// Both throw what propose_hair_only and make_hair_only throw.
HairOnlyPictures hair_only_pictures(Library& library, Decoder& decoder, const Photo& photo,
                                    Date on);
JudgedPicture judged_picture(Library& library, Decoder& decoder, const Photo& photo,
                             const HairOnly& how, Date on);

}  // namespace quarterturn
