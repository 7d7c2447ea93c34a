// Files written by exiftool, read by us, and compared with what exiftool reads from them again.

#include <gtest/gtest.h>

#include <opencv2/core.hpp>
#include <sstream>

#include "indexer/metadata/read.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

std::string exif_text(LocalTime time) {
    std::string text = iso_text(time);
    text[4] = text[7] = ':';
    text[10] = ' ';
    return text;
}

class Exiftool : public testing::TestWithParam<std::string> {
  protected:
    // A small picture of the kind of the parameter, with these tags written to it.
    std::filesystem::path tagged(const std::string& arguments) const {
        const auto file = folder / ("photo" + GetParam());
        const auto plain = folder / "plain.png";
        write_bytes(plain, encoded(four_quarters(64, 48), ".png"));
        if (GetParam() == ".heic") {
            output_of("heif-enc " + shell_word(plain.string()) + " -o " +
                      shell_word(file.string()) + " 2>&1");
        } else {
            write_bytes(file, encoded(four_quarters(64, 48), GetParam()));
        }
        output_of("exiftool -q -overwrite_original " + arguments + " " + shell_word(file.string()));
        return file;
    }
    // What exiftool reads for each of the tags, in their order.
    static std::vector<std::string> said(const std::filesystem::path& file,
                                         const std::string& tags) {
        std::istringstream lines(
            output_of("exiftool -n -f -s3 " + tags + " " + shell_word(file.string())));
        std::vector<std::string> answers;
        for (std::string line; std::getline(lines, line);) answers.push_back(line);
        return answers;
    }
    TemporaryFolder folder;
};

TEST_P(Exiftool, and_we_agree_on_time_device_and_orientation) {
    const auto file = tagged(
        "-EXIF:DateTimeOriginal='2026:11:07 10:12:03' -EXIF:SubSecTimeOriginal=0420 "
        "-EXIF:OffsetTimeOriginal=+05:30 -EXIF:CreateDate='2026:11:08 11:11:11' "
        "-EXIF:Make='Łąka Works ' -EXIF:Model='Third Eye' -EXIF:SerialNumber=QT-00017 "
        "-EXIF:Orientation#=6");
    const FileMetadata found = read_metadata(read_bytes(file));
    ASSERT_EQ(found.unreadable, "");
    ASSERT_TRUE(found.taken);
    const auto expected = said(file,
                               "-EXIF:DateTimeOriginal -EXIF:SubSecTimeOriginal "
                               "-EXIF:OffsetTimeOriginal -EXIF:Make -EXIF:Model -EXIF:SerialNumber "
                               "-EXIF:Orientation -ImageWidth");
    ASSERT_EQ(expected.size(), 8U);
    EXPECT_EQ(exif_text(found.taken->local), expected[0]);
    EXPECT_EQ(iso_text(found.taken->local, found.taken->fraction_digits).substr(20), expected[1]);
    EXPECT_EQ(offset_text(found.taken->utc_offset.value()), expected[2]);
    EXPECT_EQ(found.make, expected[3]);
    EXPECT_EQ(found.model, expected[4]);
    EXPECT_EQ(found.serial, expected[5]);
    EXPECT_EQ(std::to_string(found.orientation), expected[6]);
    EXPECT_EQ(std::to_string(found.width), expected[7]);
}

TEST_P(Exiftool, and_we_agree_on_the_second_best_time) {
    const auto file = tagged(
        "-EXIF:DateTimeOriginal#='    :  :     :  :  ' -EXIF:SubSecTimeOriginal=11 "
        "-EXIF:CreateDate='2026:11:08 11:11:11' -EXIF:SubSecTimeDigitized=7 "
        "-EXIF:OffsetTimeDigitized=-03:00");
    const FileMetadata found = read_metadata(read_bytes(file));
    ASSERT_TRUE(found.taken);
    EXPECT_EQ(iso_text(found.taken->local, found.taken->fraction_digits), "2026-11-08T11:11:11.7");
    EXPECT_EQ(offset_text(found.taken->utc_offset.value()), "-03:00");
}

TEST_P(Exiftool, and_we_agree_on_keywords_in_any_script) {
    const auto file =
        tagged("-XMP-dc:Subject=left -XMP-dc:Subject='свадьба' -XMP-dc:Subject=' back '");
    const FileMetadata found = read_metadata(read_bytes(file));
    const std::vector<std::string> expected{"left", "свадьба", "back"};
    EXPECT_EQ(found.keywords, expected);
}

INSTANTIATE_TEST_SUITE_P(Kinds, Exiftool, testing::Values(".jpg", ".png", ".tif", ".webp", ".heic"),
                         [](const auto& kind) { return kind.param.substr(1); });

TEST(ExiftoolIptc, keywords_are_read_once_whether_in_iptc_or_xmp) {
    const TemporaryFolder folder;
    const auto file = folder / "photo.jpg";
    write_bytes(file, encoded(four_quarters(64, 48), ".jpg"));
    output_of(
        "exiftool -q -overwrite_original -XMP-dc:Subject=left -IPTC:Keywords=left "
        "-IPTC:Keywords=crown " +
        shell_word(file.string()));
    const std::vector<std::string> expected{"left", "crown"};
    EXPECT_EQ(read_metadata(read_bytes(file)).keywords, expected);
}

TEST(ExiftoolOrientation, all_eight_are_read_and_others_mean_as_is) {
    const TemporaryFolder folder;
    const auto name = [&](int orientation) {
        return (folder / (std::to_string(orientation) + ".jpg")).string();
    };
    const std::vector<int> orientations{1, 2, 3, 4, 5, 6, 7, 8, 0, 9, 77};
    std::string commands = "exiftool";
    for (const int orientation : orientations) {
        write_bytes(name(orientation), encoded(four_quarters(64, 48), ".jpg"));
        commands += " -q -overwrite_original -EXIF:Orientation#=" + std::to_string(orientation) +
                    " " + shell_word(name(orientation)) + " -execute";
    }
    output_of(commands);
    for (const int orientation : orientations) {
        EXPECT_EQ(read_metadata(read_bytes(name(orientation))).orientation,
                  orientation >= 1 && orientation <= 8 ? orientation : 1);
    }
}

}  // namespace
}  // namespace quarterturn
