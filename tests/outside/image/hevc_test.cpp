// Pixels of HEICs that libx265 encoded (heif-enc), against heif-convert, which has libde265 decode
// them: ITU-T H.265 leaves no decoder a choice.

#include <gtest/gtest.h>

#include "indexer/image/decode.h"
#include "indexer/image/hevc.h"
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

TEST_F(Hevc, ThatIsDamagedIsShownWhereLibde265ShowsAnyOfIt) {
    const auto whole = read_bytes(heic_encoded_with("-q 80"));
    const auto shown = [](const std::vector<std::byte>& file) {
        return make_local_decoder()->decode({file, 1, 0}).ok();
    };
    for (std::size_t at = 20; at < whole.size(); at += at < 1000 ? 7 : 397) {
        SCOPED_TRACE(at);
        auto damaged = whole;
        damaged[at] ^= std::byte{0x5a};
        const bool is_shown = shown(damaged);
        const WithoutLibavcodec by_libde265;
        EXPECT_EQ(is_shown, shown(damaged));
    }
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
