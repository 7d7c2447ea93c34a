#include "indexer/image/head.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>
#include <stdexcept>
#include <string>
#include <vector>

#include "indexer/image/cascade.h"
#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr int search_edge = 512;
// Where every size and inclination is tried, which takes twenty times as long: a face of 8 % of the
// picture's edge is still seen.
constexpr int small_search_edge = 320;

std::unique_ptr<Cascade> load(const std::string& name) {
    const std::string file = "/usr/share/opencv4/haarcascades/" + name;
    auto cascade = load_cascade(file);
    if (!cascade) {
        throw std::runtime_error("The face finder needs " + file +
                                 ", which is missing. Install the package opencv-data.");
    }
    return cascade;
}

// Grey, evened out, with a long edge of `most_edge` or less.
struct SearchPicture {
    cv::Mat grey;
    double scale = 1;  // pixels here for one pixel of the picture it was made from
};

SearchPicture make_search_picture(const cv::Mat& bgr, int most_edge = search_edge) {
    SearchPicture picture;
    picture.scale = std::min(1.0, static_cast<double>(most_edge) / std::max(bgr.cols, bgr.rows));
    cv::cvtColor(bgr, picture.grey, cv::COLOR_BGR2GRAY);
    cv::resize(picture.grey, picture.grey, {}, picture.scale, picture.scale, cv::INTER_AREA);
    cv::equalizeHist(picture.grey, picture.grey);
    return picture;
}

std::optional<cv::Rect> largest(Cascade& cascade, const cv::Mat& grey) {
    // A head that a stylist photographs fills a good part of the picture.
    const int least = std::min(grey.cols, grey.rows) / 6;
    const auto found = cascade.detect(grey, {.step = 1.1, .neighbours = 4, .smallest = least});
    if (found.empty()) return std::nullopt;
    return *std::ranges::max_element(found, {}, [](const cv::Rect& face) { return face.area(); });
}

// Of all sizes that are found at this size of picture.
void find_all(Cascade& cascade, const cv::Mat& grey, std::vector<cv::Rect>& into) {
    constexpr int smallest = 24;  // pixels; the cascades were trained on 20 and 24
    const auto found = cascade.detect(grey, {.step = 1.15, .neighbours = 3, .smallest = smallest});
    into.insert(into.end(), found.begin(), found.end());
}

// The upright square around a square of a picture that was turned.
cv::Rect turned_back(const cv::Rect& square, const cv::Mat& turn) {
    cv::Mat back;
    cv::invertAffineTransform(turn, back);
    const std::vector<cv::Point2f> corners{square.tl(),
                                           {square.x + 1.F * square.width, 1.F * square.y},
                                           square.br(),
                                           {1.F * square.x, square.y + 1.F * square.height}};
    std::vector<cv::Point2f> there;
    cv::transform(corners, there, back);
    return cv::boundingRect(there);
}

// The share of both areas together that they have in common, 0 … 1.
double overlap(const cv::Rect& one, const cv::Rect& other) {
    const double common = (one & other).area();
    return common / (one.area() + other.area() - common);
}

cv::Rect flipped(const cv::Rect& area, int width) {
    return {width - area.x - area.width, area.y, area.width, area.height};
}

}  // namespace

struct HeadFinder::Cascades {
    std::unique_ptr<Cascade> of_frontal = load("haarcascade_frontalface_alt2.xml");
    std::unique_ptr<Cascade> of_profile;  // takes as long to read as to find a head

    Cascade& frontal() { return *of_frontal; }
    Cascade& profile() {
        if (!of_profile) of_profile = load("haarcascade_profileface.xml");
        return *of_profile;
    }

    struct Faces {
        std::optional<cv::Rect> frontal;
        std::optional<cv::Rect> to_left;
        std::optional<cv::Rect> to_right;
    };

    // The profile cascade knows faces that look to the viewer's left; the others are found flipped.
    Faces find(const cv::Mat& grey) {
        cv::Mat turned_round;
        cv::flip(grey, turned_round, 1);
        Faces faces{largest(frontal(), grey), largest(profile(), grey),
                    largest(profile(), turned_round)};
        if (faces.to_right) faces.to_right = flipped(*faces.to_right, grey.cols);
        return faces;
    }

