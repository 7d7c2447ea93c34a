#include "indexer/sheet/phone_page.h"

#include <opencv2/imgcodecs.hpp>

#include "indexer/image/encode.h"
#include "indexer/sheet/phone_pictures.h"
#include "indexer/worker/confined.h"
#include "tests/support/party_of_six.h"

namespace quarterturn {
namespace {

cv::Mat noise(int width, int height) {
    cv::Mat picture(height, width, CV_8UC3);
    cv::setRNGSeed(7);
    cv::randu(picture, cv::Scalar::all(0), cv::Scalar::all(255));
    return picture;
}

Path written_jpeg(const TemporaryFolder& folder, const cv::Mat& picture) {
    write_bytes(folder / "picture.jpg", jpeg_bytes(picture, 90));
    return folder / "picture.jpg";
}

class PhoneBudget : public testing::Test {
  protected:
    PhonePage page(std::size_t most) {
        return phone_page(wedding_board(party.library, party.wedding), party.library, *decoder,
                          at("2026-11-20T18:05"), most);
    }

    TemporaryFolder folder;
    // Nothing is harder to make small than noise.
    PartyOfSix party{{written_jpeg(folder, noise(900, 1200))}};
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

TEST_F(PhoneBudget, IsKeptByMakingPicturesSmaller) {
    const PhonePage large = page(most_phone_bytes);
    EXPECT_LE(large.html.size(), most_phone_bytes);
    EXPECT_EQ(large.problems, std::vector<std::string>{});
    const PhonePage small = page(3'000'000);
    EXPECT_LE(small.html.size(), 3'000'000U);
    EXPECT_EQ(small.problems, std::vector<std::string>{});
    EXPECT_LT(small.html.size(), large.html.size());
}

TEST_F(PhoneBudget, IsToldWhenItCannotBeKept) {
    const PhonePage too_small = page(200'000);
    EXPECT_GT(too_small.html.size(), 200'000U);
    ASSERT_EQ(too_small.problems.size(), 1U);
    EXPECT_NE(too_small.problems[0].find("more than 0.2 MB"), std::string::npos);
    EXPECT_NE(too_small.problems[0].find("write one client at a time"), std::string::npos);
}

TEST_F(PhoneBudget, APhotoThatIsGoneIsToldAndTheRestGoesOn) {
    const Photo gone = party.library.photos().all().front();
    std::filesystem::remove(party.library.photo_file(gone));
    const PhonePage all = page(most_phone_bytes);
    ASSERT_EQ(all.problems.size(), 1U);
    EXPECT_NE(all.problems[0].find("no longer there"), std::string::npos);
    EXPECT_NE(all.html.find("This photo cannot be shown."), std::string::npos);
    EXPECT_EQ(all.html.find("SECRET_NAME"), std::string::npos);
}

TEST(PhonePictures, StandTheRightWayRoundAndUpright) {
    const TemporaryFolder folder;
    cv::Mat picture(600, 800, CV_8UC3, cv::Scalar(200, 30, 30));  // blue
    picture.colRange(0, 400).setTo(cv::Scalar(30, 30, 200));      // red on the left
    SheetPhoto photo;
    photo.item.file = written_jpeg(folder, picture);
    photo.upright = {800, 600};
    photo.item.mirrored = true;
    const auto decoder = make_confined_decoder();
    const PhonePictures made = phone_pictures({photo}, 1'000'000, *decoder, real_file_system());
    ASSERT_TRUE(made.fit);
    const auto& bytes = made.pictures.at(0).jpeg;
    const cv::Mat seen = cv::imdecode(
        cv::Mat(1, static_cast<int>(bytes.size()), CV_8U, const_cast<std::byte*>(bytes.data())),
        cv::IMREAD_COLOR);
    ASSERT_EQ(seen.cols, 800);
    ASSERT_EQ(seen.rows, 600);
    EXPECT_GT(seen.at<cv::Vec3b>(300, 100)[0], 150);  // blue is at the left now
    EXPECT_GT(seen.at<cv::Vec3b>(300, 700)[2], 150);
}

}  // namespace
}  // namespace quarterturn
