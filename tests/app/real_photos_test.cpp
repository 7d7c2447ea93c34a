// Files straight from real cameras, read by the whole program.

#include "tests/app/program.h"
#include "tests/support/csv.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class RealPhotosTest : public QturnTest {
  protected:
    void SetUp() override {
        SKIP_WITHOUT_REAL_PHOTOS();
        said({"init"});
    }
};

bool is_blank(const std::string& text) {
    return text.find_first_not_of("0: ") == std::string::npos;
}

// "2012:09:29 16:11:25" and "61" as "2012-09-29T16:11:25.61"; nothing for blanks and zeros.
json expected_time(const CsvRow& row) {
    std::string time = row.at("DateTimeOriginal");
    if (is_blank(time)) return nullptr;
    time[4] = time[7] = '-';
    time[10] = 'T';
    const std::string fraction = row.at("SubSecTimeOriginal");
    return fraction.empty() ? time : time + '.' + fraction;
}

// expected.csv is what exiftool 12.57 says of each file. HEIC: the decoder turns the picture by the
// file's own property (ISO/IEC 23008-12), and the sizes that exiftool names are those of before.
TEST_F(RealPhotosTest, GoodOnesSayWhatExiftoolSays) {
    const json report = answer({"import", *real_photos() / "good"});
    std::map<std::string, json> photos;
    const json told = answer({"photos"});
    for (const json& photo : told["photos"]) photos[photo["name"]] = photo;
    std::size_t looked_at = 0;
    for (const CsvRow& row : read_csv(*real_photos() / "expected.csv")) {
        const auto name = std::filesystem::path(row.at("SourceFile")).filename().string();
        if (!std::filesystem::exists(*real_photos() / row.at("SourceFile"))) continue;
        ASSERT_TRUE(photos.contains(name)) << name;
        const json& photo = photos[name];
        EXPECT_EQ(photo["taken"], expected_time(row)) << name;
        const std::string offset = row.at("OffsetTimeOriginal");
        EXPECT_EQ(photo["utc_offset"], offset.empty() ? json() : json(offset)) << name;
        if (!row.at("Model").empty()) {
            const std::string device = photo["device"];
            EXPECT_NE(device.find(row.at("Model")), std::string::npos) << name;
            EXPECT_TRUE(device.starts_with(row.at("Make").substr(0, 4))) << name;
        }
        const bool turned = std::atoi(row.at("Orientation").c_str()) >= 5;
        EXPECT_EQ(photo["width"], std::stoi(row.at(turned ? "ImageHeight" : "ImageWidth"))) << name;
        EXPECT_EQ(photo["height"], std::stoi(row.at(turned ? "ImageWidth" : "ImageHeight")))
            << name;
        ++looked_at;
    }
    EXPECT_EQ(report["imported"], looked_at);
}

TEST_F(RealPhotosTest, EachBrokenOneIsASentenceAndItsNeighbourIsNotLost) {
    std::filesystem::copy(*real_photos() / "broken", folder / "card");
    std::filesystem::copy(*real_photos() / "good" / "Nikon_D40.jpg", folder / "card" / "good.jpg");
    const json report = answer({"import", folder / "card"}, 3);
    std::size_t spoken_of = report["left_alone"].get<std::size_t>() +
                            report["already_here"].get<std::size_t>() +
                            report["imported"].get<std::size_t>() + report["refused"].size();
    EXPECT_EQ(spoken_of, files_in(folder / "card").size());
    bool good_is_there = false;
    const json told = answer({"photos"});
    for (const json& photo : told["photos"]) {
        good_is_there = good_is_there || photo["name"] == "good.jpg";
    }
    EXPECT_TRUE(good_is_there);
    for (const json& refused : report["refused"]) {
        const std::string reason = refused["reason"];
        EXPECT_TRUE(reason.size() > 10 && (reason.ends_with('.') || reason.ends_with('!')))
            << refused;
    }
}

}  // namespace
}  // namespace quarterturn
