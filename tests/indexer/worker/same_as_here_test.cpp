// What a worker answers is what this process would have found, bit for bit.

#include <thread>

#include "indexer/parts/part.h"
#include "indexer/worker/confined.h"
#include "indexer/worker/packed_metadata.h"
#include "indexer/worker/photo_decoder.h"
#include "indexer/worker/workers.h"
#include "tests/support/files.h"
#include "tests/support/heif_writer.h"
#include "tests/support/test_pictures.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

void expect_same_picture(const Decoded& found, const Decoded& expected) {
    EXPECT_EQ(found.refused, expected.refused);
    EXPECT_EQ(found.full_width, expected.full_width);
    EXPECT_EQ(found.full_height, expected.full_height);
    EXPECT_EQ(found.orientation_applied, expected.orientation_applied);
    ASSERT_EQ(found.bgr.size(), expected.bgr.size());
    ASSERT_EQ(found.bgr.type(), expected.bgr.type());
    if (expected.bgr.empty()) return;
    EXPECT_EQ(cv::norm(found.bgr, expected.bgr, cv::NORM_INF), 0);
}

void expect_same(std::span<const std::byte> photo, std::initializer_list<int> long_edges) {
    const FileMetadata expected = read_metadata(photo);
    EXPECT_EQ(packed(read_metadata_confined(photo)), packed(expected));
    const auto here = make_local_decoder();
    for (const int long_edge : long_edges) {
        const DecodeRequest request{photo, expected.orientation, long_edge};
        const Decoded decoded = PhotoDecoder{*here}.decode(request);
        expect_same_picture(make_confined_decoder()->decode(request), decoded);
        expect_same_picture(make_quick_decoder()->decode(request), decoded);
    }
}

void expect_same_of_all_in(const std::filesystem::path& folder) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file()) continue;
        SCOPED_TRACE(entry.path().string());
        expect_same(read_bytes(entry.path()), {512});
    }
}

TEST(Confined, SeesInDemoPhotosWhatIsThere) {
    expect_same_of_all_in(std::filesystem::path(QUARTERTURN_DEMO_PHOTOS) / "photos");
}

TEST(Confined, SeesInPhotosOfRealCamerasWhatIsThere) {
    SKIP_WITHOUT_REAL_PHOTOS();
    for (const char* kind : {"good", "broken"}) expect_same_of_all_in(*real_photos() / kind);
}

TEST(Confined, OpensEveryKindOfFile) {
    const cv::Mat picture = four_quarters(96, 64);
    for (const auto& file :
         {encoded(picture, ".jpg"), encoded(picture, ".png"), encoded(picture, ".tif"),
          encoded(picture, ".webp"), heic_of(picture, {.orientation = 6}),
          tiny_raw(encoded(picture, ".jpg")), std::vector<std::byte>{}}) {
        expect_same(file, {16, 0});
    }
    EXPECT_TRUE(make_confined_decoder()->decode({tiny_raw(encoded(picture, ".jpg"))}).ok());
}

TEST(Confined, SeesInSeveralAtOnceWhatItSeesInEach) {
    std::vector<std::vector<std::byte>> files{{}};
    for (const char* name : {"good", "broken"}) {
        if (!real_photos()) break;
        for (const auto& entry : std::filesystem::directory_iterator(*real_photos() / name)) {
            if (entry.is_regular_file()) files.push_back(read_bytes(entry.path()));
        }
    }
    files.push_back(encoded(four_quarters(96, 64), ".jpg"));
    const std::vector<std::span<const std::byte>> photos(files.begin(), files.end());
    const auto all = read_metadata_confined(photos);
    ASSERT_EQ(all.size(), files.size());
    for (std::size_t i = 0; i < files.size(); ++i) {
        EXPECT_EQ(packed(all[i]), packed(read_metadata(files[i]))) << i;
    }
}

