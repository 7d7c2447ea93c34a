#include "indexer/image/slopes.h"

#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace quarterturn {

Slopes slopes_of(const cv::Mat& bgr) {
    cv::Mat lab;
    cv::cvtColor(bgr, lab, cv::COLOR_BGR2Lab);
    std::vector<cv::Mat> channels;
    cv::split(lab, channels);
    cv::Mat cosine = cv::Mat::zeros(bgr.size(), CV_32FC1);
    cv::Mat sine = cosine.clone();
    for (cv::Mat& channel : channels) {
        cv::Mat across, down;
        channel.convertTo(channel, CV_32F);
        cv::GaussianBlur(channel, channel, {}, 1);
        cv::Sobel(channel, across, CV_32F, 1, 0);
        cv::Sobel(channel, down, CV_32F, 0, 1);
        cosine += across.mul(across) - down.mul(down);
        sine += 2 * across.mul(down);
    }
    cv::Mat squared, steepness, around;
    cv::magnitude(cosine, sine, squared);
    cv::sqrt(squared, steepness);
    constexpr double neighbourhood = 1.0 / 16;  // of the picture's height
    constexpr double least = 0.5;  // of the mean: grain in smooth places does not stand out
    cv::GaussianBlur(steepness, around, {}, std::max(4.0, bgr.rows * neighbourhood));
    around += least * cv::mean(steepness)[0];
    const cv::Mat length = steepness / (steepness + around);
    const cv::Mat to_length = length / (squared + 1e-6);
    return {cosine.mul(to_length), sine.mul(to_length)};
}

double agreement(const Slopes& first, const Slopes& second, const cv::Matx23d& onto,
                 const cv::Mat& weight) {
    cv::Mat cosine, sine;
    cv::warpAffine(second.cosine, cosine, onto, weight.size());
    cv::warpAffine(second.sine, sine, onto, weight.size());
    // What is turned shows its directions turned as well, the doubled angle twice as far.
    const double turn = 2 * std::atan2(onto(1, 0), onto(0, 0));
    const cv::Mat first_cosine = first.cosine.mul(weight);
    const cv::Mat first_sine = first.sine.mul(weight);
    const double same = first_cosine.dot(cosine) + first_sine.dot(sine);
    const double crossed = first_sine.dot(cosine) - first_cosine.dot(sine);
    const double lengths =
        cv::norm(first_cosine, cv::NORM_L2SQR) + cv::norm(first_sine, cv::NORM_L2SQR);
    const double others =
        cv::norm(cosine.mul(weight), cv::NORM_L2SQR) + cv::norm(sine.mul(weight), cv::NORM_L2SQR);
    return (std::cos(turn) * same + std::sin(turn) * crossed) / std::sqrt(lengths * others + 1e-9);
}

}  // namespace quarterturn
