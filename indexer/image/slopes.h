#pragma once
// Which way a picture's brightness and colour change at each place, whatever the light.

#include <opencv2/core.hpp>

namespace quarterturn {

// The direction of the steepest change, its angle doubled (bright on dark counts as dark on bright:
// Bigün and Granlund, 1987), as the cosine and sine of a vector whose length is how much the place
// stands out from those around it, 0 … 1. Both CV_32FC1.
struct Slopes {
    cv::Mat cosine;
    cv::Mat sine;
};

// `bgr`: CV_8UC3, a few hundred pixels high at most.
Slopes slopes_of(const cv::Mat& bgr);

// How far the directions agree where `weight` (CV_32FC1) counts: 1 the same everywhere, about 0
// when one picture says nothing of the other. `onto` lays pixels of `second` upon those of `first`.
double agreement(const Slopes& first, const Slopes& second, const cv::Matx23d& onto,
                 const cv::Mat& weight);

}  // namespace quarterturn
