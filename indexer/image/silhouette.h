#pragma once
// Head and hair told from the background, for photos where no face shows.

#include <opencv2/core.hpp>
#include <optional>

namespace quarterturn {

// The head with its pinned hair, without hair that hangs and without shoulders, in pixels of `bgr`.
// The background is learnt from the left, right and upper border of the picture (GrabCut: Rother,
// Kolmogorov and Blake, 2004), so the head must stand free of them. Nothing when it does not, or
// when what stands out is no single shape of a head's proportions.
std::optional<cv::Rect> find_silhouette(const cv::Mat& bgr);

// Head, hair and shoulders: 255 (CV_8UC1) where the picture is not background, its long edge
// `long_edge` or the picture's own. Empty of 255 where nothing stands out.
cv::Mat shape_before_background(const cv::Mat& bgr, int long_edge);

}  // namespace quarterturn
