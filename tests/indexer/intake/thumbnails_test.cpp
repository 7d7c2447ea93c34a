#include "indexer/intake/thumbnails.h"

#include "indexer/intake/heads.h"
#include "tests/indexer/intake/import_fixture.h"

namespace quarterturn {
namespace {

struct ThumbnailsTest : ImportTest {
    ThumbnailsTest() {
        write_photo(card / "a.jpg", 1, {.orientation = 6, .size = {1600, 1200}});
        write_photo(card / "b.jpg", 2, {.size = {300, 200}});
        bring_in();
    }
    Path small(const std::string& name) {
        return thumbnail_file(library, photo_named(name).file.sha256);
    }
};

TEST_F(ThumbnailsTest, AreMadeAgainWhenTheCacheIsDeleted) {
    const Bytes before = read_bytes(small("a.jpg"));
    std::filesystem::remove_all(library.cache_folder());
    const CacheReport report = rebuild_cache(library, *decoder);
    EXPECT_EQ(report.made, 2);
    EXPECT_TRUE(report.failed.empty());
    EXPECT_FALSE(report.stopped);
    const cv::Mat again = cv::imread(small("a.jpg").string());
    EXPECT_EQ(again.size(), (cv::Size{384, 512}));
    EXPECT_EQ(rebuild_cache(library, *decoder).made, 0);
}

TEST_F(ThumbnailsTest, ShowThePhotoUprightWhetherCachedOrNot) {
    const Decoded kept = thumbnail(library, *decoder, photo_named("a.jpg"));
    std::filesystem::remove(small("a.jpg"));
    const Decoded made = thumbnail(library, *decoder, photo_named("a.jpg"));
    ASSERT_TRUE(kept.ok() && made.ok());
    EXPECT_EQ(kept.bgr.size(), (cv::Size{384, 512}));
    EXPECT_EQ(made.bgr.size(), kept.bgr.size());
    EXPECT_EQ(kept.full_width, 1200);
    EXPECT_EQ(made.full_height, 1600);
    EXPECT_LT(cv::norm(kept.bgr, made.bgr, cv::NORM_L1) / static_cast<double>(made.bgr.total() * 3),
              6);
    EXPECT_TRUE(std::filesystem::exists(small("a.jpg")));
}

TEST_F(ThumbnailsTest, AreMadeAgainWhenDamaged) {
    write_file(small("b.jpg"), "half of it");
    EXPECT_EQ(thumbnail(library, *decoder, photo_named("b.jpg")).bgr.size(), (cv::Size{300, 200}));
}

TEST_F(ThumbnailsTest, SayWhichPhotoCannotBeRead) {
    std::filesystem::remove_all(library.cache_folder());
    std::filesystem::remove(library.photo_file(photo_named("b.jpg")));
    EXPECT_FALSE(thumbnail(library, *decoder, photo_named("b.jpg")).ok());
    const CacheReport report = rebuild_cache(library, *decoder);
    EXPECT_EQ(report.made, 1);
    ASSERT_EQ(report.failed.size(), 1U);
    EXPECT_NE(report.failed[0].find("b.jpg"), std::string::npos);
}

TEST_F(ThumbnailsTest, FacesAreLookedForOnce) {
    std::vector<std::int64_t> done;
    const HeadReport report =
        look_for_heads(library, *decoder, [&](std::int64_t now, std::int64_t total) {
            EXPECT_EQ(total, 2);
            done.push_back(now);
        });
    EXPECT_EQ(report.looked_at, 2);
    EXPECT_EQ(done, (std::vector<std::int64_t>{1, 2}));
    const Photo looked_at = photo_named("a.jpg");
    EXPECT_TRUE(looked_at.head_signs.has_value());
    EXPECT_GT(looked_at.measures.focus, 0);
    EXPECT_EQ(look_for_heads(library, *decoder).looked_at, 0);
}

TEST_F(ThumbnailsTest, ATagThatThePictureSpeaksAgainstMakesAQuestion) {
    Photo photo = photo_named("a.jpg");
    photo.tags.angle = Angle::back;
    photo.head_signs = HeadSigns{.frontal_face = true};
    EXPECT_EQ(tag_questions(std::vector{photo}).at(0).photo, photo.id);
    photo.head_signs = HeadSigns{};
    EXPECT_TRUE(tag_questions(std::vector{photo}).empty());
}

}  // namespace
}  // namespace quarterturn
