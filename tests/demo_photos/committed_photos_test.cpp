// The committed photos against the truth table, read with exiv2 (JPEG) or exiftool (HEIC).

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <exiv2/exiv2.hpp>
#include <map>
#include <set>

#include "tests/demo_photos/truth_table.h"

namespace quarterturn::demo {
namespace {

struct FileSays {
    std::string taken;
    std::string subseconds;
    std::string offset;
    std::string model;
    std::string orientation;
};

std::string output_of(const std::string& command) {
    std::string text;
    FILE* pipe = popen(command.c_str(), "r");
    std::array<char, 256> part{};
    while (pipe != nullptr && fgets(part.data(), part.size(), pipe) != nullptr) text += part.data();
    if (pipe != nullptr) pclose(pipe);
    while (!text.empty() && text.back() == '\n') text.pop_back();
    return text;
}

FileSays ask_exiftool(const std::filesystem::path& file) {
    const auto tag = [&](const std::string& name) {
        return output_of("exiftool -s3 -n -EXIF:" + name + " '" + file.string() + "'");
    };
    return {tag("DateTimeOriginal"), tag("SubSecTimeOriginal"), tag("OffsetTimeOriginal"),
            tag("Model"), tag("Orientation")};
}

FileSays ask_exiv2(const std::filesystem::path& file) {
    auto image = Exiv2::ImageFactory::open(file.string());
    image->readMetadata();
    const auto tag = [&](const char* key) {
        const auto found = image->exifData().findKey(Exiv2::ExifKey(key));
        return found == image->exifData().end() ? std::string() : found->toString();
    };
    return {tag("Exif.Photo.DateTimeOriginal"), tag("Exif.Photo.SubSecTimeOriginal"),
            tag("Exif.Photo.OffsetTimeOriginal"), tag("Exif.Image.Model"),
            tag("Exif.Image.Orientation")};
}

std::string iso_time(const FileSays& says) {
    std::string time = says.taken;
    time[4] = time[7] = '-';
    time[10] = 'T';
    return time + "." + (says.subseconds + "00").substr(0, 3);
}

TEST(CommittedPhotos, AreAllInTheTruthTableAndBackAgain) {
    std::set<std::string> listed;
    for (const TruthRow& row : read_truth()) listed.insert(row.at("file"));
    std::set<std::string> there;
    std::uintmax_t bytes = 0;
    const auto photos = demo_folder() / "photos";
    for (const auto& entry : std::filesystem::recursive_directory_iterator(photos)) {
        if (!entry.is_regular_file()) continue;
        there.insert(std::filesystem::relative(entry.path(), photos).string());
        bytes += entry.file_size();
    }
    EXPECT_EQ(listed, there);
    EXPECT_GE(listed.size(), 55U);
    EXPECT_LE(bytes, 20U * 1000U * 1000U);
}

TEST(CommittedPhotos, SayWhatTheTruthTableSays) {
    for (const TruthRow& row : read_truth()) {
        SCOPED_TRACE(row.at("file"));
        const auto file = demo_folder() / "photos" / row.at("file");
        const bool heic = file.extension() == ".heic";
        const FileSays says = heic ? ask_exiftool(file) : ask_exiv2(file);
        ASSERT_EQ(says.taken.size(), 19U);
        const bool camera = row.at("device") == "camera";
        // The camera writes hundredths of a second.
        const std::size_t digits = camera ? 22 : 23;
        EXPECT_EQ(iso_time(says).substr(0, digits), row.at("file_time").substr(0, digits));
        EXPECT_EQ(says.offset, row.at("utc_offset"));
        EXPECT_EQ(says.orientation, row.at("orientation"));
        EXPECT_EQ(says.model, camera ? "QTC Field 2" : "Larkwing Pocket 4");
    }
}

TEST(CommittedPhotos, HoldEveryMistakeTheProgramShouldFind) {
    std::map<std::string, int> flaws;
    int mirrored = 0;
    int burst = 0;
    for (const TruthRow& row : read_truth()) {
        ++flaws[row.at("flaw")];
        mirrored += row.at("mirrored") == "1" ? 1 : 0;
        burst += row.at("burst").empty() ? 0 : 1;
        const bool sharp_evening_back =
            row.at("look") == "a-evening" && row.at("angle") == "back" && row.at("flaw") == "none";
        EXPECT_FALSE(sharp_evening_back) << "The evening look is to have a gap at the back.";
    }
    EXPECT_GE(flaws["out_of_focus"], 3);
    EXPECT_GE(flaws["moved"], 3);
    EXPECT_GE(flaws["too_dark"], 2);
    EXPECT_GE(flaws["blown_out"], 2);
    EXPECT_GE(mirrored, 2);
    EXPECT_GE(burst, 4);
}

TEST(CommittedPhotos, HaveASharpPhotoOfEveryAngleOfTheCeremonyLook) {
    std::set<std::string> sharp;
    for (const TruthRow& row : read_truth()) {
        if (row.at("look") == "a-ceremony" && row.at("stage") == "after" &&
            row.at("flaw") == "none")
            sharp.insert(row.at("angle"));
    }
    EXPECT_EQ(sharp.size(), 8U);
}

}  // namespace
}  // namespace quarterturn::demo
