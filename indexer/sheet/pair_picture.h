#pragma once
// A pair as one picture: both heads equally large and in the same place, beside each other or one
// above the other, with her business line and a caption. Both heads stay whole. Cropped, turned,
// shifted and scaled, never stretched; nothing that changes hair or skin.
//
// The picture leaves the library: only portfolio/pair_export.h makes it, behind the gate.

#include <array>
#include <opencv2/core.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/sheet/page.h"
#include "indexer/store/library.h"

namespace quarterturn {

class Decoder;
class HeadFinder;

enum class PictureShape { square, four_to_five, nine_to_sixteen, a5 };
inline constexpr std::array all_picture_shapes{PictureShape::square, PictureShape::four_to_five,
                                               PictureShape::nine_to_sixteen, PictureShape::a5};
std::string_view word(PictureShape shape);  // "4:5"
std::optional<PictureShape> parse_picture_shape(std::string_view text);

// 2160 pixels wide, and A5 (ISO 216, upright) at 300 dots per inch.
cv::Size picture_pixels(PictureShape shape);

struct PairPictureWish {
    PictureShape shape = PictureShape::square;
    bool one_above_other = false;
    // One exposure and one white balance for the whole of the second photo, so that its background
    // is lit as that of the first.
    bool even_light = false;
    std::string business_line{};
    std::string caption{};
    bool say_what_was_done = false;  // behind the caption
    std::string not_alike{};         // said with what was done
};

struct PairPicture {
    Document document;              // one page; drawn to a JPEG in sRGB by ui/painter
    std::vector<std::string> done;  // what was done to the photos, a sentence each
    // What was asked and not done, and what does not look as it might: sentences with a next step.
    std::vector<std::string> remarks;
    std::string refused;  // a sentence when it cannot be made: then there is no page
};

// Decodes both photos. Throws StoreError.
PairPicture pair_picture(Library& library, Decoder& decoder, HeadFinder& finder, TextRuler& ruler,
                         const Photo& first, const Photo& second, const PairPictureWish& wish);

}  // namespace quarterturn
