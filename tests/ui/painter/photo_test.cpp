// Photos as they stand on a page: upright, right way round, the part that was asked for.

#include "indexer/disk/checksum.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

const cv::Scalar red(40, 40, 220), green(60, 180, 60), blue(200, 80, 40), white(250, 250, 250);

struct Corners {
    QColor top_left, top_right, bottom_left, bottom_right;
};

Corners corners_of(const QImage& page, const Box& box) {
    const double near = 0.2;
    const double far = 0.8;
    return {colour_at(page, box.x + near * box.width, box.y + near * box.height),
            colour_at(page, box.x + far * box.width, box.y + near * box.height),
            colour_at(page, box.x + near * box.width, box.y + far * box.height),
            colour_at(page, box.x + far * box.width, box.y + far * box.height)};
}

bool is(const QColor& colour, const cv::Scalar& bgr) {
    return std::abs(colour.blue() - bgr[0]) < 6 && std::abs(colour.green() - bgr[1]) < 6 &&
           std::abs(colour.red() - bgr[2]) < 6;
}

// Red, green / blue, white, wider than high, seen upright.
cv::Mat four_corners() {
    cv::Mat picture = plain({240, 160}, white);
    picture(cv::Rect(0, 0, 120, 80)).setTo(red);
    picture(cv::Rect(120, 0, 120, 80)).setTo(green);
    picture(cv::Rect(0, 80, 120, 80)).setTo(blue);
    return picture;
}

// Where the stored picture's row 0 and column 0 are seen: EXIF 2.32 (CIPA DC-008), tag 0x0112.
cv::Mat stored_as(int orientation, const cv::Mat& upright) {
    const bool sideways = orientation >= 5;
    const int rows = sideways ? upright.cols : upright.rows;
    const int columns = sideways ? upright.rows : upright.cols;
    const bool row_0_at_bottom = orientation == 3 || orientation == 4;
    const bool column_0_at_right = orientation == 2 || orientation == 3;
    const bool row_0_at_right = orientation == 6 || orientation == 7;
    const bool column_0_at_bottom = orientation == 7 || orientation == 8;
    cv::Mat stored(rows, columns, CV_8UC3);
    for (int r = 0; r < rows; ++r) {
        for (int c = 0; c < columns; ++c) {
            int x = column_0_at_right ? columns - 1 - c : c;
            int y = row_0_at_bottom ? rows - 1 - r : r;
            if (sideways) {
                x = row_0_at_right ? rows - 1 - r : r;
                y = column_0_at_bottom ? columns - 1 - c : c;
            }
            stored.at<cv::Vec3b>(r, c) = upright.at<cv::Vec3b>(y, x);
        }
    }
    return stored;
}

class PaintedPhoto : public testing::Test {
  protected:
    PhotoItem photo_of(const cv::Mat& stored, int orientation = 1) {
        PhotoItem item;
        item.box = {10, 10, 30, 20};
        item.file = folder_ / "photo.png";
        item.orientation = orientation;
        write_png(item.file, stored);
        return item;
    }

    TemporaryFolder folder_;
};

TEST_F(PaintedPhoto, AllEightOrientationsStandUpright) {
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const PhotoItem item = photo_of(stored_as(orientation, four_corners()), orientation);
        const Corners seen = corners_of(painted(document_of({item})), item.box);
        EXPECT_TRUE(is(seen.top_left, red)) << "orientation " << orientation;
        EXPECT_TRUE(is(seen.top_right, green)) << "orientation " << orientation;
        EXPECT_TRUE(is(seen.bottom_left, blue)) << "orientation " << orientation;
        EXPECT_TRUE(is(seen.bottom_right, white)) << "orientation " << orientation;
    }
}

TEST_F(PaintedPhoto, AMirroredPhotoIsTurnedTheRightWayRound) {
    PhotoItem item = photo_of(four_corners());
    item.mirrored = true;
    const Corners seen = corners_of(painted(document_of({item})), item.box);
    EXPECT_TRUE(is(seen.top_left, green));
    EXPECT_TRUE(is(seen.top_right, red));
    EXPECT_TRUE(is(seen.bottom_right, blue));
}

TEST_F(PaintedPhoto, ThePartIsThatOfThePictureTheRightWayRound) {
    PhotoItem item = photo_of(four_corners());
    item.part = {0, 0, 0.5, 0.5};
    EXPECT_TRUE(is(corners_of(painted(document_of({item})), item.box).bottom_right, red));
    item.mirrored = true;
    EXPECT_TRUE(is(corners_of(painted(document_of({item})), item.box).bottom_right, green));
}

TEST_F(PaintedPhoto, APartOfOtherProportionsIsCutInTheMiddleAndNotStretched) {
    cv::Mat picture = plain({300, 100}, green);
    picture(cv::Rect(100, 0, 100, 100)).setTo(red);
    PhotoItem item = photo_of(picture);
    item.box = {10, 10, 20, 20};
    const Corners seen = corners_of(painted(document_of({item})), item.box);
    EXPECT_TRUE(is(seen.top_left, red));
    EXPECT_TRUE(is(seen.bottom_right, red));
}

