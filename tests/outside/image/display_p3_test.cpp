// A sheet of colour patches tagged Display P3, as phones tag their photos, comes out as the sRGB
// colours that it stands for. The truth is worked out here with the standards' own matrices, not
// with the library that converts.

#include <gtest/gtest.h>
#include <lcms2.h>

#include <cmath>

#include "indexer/image/colour.h"
#include "indexer/image/decode.h"
#include "indexer/image/profile.h"
#include "tests/support/command.h"
#include "tests/support/display_p3.h"
#include "tests/support/files.h"
#include "tests/support/heif_writer.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// SMPTE EG 432-1 primaries with the white of D65 and the sRGB curve.
std::vector<std::byte> display_p3() {
    return make_profile({0.3127, 0.3290}, {0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060});
}

std::vector<std::byte> profile_bytes(cmsHPROFILE profile) {
    cmsUInt32Number length = 0;
    cmsSaveProfileToMem(profile, nullptr, &length);
    std::vector<std::byte> bytes(length);
    cmsSaveProfileToMem(profile, bytes.data(), &length);
    cmsCloseProfile(profile);
    return bytes;
}

// Hair from black to platinum and copper, skin, and the corners of sRGB.
const std::vector<Rgb> patches{{24, 18, 15},    {59, 40, 28},    {98, 66, 42},  {141, 98, 60},
                               {190, 150, 100}, {232, 212, 178}, {150, 66, 34}, {196, 104, 58},
                               {230, 190, 170}, {120, 80, 60},   {255, 0, 0},   {0, 255, 0},
                               {0, 0, 255},     {255, 255, 255}, {0, 0, 0},     {128, 128, 128}};
constexpr int patch = 32;

cv::Mat sheet_in_p3() {
    cv::Mat bgr(4 * patch, 4 * patch, CV_8UC3);
    for (int i = 0; i < 16; ++i) {
        const Rgb p3 = p3_of_srgb(patches[static_cast<std::size_t>(i)]);
        bgr({i % 4 * patch, i / 4 * patch, patch, patch}).setTo(cv::Scalar(p3[2], p3[1], p3[0]));
    }
    return bgr;
}

void expect_true_colours(const Decoded& decoded) {
    ASSERT_EQ(decoded.refused, "");
    for (int i = 0; i < 16; ++i) {
        const auto found =
            decoded.bgr.at<cv::Vec3b>(i / 4 * patch + patch / 2, i % 4 * patch + patch / 2);
        const auto& truth = patches[static_cast<std::size_t>(i)];
        EXPECT_LT(
            colour_difference(lab_of_srgb({found[2], found[1], found[0]}), lab_of_srgb(truth)), 2)
            << "patch " << i << " came out as " << int{found[2]} << ", " << int{found[1]} << ", "
            << int{found[0]};
    }
}

// exiftool writes the profile where the format keeps it: APP2, iCCP, tag 34675, or the ICCP chunk.
std::vector<std::byte> with_profile(const cv::Mat& picture, const std::string& ending,
                                    std::span<const std::byte> icc) {
    const TemporaryFolder folder;
    const auto file = folder / ("sheet" + ending);
    std::vector<int> wishes;
    if (ending == ".jpg") wishes = {cv::IMWRITE_JPEG_QUALITY, 98};
    if (ending == ".webp") wishes = {cv::IMWRITE_WEBP_QUALITY, 101};
    write_bytes(file, encoded(picture, ending, wishes));
    write_bytes(folder / "p3.icc", icc);
    if (ending == ".webp") {
        output_of("convert " + shell_word(file.string()) + " -profile " +
                  shell_word(folder / "p3.icc") + " -define webp:lossless=true " +
                  shell_word(file.string()));
    } else {
        output_of("exiftool -q -overwrite_original '-ICC_Profile<=" + (folder / "p3.icc").string() +
                  "' " + shell_word(file.string()));
    }
    return read_bytes(file);
}

TEST(DisplayP3, sheets_of_every_kind_land_on_their_srgb_truth) {
    for (const std::string ending : {".jpg", ".png", ".tif", ".webp"}) {
        SCOPED_TRACE(ending);
        const auto file = with_profile(sheet_in_p3(), ending, display_p3());
        expect_true_colours(make_local_decoder()->decode({file, 1, 0}));
    }
    SCOPED_TRACE(".heic");
    expect_true_colours(
        make_local_decoder()->decode({heic_of(sheet_in_p3(), {.icc = display_p3()}), 1, 0}));
}

