#include "indexer/image/shoulder_line.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace quarterturn {
namespace {

constexpr int stride = 4;              // pixels to the right from one joint of the line to the next
constexpr int steepest = 2 * stride;   // pixels upwards on the way
constexpr int rises = steepest + 1;    // how many ways there are on: 0, 1, … steepest
constexpr double most_level = 0.4;     // of the line: a shelf or table behind her is level
constexpr double least_length = 0.05;  // of the picture's height
constexpr double least_edge = 0.15;    // what an edge must have before it is worth following
constexpr double for_a_bend = 0.06;    // what each pixel of another rise costs
constexpr double for_cover = 0.7;      // what an edge above costs
constexpr double for_level = 0.3;      // what a level way costs: the hem beneath is level
constexpr double furthest_end = 0.15;  // from the head, in widths of the picture

struct Joint {
    float worth = 0;
    int before = -1;  // the rise on the way to the joint before; -1 where the line begins
    int level = 0;    // pixels that it ran level since it began
    int length = 0;   // pixels since it began; 0 where there is no line
};

// How much of an edge each place has that may be a shoulder rising to the right: level ones to
// those of 45 degrees, 0 … 1; nothing on the head.
cv::Mat edges_beside(const Slopes& slopes, const cv::Mat& shape) {
    cv::Mat edges, with_margin;
    cv::max(-slopes.cosine, slopes.sine, edges);
    cv::max(edges, 0, edges);
    cv::dilate(shape, with_margin, cv::Mat::ones(1, 5, CV_8UC1));
    edges.setTo(0, with_margin);
    return edges;
}

// The strongest edge within a quarter of the picture above a place, but for the edge it is on.
cv::Mat cover_of(const cv::Mat& edges) {
    constexpr int own = 4;
    const int reach = edges.rows / 4;
    cv::Mat cover, moved;
    cv::copyMakeBorder(edges, moved, own, 0, 0, 0, cv::BORDER_CONSTANT, 0);
    const cv::Mat column = cv::Mat::ones(reach - own, 1, CV_8UC1);
    cv::dilate(moved.rowRange(0, edges.rows), cover, column, {0, reach - own - 1}, 1,
               cv::BORDER_CONSTANT, 0);
    return cover;
}

// Finds the line on the left of a picture.
class Walk {
  public:
    Walk(const Slopes& slopes, const cv::Mat& shape)
        : slopes_(slopes),
          rows_(shape.rows),
          columns_(shape.cols),
          joints_count_(columns_ / 2 / stride) {
        const cv::Rect bounds = cv::boundingRect(shape);
        top_ = bounds.y + bounds.height / 3;
        cover_ = cover_of(edges_beside(slopes, shape));
        for (int y = 0; y < rows_; ++y) {
            const uchar* row = shape.ptr(y);
            head_begins_.push_back(static_cast<int>(std::find(row, row + columns_, 255) - row));
        }
        joints_.resize(static_cast<std::size_t>(joints_count_ + 1) * rows_ * rises);
    }

    std::vector<cv::Point2d> line() {
        for (int at = 1; at <= joints_count_; ++at) {
            for (int y = top_; y < rows_; ++y) {
                for (int rise = 0; rise < rises; ++rise) reach(at, y, rise);
            }
        }
        return followed_back();
    }

  private:
    struct Place {
        int at = 0;
        int y = 0;
        int rise = 0;
    };

    Joint& joint(int at, int y, int rise) {
        return joints_[(static_cast<std::size_t>(at) * rows_ + y) * rises + rise];
    }

    // How well the edges follow the way between two joints.
    double followed(int x, int y, int rise) const {
        const double squared = stride * stride + rise * rise;
        const double cosine = (rise * rise - stride * stride) / squared;
        const double sine = 2.0 * rise * stride / squared;
        double sum = 0;
        for (int step = 1; step <= stride; ++step) {
            const int row = cvRound(y - 1.0 * rise * step / stride);
            sum += cosine * slopes_.cosine.at<float>(row, x + step) +
                   sine * slopes_.sine.at<float>(row, x + step);
        }
        return sum / stride;
    }

    void reach(int at, int y, int rise) {
        const int x = (at - 1) * stride;
        const int from = y + rise;
        if (from >= rows_ || x >= head_begins_[from] || x + stride >= head_begins_[y] + 2) return;
        Joint best = best_before(at - 1, from, rise);
        const double covered = (cover_.at<float>(from, x) + cover_.at<float>(y, x + stride)) / 2;
        best.worth += static_cast<float>(followed(x, from, rise) - least_edge -
                                         for_cover * covered - (rise == 0 ? for_level : 0));
        if (best.worth <= 0) return;
        if (rise == 0) best.level += stride;
        best.length += stride;
        joint(at, y, rise) = best;
        const bool ends_at_head = (at + 1) * stride + furthest_end * columns_ >= head_begins_[y];
        const bool long_enough = best.length >= least_length * rows_;
        const bool level = best.level > most_level * best.length;
        if (!ends_at_head || !long_enough || level || best.worth <= most_) return;
        most_ = best.worth;
        end_ = {at, y, rise};
    }

    Joint best_before(int at, int y, int rise) {
        Joint best;
        for (int before = 0; before < rises; ++before) {
            const Joint& other = joint(at, y, before);
            const auto worth =
                static_cast<float>(other.worth - for_a_bend * std::abs(rise - before));
            if (other.length == 0 || worth <= best.worth) continue;
            best = {worth, before, other.level, other.length};
        }
        return best;
    }

    std::vector<cv::Point2d> followed_back() {
        std::vector<cv::Point2d> line;
        for (Place place = end_; place.at > 0 && place.rise >= 0;) {
            for (int step = 0; step < stride; ++step) {
                line.emplace_back(place.at * stride - step + 0.5,
                                  place.y + 1.0 * place.rise * step / stride + 0.5);
            }
            place = {place.at - 1, place.y + place.rise,
                     joint(place.at, place.y, place.rise).before};
        }
        std::ranges::reverse(line);
        return line;
    }

    const Slopes& slopes_;
    int rows_;
    int columns_;
    int joints_count_;
    int top_ = 0;
    cv::Mat cover_;
    std::vector<int> head_begins_;  // in each row, the first column of the head
    std::vector<Joint> joints_;
    float most_ = 0;
    Place end_;
};

}  // namespace

std::vector<cv::Point2d> shoulder_line(const Slopes& slopes, const cv::Mat& shape,
                                       PictureSide side) {
    if (side == PictureSide::left) return Walk(slopes, shape).line();
    Slopes flipped;
    cv::Mat flipped_shape;
    cv::flip(slopes.cosine, flipped.cosine, 1);
    cv::flip(-slopes.sine, flipped.sine, 1);
    cv::flip(shape, flipped_shape, 1);
    std::vector<cv::Point2d> line = Walk(flipped, flipped_shape).line();
    for (cv::Point2d& point : line) point.x = shape.cols - point.x;
    return line;
}

}  // namespace quarterturn
