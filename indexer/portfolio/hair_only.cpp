#include "indexer/portfolio/hair_only.h"

#include <algorithm>
#include <array>
#include <opencv2/imgproc.hpp>

#include "indexer/disk/checksum.h"
#include "indexer/image/encode.h"
#include "indexer/image/face_skin.h"
#include "indexer/image/hair_only.h"
#include "indexer/image/head.h"
#include "indexer/looks/passing_on.h"
#include "indexer/looks/sealed_file.h"
#include "indexer/store/hair_only_table.h"

namespace quarterturn {
namespace {

constexpr int looked_at_quality = 92;

// Her own work, as long as nothing has gone out of it.
const Photo& as_own_work(Library& library, const Photo& photo, Date on) {
    refuse_against_own_work(library, std::array{photo}, on);
    return photo;
}

class HairOnlyMaker {
  public:
    HairOnlyMaker(Library& library, Decoder& decoder, const Photo& photo, Date on)
        : photo_(as_own_work(library, photo, on)),
          picture_(picture_the_right_way_round(library, decoder, photo)),
          perhaps_(finder_.perhaps_faces(picture_)) {}

    std::vector<HairOnlyPicture> propose() {
        std::vector<HairOnlyPicture> pictures;
        const HeadInPicture shown{picture_.size(), finder_.faces(picture_), finder_.head(picture_),
                                  photo_.tags.angle, skin()};
        for (const HairOnly& how : ways_without_face(shown)) pictures.push_back(make(how));
        std::ranges::stable_sort(pictures, {}, &HairOnlyPicture::face_found);
        return pictures;
    }

    HairOnlyPicture make(HairOnly how) {
        HairOnlyPicture made;
        made.bgr = without_face(picture_, how);
        made.jpeg = jpeg_bytes(made.bgr, looked_at_quality);
        made.face_found = shows_perhaps_face(how, picture_.size(), perhaps_) ||
                          !finder_.perhaps_faces(made.bgr).empty();
        how.photo = photo_.id;
        how.mirrored = photo_.tags.mirrored;
        how.sha256 = sha256(made.jpeg);
        made.how = std::move(how);
        return made;
    }

  private:
    std::optional<cv::Rect> skin() {
        cv::Mat mask = face_skin(finder_, picture_);
        if (mask.empty()) return std::nullopt;
        // Its edge reaches beyond it.
        cv::erode(mask, mask, cv::getStructuringElement(cv::MORPH_ELLIPSE, {7, 7}));
        if (cv::countNonZero(mask) == 0) return std::nullopt;
        const cv::Rect box = cv::boundingRect(mask);
        const double scale = static_cast<double>(picture_.rows) / mask.rows;
        return cv::Rect(cvRound(box.x * scale), cvRound(box.y * scale), cvRound(box.width * scale),
                        cvRound(box.height * scale));
    }

    const Photo& photo_;
    cv::Mat picture_;
    HeadFinder finder_;
    std::vector<cv::Rect> perhaps_;  // faces, in the whole picture
};

Photo photo_in_library(Library& library, PhotoId id) {
    if (auto photo = library.photos().find(id)) return std::move(*photo);
    throw StoreError("The photo is no longer in the library.");
}

void refuse_with_face(const HairOnlyPicture& made, const Photo& photo) {
    if (!made.face_found) return;
    throw StoreError("The search found what may be a face in the picture of " + photo.file.name +
                     (made.how.way == HairOnlyWay::crop
                          ? ": keep a part that leaves it out, or cover it."
                          : ": cover all of it, or keep a part that leaves it out."));
}

void refuse_another(const HairOnlyPicture& made, const std::string& looked_at, const Photo& photo) {
    if (made.how.sha256 == looked_at) return;
    throw StoreError("The picture of " + photo.file.name +
                     " without her face is no longer the one that was looked at: look at it again "
                     "and confirm it anew.");
}

}  // namespace

cv::Mat picture_the_right_way_round(Library& library, Decoder& decoder, const Photo& photo) {
    const Bytes bytes = read_unchanged(library, photo);
    Decoded decoded = decoder.decode({bytes, photo.file.orientation, 0});
    if (!decoded.ok()) throw std::runtime_error(photo.file.name + ": " + decoded.refused);
    cv::Mat picture = decoded.bgr;
    if (photo.tags.mirrored) cv::flip(picture, picture, 1);
    return picture;
}

std::vector<HairOnlyPicture> propose_hair_only(Library& library, Decoder& decoder,
                                               const Photo& photo, Date on) {
    return HairOnlyMaker(library, decoder, photo, on).propose();
}

HairOnlyPicture make_hair_only(Library& library, Decoder& decoder, const Photo& photo, HairOnly how,
                               Date on) {
    HairOnlyPicture made = HairOnlyMaker(library, decoder, photo, on).make(std::move(how));
    refuse_with_face(made, photo);
    return made;
}

HairOnly confirm_hair_only(Library& library, Decoder& decoder, const HairOnly& looked_at,
                           LocalTime now) {
    const Photo photo = photo_in_library(library, looked_at.photo);
    HairOnlyPicture made = make_hair_only(library, decoder, photo, looked_at, date_of(now));
    refuse_another(made, looked_at.sha256, photo);
    made.how.confirmed_at = now;
    Transaction both(library.database());
    HairOnlyTable(library.database()).keep(made.how);
    library.history().stop_at("confirmed a picture without her face");
    both.commit();
    return made.how;
}

void forget_hair_only(Library& library, const Photo& photo) {
    HairOnlyTable table(library.database());
    Transaction both(library.database());
    if (!table.of(photo.id)) return;
    table.forget(photo.id);
    library.history().stop_at("took back a picture without her face");
    both.commit();
}

cv::Mat confirmed_picture(Library& library, Decoder& decoder, const HairOnly& confirmed) {
    const Photo photo = photo_in_library(library, confirmed.photo);
    cv::Mat picture = without_face(picture_the_right_way_round(library, decoder, photo), confirmed);
    HairOnlyPicture made;
    made.how.sha256 = sha256(jpeg_bytes(picture, looked_at_quality));
    refuse_another(made, confirmed.sha256, photo);
    return picture;
}

}  // namespace quarterturn