TEST_F(PaintedPhoto, FillsItsBoxAndNothingElse) {
    const PhotoItem item = photo_of(plain({90, 60}, red));
    const QImage page = painted(document_of({item}));
    EXPECT_EQ(page.size(), QSize(709, 591));  // 60 × 50 mm at 300 dots per inch
    for (const double inside : {10.2, 39.8}) EXPECT_TRUE(is(colour_at(page, inside, 20), red));
    for (const double outside : {9.8, 40.2}) {
        EXPECT_EQ(colour_at(page, outside, 20), QColor(Qt::white));
    }
}

class CountingDecoder : public Decoder {
  public:
    Decoded decode(const DecodeRequest& request) override {
        ++calls;
        long_edge = request.long_edge;
        return real->decode(request);
    }

    std::unique_ptr<Decoder> real = make_local_decoder();
    std::atomic<int> calls = 0;
    std::atomic<int> long_edge = 0;
};

TEST_F(PaintedPhoto, IsDecodedNoLargerThanItIsDrawn) {
    CountingDecoder decoder;
    PhotoItem item = photo_of(plain({900, 600}, red));
    write_pdf(document_of({item}), decoder, real_file_system(), folder_ / "a.pdf");
    EXPECT_EQ(decoder.long_edge, 354);  // 30 mm at 300 dots per inch
    item.part = {0.25, 0.25, 0.5, 0.5};
    write_pdf(document_of({item}), decoder, real_file_system(), folder_ / "b.pdf");
    EXPECT_EQ(decoder.long_edge, 708);
}

TEST_F(PaintedPhoto, WhatLayingOutHasDecodedIsNotDecodedAgainUnlessItIsTooSmall) {
    CountingDecoder decoder;
    PhotoItem item = photo_of(plain({900, 600}, red));
    item.picture = plain({360, 240}, blue);
    write_pictures(document_of({item}), decoder, real_file_system(), folder_ / "a.png");
    EXPECT_EQ(decoder.calls, 0);
    item.picture = plain({90, 60}, blue);
    write_pictures(document_of({item}), decoder, real_file_system(), folder_ / "a.png");
    EXPECT_EQ(decoder.calls, 1);
}

TEST_F(PaintedPhoto, AFileThatNoLongerHoldsThePhotoIsNotShown) {
    const auto decoder = make_local_decoder();
    PhotoItem item = photo_of(plain({90, 60}, red));
    item.sha256 = sha256(real_file_system().read(item.file, 1'000'000));
    const auto problems = [&] {
        return write_pictures(document_of({item}), *decoder, real_file_system(), folder_ / "a.png")
            .problems;
    };
    EXPECT_TRUE(problems().empty());
    std::filesystem::remove(item.file);
    write_png(item.file, plain({90, 60}, blue));
    ASSERT_EQ(problems().size(), 1U);
    EXPECT_TRUE(problems()[0].starts_with(item.file.string()));
}

TEST_F(PaintedPhoto, ASmallerCopyIsDrawnWhereItHasPixelsEnough) {
    CountingDecoder decoder;
    PhotoItem item = photo_of(plain({900, 600}, red));
    item.small_file = folder_ / "small.png";
    for (const cv::Size& size : {cv::Size{360, 240}, cv::Size{90, 60}}) {
        std::filesystem::remove(item.small_file);
        write_png(item.small_file, plain(size, blue));
        write_pictures(document_of({item}), decoder, real_file_system(), folder_ / "a.png");
    }
    EXPECT_EQ(decoder.calls, 1 + 2);  // too small the second time: the photo itself is drawn
    std::filesystem::remove(item.small_file);
    const Written written =
        write_pictures(document_of({item}), decoder, real_file_system(), folder_ / "a.png");
    EXPECT_TRUE(written.problems.empty());
}

TEST_F(PaintedPhoto, APhotoThatIsGoneOrBrokenLeavesAFrameAndTheRestIsDrawn) {
    const PhotoItem good = photo_of(plain({90, 60}, red));
    PhotoItem gone = good;
    gone.box = {10, 32, 14, 14};
    gone.file = folder_ / "gone.jpg";
    PhotoItem broken = gone;
    broken.box.x = 26;
    broken.file = folder_ / "broken.jpg";
    const std::string junk = "no picture at all";
    real_file_system().write_new(broken.file, std::as_bytes(std::span(junk)));

    const auto decoder = make_local_decoder();
    const Written written = write_pictures(document_of({gone, good, broken}), *decoder,
                                           real_file_system(), folder_ / "page.png");
    ASSERT_EQ(written.problems.size(), 2U);
    EXPECT_NE(written.problems[0].find("gone.jpg is not shown. "), std::string::npos);
    EXPECT_NE(written.problems[1].find("broken.jpg is not shown. "), std::string::npos);
    const QImage page(QString::fromStdString((folder_ / "page.png").string()));
    EXPECT_TRUE(is(colour_at(page, 20, 20), red));
    EXPECT_TRUE(has_ink(page, pixels(gone.box)));
    EXPECT_TRUE(has_ink(page, pixels(broken.box)));
}

}  // namespace
}  // namespace quarterturn
