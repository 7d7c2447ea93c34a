// Bursts and near duplicates in the demo photos, against what truth.csv says of each.

#include "indexer/rules/burst.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "indexer/image/decode.h"
#include "indexer/image/measure.h"
#include "tests/support/csv.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

const std::string demo_folder = QUARTERTURN_DEMO_PHOTOS;

Photo measured_photo(const CsvRow& truth, std::int64_t number) {
    const auto bytes = read_bytes(demo_folder + "/photos/" + truth.at("file"));
    const auto decoded =
        make_local_decoder()->decode({bytes, std::stoi(truth.at("orientation")), measuring_edge});
    Photo photo;
    photo.id = PhotoId{number};
    photo.file.device = DeviceId{truth.at("device") == "phone" ? 1 : 2};
    photo.moment = parse_local_time(truth.at("true_time"));
    photo.measures = measure(decoded.bgr);
    photo.fingerprint = fingerprint(decoded.bgr);
    return photo;
}

class DemoBursts : public testing::Test {
  protected:
    static void SetUpTestSuite() {
        truth_ = read_csv(demo_folder + "/truth.csv");
        for (const CsvRow& row : truth_) {
            photos_.push_back(measured_photo(row, static_cast<std::int64_t>(photos_.size())));
        }
    }

    static const CsvRow& truth_of(PhotoId id) { return truth_[static_cast<std::size_t>(id.value)]; }

    static inline std::vector<CsvRow> truth_;
    static inline std::vector<Photo> photos_;
};

TEST_F(DemoBursts, AreFoundAndNothingElseIs) {
    std::map<std::string, std::vector<PhotoId>> expected;
    for (const Photo& photo : photos_) {
        const std::string& burst = truth_of(photo.id).at("burst");
        if (!burst.empty()) expected[burst].push_back(photo.id);
    }
    auto found = find_bursts(photos_);
    ASSERT_EQ(found.size(), expected.size());
    for (auto& burst : found) {
        const std::string name = truth_of(burst.front()).at("burst");
        std::sort(burst.begin(), burst.end());
        EXPECT_EQ(burst, expected[name]) << name;
    }
}

TEST_F(DemoBursts, NearDuplicatesAreOfOneShot) {
    const auto groups = find_near_duplicates(photos_);
    EXPECT_FALSE(groups.empty());
    for (const auto& group : groups) {
        const CsvRow& first = truth_of(group.front());
        for (const PhotoId id : group) {
            const CsvRow& row = truth_of(id);
            EXPECT_EQ(row.at("look"), first.at("look")) << row.at("file") << first.at("file");
            EXPECT_EQ(row.at("stage"), first.at("stage")) << row.at("file") << first.at("file");
            EXPECT_EQ(row.at("angle"), first.at("angle")) << row.at("file") << first.at("file");
        }
    }
}

}  // namespace
}  // namespace quarterturn
