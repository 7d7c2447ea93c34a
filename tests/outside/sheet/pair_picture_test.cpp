// The picture of a pair as ImageMagick sees it: its size, its colour profile, the divide between
// the photos, and a disc that stays a disc.

#include "indexer/sheet/pair_picture.h"

#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/imgproc.hpp>
#include <sstream>

#include "indexer/image/encode.h"
#include "indexer/image/head.h"
#include "indexer/image/light_difference.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

constexpr int grey = 120;

// A red disc where the head is, on a grey wall; its middle and radius in pixels.
cv::Mat disc_picture(cv::Size size, cv::Point middle, int radius, int wall = grey) {
    cv::Mat picture(size, CV_8UC3, cv::Scalar::all(wall));
    cv::circle(picture, middle, radius, {20, 20, 220}, cv::FILLED, cv::LINE_AA);
    return picture;
}

class PairPictureTest : public testing::Test, public ExampleLibrary {
  protected:
    // She has shown that the head reaches from the top of the disc to its lowest point.
    Photo add(const std::string& name, const cv::Mat& picture, cv::Point middle, int radius) {
        Photo photo = example_photo(name);
        photo.file.orientation = 1;
        const auto bytes = jpeg_bytes(picture, 98);
        photo.file.sha256 = sha256(std::span<const std::byte>(bytes));
        photo.tags.angle = Angle::back;
        photo.id = library.photos().add(photo);
        const Path file = library.photo_file(photo);
        std::filesystem::create_directories(file.parent_path());
        library.disk().write_new(file, bytes);
        const double x = 1.0 * middle.x / picture.cols;
        library.head_points().set(photo.id, {{x, 1.0 * (middle.y - radius) / picture.rows},
                                             {x, 1.0 * (middle.y + radius) / picture.rows}});
        return photo;
    }

    PairPicture drawn(const PairPictureWish& wish, const Path& file) {
        HeadFinder finder;
        const auto ruler = make_text_ruler();
        PairPicture picture = pair_picture(library, *decoder, finder, *ruler, before, after, wish);
        EXPECT_EQ(picture.refused, "");
        EXPECT_EQ(write_pictures(picture.document, *decoder, library.disk(), file).problems,
                  std::vector<std::string>{});
        return picture;
    }

    static std::string asked(const std::string& question, const Path& file) {
        return output_of("identify -format " + shell_word(question) + " " +
                         shell_word(file.string()));
    }

    // The smallest box round what is red in a part of the picture, as ImageMagick trims it.
    static cv::Size red_in(const Path& file, const std::string& part) {
        std::istringstream answer(
            output_of("convert " + shell_word(file.string()) + " -crop " + part +
                      " +repage -channel RG -separate +channel -compose difference -composite "
                      "-threshold 30% -trim -format '%w %h' info:"));
        cv::Size size;
        answer >> size.width >> size.height;
        return size;
    }

    std::unique_ptr<Decoder> decoder = make_confined_decoder();
    Photo before =
        add("QTA_0001.jpg", disc_picture({1500, 2000}, {700, 700}, 400), {700, 700}, 400);
    Photo after = add("QTA_0002.jpg", disc_picture({1600, 1600}, {860, 800}, 300), {860, 800}, 300);
};

TEST_F(PairPictureTest, HasTheSizeOfItsShapeAndSaysThatItIsSrgb) {
    for (const PictureShape shape : all_picture_shapes) {
        const Path file = folder / "pair.jpg";
        drawn({.shape = shape, .business_line = "Pins and Paper", .caption = "Before and after"},
              file);
        const cv::Size size = picture_pixels(shape);
        EXPECT_EQ(
            asked("%m %wx%h %[colorspace]", file),
            "JPEG " + std::to_string(size.width) + "x" + std::to_string(size.height) + " sRGB")
            << word(shape);
        EXPECT_NE(asked("%[profile:icc]", file).find("sRGB"), std::string::npos) << word(shape);
    }
    EXPECT_EQ(asked("%x", folder / "pair.jpg"), "300") << "A5 comes out at its size in print";
}

