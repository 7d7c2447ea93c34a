#include "indexer/image/profile.h"

#include <lcms2.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <list>
#include <memory>
#include <mutex>

namespace quarterturn {
namespace {

struct CloseProfile {
    void operator()(void* profile) const { cmsCloseProfile(profile); }
};
struct DeleteTransform {
    void operator()(void* transform) const { cmsDeleteTransform(transform); }
};
struct FreeCurve {
    void operator()(cmsToneCurve* curve) const { cmsFreeToneCurve(curve); }
};
using Profile = std::unique_ptr<void, CloseProfile>;
using Transform = std::unique_ptr<void, DeleteTransform>;
using Curve = std::unique_ptr<cmsToneCurve, FreeCurve>;

// What a profile comes to: how many channels it takes, and the way to sRGB from there.
struct Conversion {
    int channels = 0;  // 0: the profile is of no use here
    Transform to_bgr;  // nothing: the colours are sRGB already
};

int channels_of(cmsHPROFILE profile) {
    switch (cmsGetColorSpace(profile)) {
        case cmsSigGrayData:
            return 1;
        case cmsSigRgbData:
            return 3;
        case cmsSigCmykData:
            return 4;
        default:
            return 0;
    }
}

cmsUInt32Number pixel_format(int channels) {
    switch (channels) {
        case 1:
            return TYPE_GRAY_8;
        case 3:
            return TYPE_BGR_8;
        default:
            return TYPE_CMYK_8;
    }
}

// Whether no colour of a 6 × 6 × 6 grid moves by more than rounding: an sRGB profile by any name.
bool changes_nothing(cmsHTRANSFORM transform) {
    constexpr int steps = 6;
    constexpr int step = 255 / (steps - 1);
    constexpr int rounding = 1;
    std::array<uchar, steps * steps * steps * 3> before{};
    auto* to = before.data();
    for (int i = 0; i < steps * steps * steps; ++i) {
        *to++ = static_cast<uchar>(i % steps * step);
        *to++ = static_cast<uchar>(i / steps % steps * step);
        *to++ = static_cast<uchar>(i / steps / steps * step);
    }
    auto after = before;
    cmsDoTransform(transform, before.data(), after.data(), steps * steps * steps);
    return std::ranges::equal(before, after,
                              [](int a, int b) { return std::abs(a - b) <= rounding; });
}

Conversion make_conversion(std::span<const std::byte> icc) {
    const Profile from(cmsOpenProfileFromMem(icc.data(), static_cast<cmsUInt32Number>(icc.size())));
    if (!from) return {};
    const Profile srgb(cmsCreate_sRGBProfile());
    const int channels = channels_of(from.get());
    if (channels == 0) return {};
    // Without lcms's one-pixel memory a transform may be shared between threads.
    Transform transform(cmsCreateTransform(from.get(), pixel_format(channels), srgb.get(),
                                           TYPE_BGR_8, INTENT_RELATIVE_COLORIMETRIC,
                                           cmsFLAGS_NOCACHE | cmsFLAGS_BLACKPOINTCOMPENSATION));
    if (!transform) return {};
    if (channels == 3 && changes_nothing(transform.get())) transform.reset();
    return {channels, std::move(transform)};
}

// The conversions made last: the photos of one device all carry the same profile.
class RecentConversions {
  public:
    std::shared_ptr<const Conversion> find_or_make(std::span<const std::byte> icc) {
        const std::scoped_lock lock(mutex_);
        const auto found = std::ranges::find_if(
            recent_, [&](const Entry& entry) { return std::ranges::equal(entry.icc, icc); });
        if (found != recent_.end()) {
            recent_.splice(recent_.begin(), recent_, found);
        } else {
            recent_.push_front({{icc.begin(), icc.end()},
                                std::make_shared<const Conversion>(make_conversion(icc))});
            if (recent_.size() > most_kept) recent_.pop_back();
        }
        return recent_.front().conversion;
    }

