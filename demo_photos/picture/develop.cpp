#include "demo_photos/picture/develop.h"

#include "demo_photos/shape/noise.h"

#include <opencv2/imgproc.hpp>

namespace quarterturn::demo {

namespace {

/// IEC 61966-2-1, shared by sRGB and Display P3.
float encode(float v) {
    return v <= 0.0031308F ? 12.92F * v : 1.055F * std::pow(v, 1.0F / 2.4F) - 0.055F;
}

/// Straight in the shadows, rolled off towards white.
float film(float v) {
    constexpr float knee = 0.55F;
    if (v < knee) {
        return v;
    }
    return knee + (1.0F - knee) * (1.0F - std::exp(-(v - knee) / (1.0F - knee)));
}

cv::Mat disc(int radius) {
    cv::Mat kernel = cv::Mat::zeros(2 * radius + 1, 2 * radius + 1, CV_32F);
    cv::circle(kernel, {radius, radius}, radius, cv::Scalar(1), cv::FILLED, cv::LINE_8);
    return kernel / cv::sum(kernel)[0];
}

cv::Mat trail(float reach, std::uint32_t seed) {
    const int half = static_cast<int>(reach * 0.5F) + 2;
    cv::Mat kernel = cv::Mat::zeros(2 * half + 1, 2 * half + 1, CV_32F);
    const float angle = degrees(12.0F + 40.0F * hash_unit(seed, 5));
    for (int i = -200; i <= 200; ++i) {
        const float t = static_cast<float>(i) / 200.0F;
        const float x = 0.5F * reach * t * std::cos(angle);
        const float y = 0.5F * reach * t * std::sin(angle) + 0.06F * reach * t * t;
        const int px = static_cast<int>(std::lround(x)) + half;
        const int py = std::clamp(static_cast<int>(std::lround(y)) + half, 0, kernel.rows - 1);
        kernel.at<float>(py, px) += 1.0F;
    }
    return kernel / cv::sum(kernel)[0];
}

}  // namespace

cv::Mat develop(const cv::Mat& linear, const Develop& how) {
    cv::Mat light = linear.clone();
    const float scale = static_cast<float>(std::max(linear.rows, linear.cols)) / 2000.0F;
    float exposure = how.exposure_ev;
    float grain = how.grain;
    switch (how.flaw) {
        case Flaw::none:
            break;
        case Flaw::out_of_focus:
            cv::filter2D(light, light, -1,
                         disc(std::max(2, static_cast<int>(std::lround(17.0F * scale)))), {-1, -1},
                         0, cv::BORDER_REFLECT);
            break;
        case Flaw::moved:
            cv::filter2D(light, light, -1, trail(std::max(5.0F, 58.0F * scale), how.seed), {-1, -1},
                         0, cv::BORDER_REFLECT);
            break;
        case Flaw::too_dark:
            exposure -= 3.6F;
            grain *= 1.4F;
            break;
        case Flaw::blown_out:
            exposure += 2.7F;
            break;
    }
    if (how.softness > 0.0F) {
        cv::GaussianBlur(light, light, {0, 0}, static_cast<double>(how.softness * scale) + 0.01);
    }
    const float gain = std::pow(2.0F, exposure);
    const Vec3 balance{gain * (1.0F + 0.07F * how.warmth), gain,
                       gain * (1.0F - 0.09F * how.warmth)};
    cv::Mat out(light.rows, light.cols, CV_8UC3);
    const bool hard = how.flaw == Flaw::blown_out;
    for (int y = 0; y < out.rows; ++y) {
        for (int x = 0; x < out.cols; ++x) {
            const cv::Vec3f px = light.at<cv::Vec3f>(y, x);
            Vec3 c = Vec3{px[0], px[1], px[2]} * balance;
            if (how.colour == ColourSpace::display_p3) {
                // sRGB to P3 primaries, both D65 (from the published xy coordinates).
                c = {0.8224620F * c.x + 0.1775380F * c.y, 0.0331942F * c.x + 0.9668058F * c.y,
                     0.0170826F * c.x + 0.0723974F * c.y + 0.9105199F * c.z};
            }
            const auto index = static_cast<std::uint32_t>(y * out.cols + x);
            const float speck =
                grain * (hash_unit(index, how.seed) + hash_unit(index, how.seed + 7919U) - 1.0F);
            const auto value = [&](float v) {
                v = std::max(v, 0.0F);
                v = encode(hard ? std::min(v, 1.0F) : film(v)) + speck;
                return cv::saturate_cast<std::uint8_t>(v * 255.0F);
            };
            out.at<cv::Vec3b>(y, x) = {value(c.z), value(c.y), value(c.x)};
        }
    }
    return out;
}

}  // namespace quarterturn::demo