TEST_F(PairPictureTest, KeepsADiscADiscEquallyLargeInBoth) {
    const Path file = folder / "pair.jpg";
    drawn({.shape = PictureShape::square}, file);
    const cv::Size left = red_in(file, "1074x2160+0+0");
    const cv::Size right = red_in(file, "1074x2160+1086+0");
    EXPECT_GT(left.width, 500);
    EXPECT_NEAR(left.width, left.height, 4);
    EXPECT_NEAR(right.width, right.height, 4);
    EXPECT_NEAR(left.height, right.height, 6);
}

// What is blue is no more than the grey wall is; the page is white.
TEST_F(PairPictureTest, LeavesNoCornerOfPaperWhereThePhotoIsTurned) {
    const cv::Point middle{860, 800};
    const cv::Mat picture = disc_picture({1600, 1600}, middle, 300, 164);
    after = add("QTA_0004.jpg", picture, middle, 300);
    const double lean = 40.0 / picture.cols;  // of 600 pixels: some eight degrees for both points
    library.head_points().set(after.id, {{0.5375 + lean, 0.3125}, {0.5375 - lean, 0.6875}});
    const Path file = folder / "turned.jpg";
    const PairPicture turned = drawn({}, file);
    EXPECT_NE(turned.done.back().find("turned by 7.6°"), std::string::npos) << turned.done.back();
    for (const std::string part : {"1070x2160+0+0", "1070x2160+1090+0"}) {
        const double brightest =
            std::stod(output_of("convert " + shell_word(file.string()) + " -crop " + part +
                                " +repage -channel B -separate -format '%[fx:255*maxima]' info:"));
        EXPECT_LT(brightest, 200) << part;
    }
}

TEST_F(PairPictureTest, HasAWhiteDivideBetweenTheTwo) {
    const auto mean = [](const Path& file, const std::string& part) {
        return std::stod(output_of("convert " + shell_word(file.string()) + " -crop " + part +
                                   " -format '%[fx:255*mean]' info:"));
    };
    const Path beside = folder / "beside.jpg";
    drawn({}, beside);
    EXPECT_GT(mean(beside, "8x2160+1076+0"), 250);
    EXPECT_LT(mean(beside, "40x1000+1000+20"), 200);
    const Path above = folder / "above.jpg";
    drawn({.shape = PictureShape::nine_to_sixteen, .one_above_other = true}, above);
    EXPECT_GT(mean(above, "2160x8+0+1916"), 250);
    EXPECT_LT(mean(above, "1000x40+20+1860"), 200);
}

TEST_F(PairPictureTest, LightsTheSecondAsTheFirstOnlyWhenAsked) {
    after = add("QTA_0003.jpg", disc_picture({1500, 2000}, {700, 700}, 400, 164), {700, 700}, 400);
    const auto wall = [](const Path& file) {
        return std::stod(output_of("convert " + shell_word(file.string()) +
                                   " -crop 40x40+1100+40 -format '%[fx:255*mean]' info:"));
    };
    const Path plain = folder / "plain.jpg";
    EXPECT_EQ(drawn({}, plain).done.size(), 1U);
    EXPECT_NEAR(wall(plain), 164, 2);
    const Path even = folder / "even.jpg";
    const PairPicture picture = drawn({.even_light = true}, even);
    EXPECT_NE(picture.done.back().find("1.0 EV darker"), std::string::npos) << picture.done.back();
    EXPECT_NEAR(wall(even), grey, 2);
}

TEST_F(PairPictureTest, SaysThatBothAreEquallyBrightWhereTheyAre) {
    const std::string words = drawn({.even_light = true}, folder / "even.jpg").done.back();
    EXPECT_NE(words.find("equally bright"), std::string::npos) << words;
    EXPECT_EQ(words.find("0.0"), std::string::npos) << words;
}

TEST_F(PairPictureTest, SaysWhatWasDoneBehindTheCaption) {
    const PairPicture picture =
        drawn({.caption = "Before and after", .say_what_was_done = true}, folder / "pair.jpg");
    const auto& text = std::get<TextItem>(picture.document.pages.front().items.back());
    EXPECT_EQ(text.text,
              "Before and after\nCropped, and both heads laid equally large in one place. The "
              "second photo is scaled to 107 %.");
}

}  // namespace
}  // namespace quarterturn
