// Pixels of HEICs that libx265 encoded (heif-enc), against heif-convert, which has libde265 decode
// them: ITU-T H.265 leaves no decoder a choice.

#include <gtest/gtest.h>

#include <algorithm>

#include "indexer/image/decode.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

// Edges that are no multiples of a block's, noise, and every colour.
cv::Mat noisy_colours() {
    cv::Mat picture(217, 333, CV_8UC3);
    cv::RNG noise{20261127};
    for (int y = 0; y < picture.rows; ++y) {
        for (int x = 0; x < picture.cols; ++x) {
            const int grain = noise.uniform(-12, 13);
            picture.at<cv::Vec3b>(y, x) = {cv::saturate_cast<uchar>(x * 255 / picture.cols + grain),
                                           cv::saturate_cast<uchar>(y * 255 / picture.rows - grain),
                                           cv::saturate_cast<uchar>((x ^ y) % 256 + grain)};
        }
    }
    return picture;
}

struct Hevc : testing::TestWithParam<const char*> {
    std::filesystem::path heic_encoded_with(const std::string& options) {
        cv::imwrite((folder / "picture.png").string(), noisy_colours());
        output_of("heif-enc " + options + " -o " + shell_word((folder / "photo.heic").string()) +
                  " " + shell_word((folder / "picture.png").string()) + " 2>&1");
        return folder / "photo.heic";
    }

    static cv::Mat decoded(const std::filesystem::path& photo) {
        return make_local_decoder()->decode({read_bytes(photo), 1, 0}).bgr;
    }

    // Empty where it opens nothing.
    cv::Mat by_libde265(const std::filesystem::path& heic) {
        const auto png = folder / "converted.png";
        output_of("heif-convert " + shell_word(heic.string()) + " " + shell_word(png.string()) +
                  " 2>&1 || true");
        return std::filesystem::exists(png) ? decoded(png) : cv::Mat{};
    }

    void expect_same(const std::filesystem::path& heic) {
        const cv::Mat expected = by_libde265(heic);
        const cv::Mat found = decoded(heic);
        ASSERT_FALSE(expected.empty());
        ASSERT_EQ(found.size(), expected.size());
        EXPECT_EQ(cv::norm(found, expected, cv::NORM_INF), 0);
    }

    TemporaryFolder folder;
};

TEST_P(Hevc, HasThePixelsThatLibde265MakesOfIt) {
    expect_same(heic_encoded_with(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(Options, Hevc,
                         testing::Values("-q 80 -p chroma=420", "-q 80 -p chroma=422",
                                         "-q 80 -p chroma=444", "-q 20", "-b 10 -q 80",
                                         "-b 10 -q 80 -p chroma=444", "-b 12 -q 80",
                                         "-L -p chroma=444", "-p tune=psnr -p preset=slow"));

// Where the units of the picture's data lie: after the box's head, each after its length.
std::vector<std::size_t> units_of(const std::vector<std::byte>& heic) {
    const std::string_view text(reinterpret_cast<const char*>(heic.data()), heic.size());
    std::vector<std::size_t> units;
    for (std::size_t at = text.find("mdat") + 4; at + 4 < heic.size();) {
        std::size_t length = 0;
        for (int i = 0; i < 4; ++i)
            length = length << 8 | std::to_integer<std::size_t>(heic[at + i]);
        units.push_back(at + 4);
        at += 4 + length;
    }
    return units;
}

void set_length(std::vector<std::byte>& heic, std::size_t unit, std::size_t length) {
    for (std::size_t i = 0; i < 4; ++i) {
        heic[unit - 4 + i] = static_cast<std::byte>(length >> (8 * (3 - i)));
    }
}

constexpr std::byte of_no_kind{41 << 1};  // reserved: passed over (ITU-T H.265, table 7-1)

TEST_F(Hevc, OfWhichASliceIsMissingIsRefused) {
    const auto whole = read_bytes(heic_encoded_with("-q 80 -p x265:slices=4"));
    const auto units = units_of(whole);
    ASSERT_GE(units.size(), 4U);
    for (const std::size_t unit : units) {
        SCOPED_TRACE(unit);
        auto damaged = whole;
        damaged[unit] = of_no_kind;
        EXPECT_NE(make_local_decoder()->decode({damaged, 1, 0}).refused, "");
    }
}

// The unit is cut short, and what is left of it is passed over.
TEST_F(Hevc, OfWhichTheRestIsMissingIsRefused) {
    const auto whole = read_bytes(heic_encoded_with("-q 80"));
    const auto units = units_of(whole);
    ASSERT_EQ(units.size(), 1U);
    const std::size_t length = whole.size() - units[0];
    for (std::size_t tenths = 1; tenths < 5; ++tenths) {
        SCOPED_TRACE(tenths);
        auto damaged = whole;
        const std::size_t cut = length * tenths / 10;
        set_length(damaged, units[0], cut);
        set_length(damaged, units[0] + cut + 4, length - cut - 4);
        damaged[units[0] + cut + 4] = of_no_kind;
        EXPECT_NE(make_local_decoder()->decode({damaged, 1, 0}).refused, "");
    }
}

// As where a sector of a card could not be read. 64 bytes are less than any sector.
TEST_F(Hevc, OfWhichAPartIsZerosIsRefused) {
    const auto whole = read_bytes(heic_encoded_with("-q 80"));
    const std::size_t first = units_of(whole).at(0);
    for (std::size_t tenths = 2; tenths < 10; ++tenths) {
        SCOPED_TRACE(tenths);
        auto damaged = whole;
        const std::size_t at = first + (whole.size() - first) * tenths / 10;
        std::fill_n(damaged.begin() + static_cast<long>(at), 64, std::byte{0});
        EXPECT_NE(make_local_decoder()->decode({damaged, 1, 0}).refused, "");
    }
}

TEST_F(Hevc, WhoseSlicesStandInAnotherOrderIsRefused) {
    const auto whole = read_bytes(heic_encoded_with("-q 80 -p x265:slices=4"));
    const auto units = units_of(whole);
    ASSERT_EQ(units.size(), 4U);
    const std::size_t begin = units[0] - 4;
    auto turned = whole;
    std::ranges::rotate(turned.begin() + static_cast<long>(begin),
                        turned.begin() + static_cast<long>(units[2] - 4), turned.end());
    EXPECT_NE(make_local_decoder()->decode({turned, 1, 0}).refused, "");
}

// The file was made by libx265; FFmpeg's hevc_metadata wrote 8 columns at the left and 4 rows at
// the top into its header, to be cut off.
TEST_F(Hevc, IsCroppedAsItsHeaderSaysAlsoAtTheLeft) {
    const auto heic =
        std::filesystem::path(QUARTERTURN_SOURCE) / "tests/outside/image/left_crop.heic";
    EXPECT_EQ(decoded(heic).size(), cv::Size(120, 92));
    expect_same(heic);
}

TEST_F(Hevc, OfRealPhonesHasThePixelsThatLibde265MakesOfIt) {
    SKIP_WITHOUT_REAL_PHOTOS();
    for (const char* name : {"IMG_2927.HEIC", "Issue_487.heic"}) {
        SCOPED_TRACE(name);
        expect_same(*real_photos() / "good" / name);
    }
}

}  // namespace
}  // namespace quarterturn