TEST(Confined, APictureStaysWhenTheWorkersHaveGoneOnAndCanBeDrawnUpon) {
    const auto decoder = make_confined_decoder();
    cv::Mat first = decoder->decode({encoded(four_quarters(96, 64), ".png")}).bgr;
    const cv::Mat copy = first.clone();
    for (int i = 0; i < 4; ++i) decoder->decode({encoded(four_quarters(640, 480), ".png")});
    EXPECT_EQ(cv::norm(first, copy, cv::NORM_INF), 0);
    first.setTo(cv::Scalar{1, 2, 3});
    EXPECT_EQ(first.at<cv::Vec3b>(0, 0), cv::Vec3b(1, 2, 3));
    const cv::Mat part = first(cv::Rect{2, 2, 5, 5});
    first.release();
    EXPECT_EQ(part.at<cv::Vec3b>(4, 4), cv::Vec3b(1, 2, 3));
}

// A picture of tiles that leaves most of what it claims to be empty (made with libx265).
TEST(Confined, APhotoWithAGapShowsNothingThereOfThePhotosBefore) {
#ifdef QUARTERTURN_SANITIZED
    GTEST_SKIP() << "True of what is shipped; the sanitizer has a memory of its own.";
#endif
    const auto with_a_gap =
        read_bytes(QUARTERTURN_SOURCE "/tests/indexer/worker/grid_with_a_gap.heic");
    const auto opened_by = [&](Workers& workers) { return workers.decode({with_a_gap, 1, 0}).bgr; };
    const std::filesystem::path program = beside_program("quarterturn-heif-decoder");
    Workers fresh{program, {}, 1};
    Workers used{program, {}, 1};
    for (const int edge : {512, 500, 640}) {
        ASSERT_TRUE(used.decode({heic_of(four_quarters(edge, edge)), 1, 0}).ok());
    }
    const cv::Mat expected = opened_by(fresh);
    const cv::Mat found = opened_by(used);
    ASSERT_EQ(found.size(), cv::Size(512, 512));
    EXPECT_EQ(cv::norm(found, expected, cv::NORM_INF), 0);
    EXPECT_EQ(cv::norm(found.at<cv::Vec3b>(300, 300), found.at<cv::Vec3b>(500, 200)), 0) << "empty";
}

RC_GTEST_PROP(PackedMetadata, IsTheSameWhenUnpacked,
              (std::string make, std::string model, std::string serial,
               std::vector<std::string> keywords, std::int64_t moment, bool has_time,
               bool has_offset)) {
    FileMetadata metadata;
    metadata.make = make;
    metadata.model = model;
    metadata.serial = serial;
    metadata.keywords = keywords;
    metadata.orientation = *rc::gen::inRange(1, 9);
    metadata.width = *rc::gen::inRange(0, 50'000);
    if (has_time) {
        CaptureTime taken{
            LocalTime{std::chrono::nanoseconds{moment}}, *rc::gen::inRange(0, 10), {}};
        if (has_offset) taken.utc_offset = std::chrono::minutes{*rc::gen::inRange(-840, 841)};
        metadata.taken = taken;
    }
    const auto again = unpacked(packed(metadata));
    RC_ASSERT(again.has_value());
    RC_ASSERT(again->taken == metadata.taken);
    RC_ASSERT(again->make == make && again->model == model && again->serial == serial);
    RC_ASSERT(again->keywords == keywords);
    RC_ASSERT(again->orientation == metadata.orientation && again->width == metadata.width);
}

RC_GTEST_PROP(PackedMetadata, CutOrLengthenedIsNone, (std::vector<std::string> keywords)) {
    FileMetadata metadata;
    metadata.keywords = keywords;
    std::vector<std::byte> bytes = packed(metadata);
    bytes.push_back(std::byte{0});
    RC_ASSERT(!unpacked(bytes).has_value());
    bytes.resize(*rc::gen::inRange<std::size_t>(0, bytes.size() - 1));
    RC_ASSERT(!unpacked(bytes).has_value());
}

}  // namespace
}  // namespace quarterturn