    std::vector<cv::Rect> find_every(const cv::Mat& grey) {
        std::vector<cv::Rect> every;
        for (const double degrees : {0.0, -30.0, -15.0, 15.0, 30.0}) {
            const cv::Mat turn =
                cv::getRotationMatrix2D({grey.cols / 2.F, grey.rows / 2.F}, degrees, 1);
            cv::Mat turned;
            cv::warpAffine(grey, turned, turn, grey.size(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
            std::vector<cv::Rect> found;
            find_all(frontal(), turned, found);
            find_all(profile(), turned, found);
            std::vector<cv::Rect> to_right;
            cv::Mat round;
            cv::flip(turned, round, 1);
            find_all(profile(), round, to_right);
            for (const cv::Rect& face : to_right) found.push_back(flipped(face, grey.cols));
            for (const cv::Rect& face : found) every.push_back(turned_back(face, turn));
        }
        return every;
    }

    // From the straight face where there is one: in profile the square sits anywhere on the face.
    std::optional<cv::Rect> head_by_face(const cv::Mat& bgr) {
        const SearchPicture picture = make_search_picture(bgr);
        const auto face = largest(frontal(), picture.grey);
        if (!face) return std::nullopt;
        // Mean of the demo photos from the front; a hairdo adds to it.
        const cv::Rect2d head(face->x - 0.07 * face->width, face->y - 0.28 * face->height,
                              1.12 * face->width, 1.39 * face->height);
        const cv::Rect whole(cvRound(head.x / picture.scale), cvRound(head.y / picture.scale),
                             cvRound(head.width / picture.scale),
                             cvRound(head.height / picture.scale));
        return whole & cv::Rect({0, 0}, bgr.size());
    }
};

HeadFinder::HeadFinder() : cascades_(std::make_unique<Cascades>()) {}
HeadFinder::~HeadFinder() = default;
HeadFinder::HeadFinder(HeadFinder&&) noexcept = default;
HeadFinder& HeadFinder::operator=(HeadFinder&&) noexcept = default;

HeadSigns HeadFinder::signs(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    const auto faces = cascades_->find(make_search_picture(bgr).grey);
    return {faces.frontal.has_value(), faces.to_left.has_value(), faces.to_right.has_value()};
}

std::vector<cv::Rect> HeadFinder::faces(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    const SearchPicture picture = make_search_picture(bgr);
    const auto found = cascades_->find(picture.grey);
    std::vector<cv::Rect> squares;
    for (const auto& face : {found.frontal, found.to_left, found.to_right}) {
        if (!face) continue;
        const auto whole = [&](int length) { return cvRound(length / picture.scale); };
        squares.emplace_back(whole(face->x), whole(face->y), whole(face->width),
                             whole(face->height));
    }
    return squares;
}

std::vector<cv::Rect> HeadFinder::perhaps_faces(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    const SearchPicture picture = make_search_picture(bgr, small_search_edge);
    std::vector<cv::Rect> faces = cascades_->find_every(picture.grey);
    for (cv::Rect& face : faces) {
        face = {cvRound(face.x / picture.scale), cvRound(face.y / picture.scale),
                cvRound(face.width / picture.scale), cvRound(face.height / picture.scale)};
    }
    return faces;
}

std::optional<cv::Rect> HeadFinder::head(const cv::Mat& bgr) {
    if (bgr.empty()) return std::nullopt;
    const auto silhouette = find_silhouette(bgr);
    const auto by_face = cascades_->head_by_face(bgr);
    // A face says where the chin is, which the outline does not; but a cascade also sees faces in
    // hair, and those lie anywhere.
    constexpr double least_agreement = 0.5;
    if (!silhouette || !by_face) return silhouette ? silhouette : by_face;
    return overlap(*silhouette, *by_face) >= least_agreement ? by_face : silhouette;
}

}  // namespace quarterturn
