#include "ui/portfolio_screen/hair_only_pictures.h"

#include "ui/painter/picture.h"

namespace quarterturn {
namespace {

constexpr int most_pixels = 2560;  // of a screen's long edge (common practice)

QImage on_screen(const cv::Mat& bgr) {
    const QImage image = as_image(bgr);
    if (std::max(bgr.cols, bgr.rows) <= most_pixels) return image.copy();
    return image.scaled(most_pixels, most_pixels, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

JudgedPicture to_be_judged(const HairOnlyPicture& made) {
    return {made.how, made.face_found, on_screen(made.bgr)};
}

}  // namespace

HairOnlyPictures hair_only_pictures(Library& library, Decoder& decoder, const Photo& photo,
                                    Date on) {
    HairOnlyPictures pictures;
    for (const HairOnlyPicture& made : propose_hair_only(library, decoder, photo, on)) {
        pictures.proposed.push_back(to_be_judged(made));
    }
    pictures.whole = on_screen(picture_the_right_way_round(library, decoder, photo));
    return pictures;
}

JudgedPicture judged_picture(Library& library, Decoder& decoder, const Photo& photo,
                             const HairOnly& how, Date on) {
    return to_be_judged(make_hair_only(library, decoder, photo, how, on));
}

}  // namespace quarterturn
