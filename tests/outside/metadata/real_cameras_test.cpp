// Photos straight from cameras and phones, against what exiftool 12.57 says of them (expected.csv).

#include <gtest/gtest.h>

#include "indexer/image/decode.h"
#include "indexer/metadata/read.h"
#include "tests/support/csv.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? ""
                                      : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// exiftool's columns as one ISO 8601 text; "unknown" for blanks and zeros.
std::string expected_time(const CsvRow& row) {
    const std::string& text = row.at("DateTimeOriginal");
    if (text.find_first_of("123456789") == std::string::npos) return "unknown";
    std::string iso = text.substr(0, 4) + "-" + text.substr(5, 2) + "-" + text.substr(8, 2) + "T" +
                      text.substr(11);
    if (!row.at("SubSecTimeOriginal").empty()) iso += "." + row.at("SubSecTimeOriginal");
    return iso + row.at("OffsetTimeOriginal");
}

std::string found_time(const FileMetadata& metadata) {
    if (!metadata.taken) return "unknown";
    std::string iso = iso_text(metadata.taken->local, metadata.taken->fraction_digits);
    if (metadata.taken->utc_offset) iso += offset_text(*metadata.taken->utc_offset);
    return iso;
}

class RealCameras : public testing::Test {
  protected:
    void SetUp() override {
        SKIP_WITHOUT_REAL_PHOTOS();
        rows = read_csv(*real_photos() / "expected.csv");
        ASSERT_FALSE(rows.empty());
    }
    static std::vector<std::byte> bytes_of(const CsvRow& row) {
        return read_bytes(*real_photos() / row.at("SourceFile"));
    }
    std::vector<CsvRow> rows;
};

TEST_F(RealCameras, say_when_they_took_each_photo_and_what_they_are) {
    for (const auto& row : rows) {
        SCOPED_TRACE(row.at("SourceFile"));
        const FileMetadata found = read_metadata(bytes_of(row));
        EXPECT_EQ(found.unreadable, "");
        EXPECT_EQ(found_time(found), expected_time(row));
        EXPECT_EQ(found.make, trimmed(row.at("Make")));
        EXPECT_EQ(found.model, trimmed(row.at("Model")));
        const std::string& orientation = row.at("Orientation");
        EXPECT_EQ(found.orientation, orientation.empty() ? 1 : std::stoi(orientation));
    }
}

TEST_F(RealCameras, give_their_own_number_where_it_is_found) {
    int given = 0;
    for (const auto& row : rows) {
        const std::string serial = read_metadata(bytes_of(row)).serial;
        if (serial.empty()) continue;
        ++given;
        EXPECT_EQ(serial, trimmed(row.at("SerialNumber"))) << row.at("SourceFile");
    }
    EXPECT_GE(given, 4) << "two Nikons, a Canon and a Parrot carry one";
}

TEST_F(RealCameras, photos_have_their_upright_size) {
    const auto decoder = make_local_decoder();
    for (const auto& row : rows) {
        SCOPED_TRACE(row.at("SourceFile"));
        const auto bytes = bytes_of(row);
        const int orientation = read_metadata(bytes).orientation;
        const Decoded decoded = decoder->decode({bytes, orientation, 256});
        ASSERT_EQ(decoded.refused, "");
        int width = std::stoi(row.at("ImageWidth"));
        int height = std::stoi(row.at("ImageHeight"));
        if (orientation >= 5) std::swap(width, height);
        EXPECT_EQ(decoded.full_width, width);
        EXPECT_EQ(decoded.full_height, height);
        EXPECT_EQ(decoded.bgr.cols > decoded.bgr.rows, width > height);
    }
}

}  // namespace
}  // namespace quarterturn