  private:
    static constexpr std::size_t most_kept = 8;
    struct Entry {
        std::vector<std::byte> icc;
        std::shared_ptr<const Conversion> conversion;
    };
    std::mutex mutex_;
    std::list<Entry> recent_;
};

std::shared_ptr<const Conversion> conversion_for(std::span<const std::byte> icc) {
    static RecentConversions recent;
    return recent.find_or_make(icc);
}

cv::Mat convert(const cv::Mat& pixels, cmsHTRANSFORM transform) {
    cv::Mat bgr(pixels.size(), CV_8UC3);
    cmsDoTransformLineStride(
        transform, pixels.data, bgr.data, static_cast<cmsUInt32Number>(pixels.cols),
        static_cast<cmsUInt32Number>(pixels.rows), static_cast<cmsUInt32Number>(pixels.step),
        static_cast<cmsUInt32Number>(bgr.step), 0, 0);
    return bgr;
}

cv::Mat bgr_of_inks(const cv::Mat& cmyk) {
    cv::Mat bgr(cmyk.size(), CV_8UC3);
    for (int y = 0; y < cmyk.rows; ++y) {
        const auto* ink = cmyk.ptr<cv::Vec4b>(y);
        auto* light = bgr.ptr<cv::Vec3b>(y);
        for (int x = 0; x < cmyk.cols; ++x) {
            for (int c = 0; c < 3; ++c) {
                light[x][2 - c] =
                    static_cast<uchar>(((255 - ink[x][c]) * (255 - ink[x][3]) + 127) / 255);
            }
        }
    }
    return bgr;
}

cv::Mat as_if_srgb(const cv::Mat& pixels) {
    if (pixels.channels() == 4) return bgr_of_inks(pixels);
    if (pixels.channels() == 3) return pixels;
    cv::Mat bgr;
    cv::merge(std::vector<cv::Mat>(3, pixels), bgr);
    return bgr;
}

// The pixels with as many channels as the profile takes: a grey picture may be stored as BGR with
// a grey profile. Empty when they don't fit each other.
cv::Mat fitted(const cv::Mat& pixels, int channels) {
    if (pixels.channels() == channels) return pixels;
    if (pixels.channels() != 3 || channels != 1) return {};
    cv::Mat grey;
    cv::extractChannel(pixels, grey, 0);
    return grey;
}

// lcms writes the minute at which it makes a profile, and so when a picture was exported. Bytes 24
// to 35 of the header (ICC.1:2022, 7.2.1) are year, month, day, hour, minute and second, two bytes
// each, the higher first; here the beginning of the year of the sRGB standard.
void set_fixed_date(std::vector<std::byte>& icc) {
    constexpr std::size_t date = 24;
    constexpr std::array<unsigned, 6> fixed{1999, 1, 1, 0, 0, 0};
    if (icc.size() < date + 2 * fixed.size()) return;
    for (std::size_t i = 0; i < fixed.size(); ++i) {
        icc[date + 2 * i] = static_cast<std::byte>(fixed[i] >> 8);
        icc[date + 2 * i + 1] = static_cast<std::byte>(fixed[i] & 0xFF);
    }
}

std::vector<std::byte> bytes_of(cmsHPROFILE profile) {
    cmsUInt32Number length = 0;
    if (cmsSaveProfileToMem(profile, nullptr, &length) == 0) return {};
    std::vector<std::byte> bytes(length);
    if (cmsSaveProfileToMem(profile, bytes.data(), &length) == 0) return {};
    set_fixed_date(bytes);
    return bytes;
}

}  // namespace

cv::Mat to_srgb(const cv::Mat& pixels, std::span<const std::byte> icc) {
    if (icc.empty()) return as_if_srgb(pixels);
    const auto conversion = conversion_for(icc);
    if (!conversion->to_bgr) return as_if_srgb(pixels);
    const cv::Mat fitting = fitted(pixels, conversion->channels);
    return fitting.empty() ? as_if_srgb(pixels) : convert(fitting, conversion->to_bgr.get());
}

std::vector<std::byte> srgb_profile() {
    const Profile profile(cmsCreate_sRGBProfile());
    return profile ? bytes_of(profile.get()) : std::vector<std::byte>{};
}

std::vector<std::byte> make_profile(Chromaticity white, Chromaticity red, Chromaticity green,
                                    Chromaticity blue) {
    const cmsCIExyY white_point{white.x, white.y, 1};
    const cmsCIExyYTRIPLE primaries{{red.x, red.y, 1}, {green.x, green.y, 1}, {blue.x, blue.y, 1}};
    // IEC 61966-2-1: the curve's exponent, its scale and offset, and the straight part near black.
    constexpr std::array<cmsFloat64Number, 5> srgb_curve{2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92,
                                                         0.04045};
    constexpr int power_with_straight_start = 4;  // of lcms's parametric curves
    const Curve curve(
        cmsBuildParametricToneCurve(nullptr, power_with_straight_start, srgb_curve.data()));
    if (!curve) return {};
    std::array<cmsToneCurve*, 3> curves{curve.get(), curve.get(), curve.get()};
    const Profile profile(cmsCreateRGBProfile(&white_point, &primaries, curves.data()));
    return profile ? bytes_of(profile.get()) : std::vector<std::byte>{};
}

}  // namespace quarterturn
