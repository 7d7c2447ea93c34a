// The demo photos from card to sorted and tagged, against what is true of them (truth.csv) and what
// exiftool says of the files in the library.

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "indexer/intake/import.h"
#include "indexer/intake/scenario.h"
#include "indexer/intake/sort.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/csv.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

const Path demo = QUARTERTURN_DEMO_PHOTOS;

// "left three-quarter" of a photo, or empty.
std::string suggested(const Photo& photo) {
    return photo.suggestion.angle ? std::string{word(*photo.suggestion.angle)} : "";
}

// Brought in once for all tests, since that takes seconds.
struct Demo {
    Demo() {
        load_scenario(library, text_of(demo / "scenario.json"), LocalTime{});
        report = import_photos(library, *make_confined_decoder(), {.sources = {demo / "photos"}});
    }

    const CsvRow& first_row_of(const std::string& device) const {
        return *std::ranges::find_if(truth,
                                     [&](const CsvRow& row) { return row.at("device") == device; });
    }

    Photo photo(const CsvRow& row) {
        const auto found = library.photos().named(Path{row.at("file")}.filename().string());
        EXPECT_EQ(found.size(), 1U) << row.at("file");
        return found.at(0);
    }

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    std::vector<CsvRow> truth = read_csv(demo / "truth.csv");
    ImportReport report;
};

struct DemoPhotos : testing::Test {
    static void SetUpTestSuite() { shared = new Demo; }
    static void TearDownTestSuite() { delete std::exchange(shared, nullptr); }
    static Demo* shared;
};

Demo* DemoPhotos::shared = nullptr;

TEST_F(DemoPhotos, AreAllTakenInAsTheirFilesSay) {
    EXPECT_TRUE(shared->report.refused.empty());
    EXPECT_EQ(shared->report.imported.size(), shared->truth.size());
    for (const CsvRow& row : shared->truth) {
        SCOPED_TRACE(row.at("file"));
        const Photo photo = shared->photo(row);
        ASSERT_TRUE(photo.file.taken);
        const auto wanted = parse_local_time(row.at("file_time")).value();
        EXPECT_LT(std::chrono::abs(photo.file.taken->local - wanted),
                  std::chrono::milliseconds{10});
        const auto offset = photo.file.taken->utc_offset;
        EXPECT_EQ(offset ? offset_text(*offset) : "", row.at("utc_offset"));
        EXPECT_EQ(photo.file.width, std::stoi(row.at("width")));
        EXPECT_EQ(photo.file.height, std::stoi(row.at("height")));
        EXPECT_EQ(suggested(photo), row.at("suggested_angle"));
    }
}

TEST_F(DemoPhotos, AreWhatExiftoolSaysOfTheFilesInTheLibrary) {
    const auto read =
        nlohmann::json::parse(output_of("exiftool -json -r -DateTimeOriginal -Model -FileName " +
                                        shell_word(shared->library.folder() / "photos")));
    EXPECT_EQ(read.size(), shared->truth.size());
    for (const auto& one : read) {
        const auto photos = shared->library.photos().named(one.at("FileName").get<std::string>());
        ASSERT_EQ(photos.size(), 1U);
        std::string time = iso_text(photos[0].file.taken->local);
        time[4] = time[7] = ':';
        time[10] = ' ';
        EXPECT_EQ(one.at("DateTimeOriginal"), time);
        EXPECT_EQ(one.at("Model"),
                  shared->library.devices().find(photos[0].file.device.value())->model);
    }
}

TEST_F(DemoPhotos, TheSlowClockIsNoticedAndAllFallToTheirSittings) {
    const std::vector<ClockShift> proposals = propose_clock_shifts(shared->library);
    ASSERT_EQ(proposals.size(), 1U);
    const CsvRow& camera = shared->first_row_of("camera");
    EXPECT_EQ(proposals[0].device, shared->photo(camera).file.device);
    const std::chrono::seconds wanted{-std::stoi(camera.at("clock_offset_seconds"))};
    EXPECT_LE(std::chrono::abs(proposals[0].shift - wanted), std::chrono::minutes{5})
        << proposals[0].because;
    apply_clock_shift(shared->library, proposals[0]);
    EXPECT_TRUE(propose_clock_shifts(shared->library).empty());
    std::map<SittingId, std::string> key_of;
    for (const CsvRow& row : shared->truth) {
        const auto sitting = shared->photo(row).tags.sitting;
        EXPECT_EQ(sitting.has_value(), !row.at("sitting").empty()) << row.at("file");
        if (!sitting) continue;
        EXPECT_EQ(key_of.emplace(*sitting, row.at("sitting")).first->second, row.at("sitting"));
    }
    undo(shared->library);
}

TEST_F(DemoPhotos, TheTagsOfTheScenarioGoWithThem) {
    const int tagged = load_tags(shared->library, text_of(demo / "tags.json"));
    EXPECT_GT(tagged, 40);
    int checked = 0;
    for (const CsvRow& row : shared->truth) {
        const Tags tags = shared->photo(row).tags;
        if (!tags.angle) continue;
        ++checked;
        EXPECT_EQ(word(*tags.angle), row.at("angle")) << row.at("file");
        EXPECT_EQ(word(tags.stage.value()), row.at("stage")) << row.at("file");
        EXPECT_EQ(tags.mirrored, row.at("mirrored") == "1") << row.at("file");
    }
    EXPECT_EQ(checked, tagged);
    undo(shared->library);
}

}  // namespace
}  // namespace quarterturn
