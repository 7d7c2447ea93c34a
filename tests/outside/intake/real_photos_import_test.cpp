// Photos straight from cameras and phones, brought in whole: the records against what
// exiftool 12.57 says (expected.csv), the copies against sha256sum (GNU coreutils).

#include <gtest/gtest.h>

#include "indexer/intake/import.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/csv.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

std::string without_outer_spaces(const std::string& text) {
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? ""
                                      : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// exiftool's columns as one ISO 8601 text; empty for blanks and zeros, which mean unknown.
std::string expected_time(const CsvRow& row) {
    std::string text = row.at("DateTimeOriginal");
    if (text.find_first_of("123456789") == std::string::npos) return "";
    text[4] = text[7] = '-';
    text[10] = 'T';
    if (!row.at("SubSecTimeOriginal").empty()) text += "." + row.at("SubSecTimeOriginal");
    return text;
}

std::string time_of(const Photo& photo) {
    return photo.file.taken ? iso_text(photo.file.taken->local, photo.file.taken->fraction_digits)
                            : "";
}

struct RealPhotosImport : testing::Test {
    void SetUp() override { SKIP_WITHOUT_REAL_PHOTOS(); }

    ImportReport bring_in(const std::vector<Path>& sources) {
        return import_photos(library, *make_confined_decoder(), {.sources = sources});
    }

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
};

TEST_F(RealPhotosImport, EveryGoodOneIsTakenInWithItsTimeDeviceAndSize) {
    const auto rows = read_csv(*real_photos() / "expected.csv");
    const ImportReport report = bring_in({*real_photos() / "good"});
    EXPECT_TRUE(report.refused.empty());
    EXPECT_TRUE(report.left_alone.empty());
    EXPECT_EQ(report.imported.size(), rows.size());
    for (const CsvRow& row : rows) {
        SCOPED_TRACE(row.at("SourceFile"));
        const auto found = library.photos().named(Path{row.at("SourceFile")}.filename().string());
        ASSERT_EQ(found.size(), 1U);
        const FileFacts& file = found[0].file;
        EXPECT_EQ(time_of(found[0]), expected_time(row));
        if (file.taken && file.taken->utc_offset) {
            EXPECT_EQ(offset_text(*file.taken->utc_offset), row.at("OffsetTimeOriginal"));
        }
        const Device device = file.device ? library.devices().find(*file.device).value() : Device{};
        EXPECT_EQ(device.make, without_outer_spaces(row.at("Make")));
        EXPECT_EQ(device.model, without_outer_spaces(row.at("Model")));
        const bool sideways = !row.at("Orientation").empty() && row.at("Orientation") >= "5";
        EXPECT_EQ(file.width, std::stoi(row.at(sideways ? "ImageHeight" : "ImageWidth")));
        EXPECT_EQ(file.height, std::stoi(row.at(sideways ? "ImageWidth" : "ImageHeight")));
    }
}

TEST_F(RealPhotosImport, TheCopiesAreTheOriginalsToTheByte) {
    bring_in({*real_photos() / "good"});
    for (const Photo& photo : library.photos().all()) {
        const Path original = *real_photos() / "good" / photo.file.name;
        const std::string sums = output_of("sha256sum " + shell_word(library.photo_file(photo)) +
                                           ' ' + shell_word(original) + " | cut -c1-64");
        EXPECT_EQ(sums, photo.file.sha256 + '\n' + photo.file.sha256 + '\n') << original;
    }
}

TEST_F(RealPhotosImport, EachBrokenOneEndsAsASentenceAndItsNeighbourIsTakenIn) {
    const Path card = folder / "card";
    std::filesystem::copy(*real_photos() / "broken", card);
    for (const Path& broken : files_in(card)) {
        std::filesystem::copy_file(broken, broken.string() + ".jpg");
    }
    std::filesystem::copy_file(*real_photos() / "good" / "Nikon_D40.jpg", card / "neighbour.jpg");
    const std::size_t files = files_in(card).size();
    ASSERT_GT(files, 80U);

    const ImportReport report = bring_in({card});
    EXPECT_EQ(library.photos().named("neighbour.jpg").size(), 1U);
    EXPECT_EQ(report.imported.size() + report.already_here.size() + report.left_alone.size() +
                  report.refused.size(),
              files);
    EXPECT_FALSE(report.refused.empty());
    for (const RefusedFile& refused : report.refused) {
        EXPECT_TRUE(refused.reason.ends_with('.')) << refused.reason;
        EXPECT_GT(refused.reason.size(), 30U) << refused.reason;
    }
    for (const Photo& photo : library.photos().all()) {
        EXPECT_TRUE(std::filesystem::exists(library.photo_file(photo)));
    }
}

}  // namespace
}  // namespace quarterturn