// ISO/IEC 23091-2: colour primaries 12 are those of Display P3, transfer 13 is the sRGB curve.
TEST(DisplayP3, named_by_number_instead_of_a_profile_counts_as_well) {
    const auto file = heic_of(sheet_in_p3(), {.colour_primaries = 12});
    expect_true_colours(make_local_decoder()->decode({file, 1, 0}));
}

TEST(DisplayP3, would_be_seen_if_it_were_taken_for_srgb) {
    const Decoded plain = make_local_decoder()->decode({encoded(sheet_in_p3(), ".png"), 1, 0});
    const auto red = plain.bgr.at<cv::Vec3b>(2 * patch + patch / 2, 2 * patch + patch / 2);
    EXPECT_GT(colour_difference(lab_of_srgb({red[2], red[1], red[0]}), lab_of_srgb({255, 0, 0})),
              4);
}

TEST(Profile, of_srgb_itself_changes_no_pixel) {
    const auto srgb = profile_bytes(cmsCreate_sRGBProfile());
    cv::Mat noise(64, 64, CV_8UC3);
    cv::RNG(5).fill(noise, cv::RNG::UNIFORM, 0, 256);
    const Decoded decoded = make_local_decoder()->decode({with_profile(noise, ".png", srgb), 1, 0});
    ASSERT_EQ(decoded.refused, "");
    EXPECT_EQ(cv::norm(decoded.bgr, noise, cv::NORM_INF), 0);
}

TEST(Profile, that_is_damaged_or_of_another_kind_is_left_aside) {
    const cv::Mat sheet = sheet_in_p3();
    auto icc = display_p3();
    icc.resize(icc.size() / 2);
    EXPECT_EQ(cv::norm(to_srgb(sheet, icc), sheet, cv::NORM_INF), 0);
    cmsToneCurve* gamma = cmsBuildGamma(nullptr, 2.2);
    const cmsCIExyY white{0.3127, 0.3290, 1};
    const auto grey = profile_bytes(cmsCreateGrayProfile(&white, gamma));
    cmsFreeToneCurve(gamma);
    const cv::Mat inks(8, 8, CV_8UC4, cv::Scalar(0, 0, 0, 0));
    EXPECT_EQ(to_srgb(inks, grey).at<cv::Vec3b>(4, 4), cv::Vec3b(255, 255, 255));
}

TEST(Profile, of_grey_pictures_is_followed) {
    cmsToneCurve* steep = cmsBuildGamma(nullptr, 4.0);
    const cmsCIExyY white{0.3127, 0.3290, 1};
    const auto icc = profile_bytes(cmsCreateGrayProfile(&white, steep));
    cmsFreeToneCurve(steep);
    const cv::Mat grey(8, 8, CV_8UC1, cv::Scalar(128));
    const int expected = static_cast<int>(std::lround(255 * to_curve(std::pow(128 / 255.0, 4))));
    EXPECT_NEAR(to_srgb(grey, icc).at<cv::Vec3b>(4, 4)[1], expected, 2);
}

// ImageMagick writes CMYK JPEGs as Adobe's programs do, upside down.
TEST(Cmyk, jpegs_show_the_colours_that_were_printed) {
    const TemporaryFolder folder;
    const auto png = folder / "quarters.png";
    const auto jpeg = folder / "quarters.jpg";
    write_bytes(png, encoded(four_quarters(64, 48), ".png"));
    output_of("convert " + shell_word(png.string()) + " -colorspace CMYK -quality 98 " +
              shell_word(jpeg.string()));
    const Decoded decoded = make_local_decoder()->decode({read_bytes(jpeg), 1, 0});
    ASSERT_EQ(decoded.refused, "");
    EXPECT_LE(cv::norm(decoded.bgr.at<cv::Vec3b>(12, 16), cv::Vec3b(0, 0, 255), cv::NORM_INF), 8);
    EXPECT_LE(cv::norm(decoded.bgr.at<cv::Vec3b>(12, 48), cv::Vec3b(0, 255, 0), cv::NORM_INF), 8);
    EXPECT_LE(cv::norm(decoded.bgr.at<cv::Vec3b>(36, 16), cv::Vec3b(255, 0, 0), cv::NORM_INF), 8);
    EXPECT_LE(cv::norm(decoded.bgr.at<cv::Vec3b>(36, 48), cv::Vec3b(255, 255, 255), cv::NORM_INF),
              8);
}

}  // namespace
}  // namespace quarterturn
