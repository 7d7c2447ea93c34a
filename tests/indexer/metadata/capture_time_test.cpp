#include "indexer/metadata/capture_time.h"

#include <rapidcheck/gtest.h>

namespace quarterturn {
namespace {

std::string iso(const std::optional<CaptureTime>& taken) {
    if (!taken) return "unknown";
    std::string text = iso_text(taken->local, taken->fraction_digits);
    if (taken->utc_offset) text += offset_text(*taken->utc_offset);
    return text;
}

TEST(CaptureTime, is_unknown_when_the_camera_had_no_clock) {
    // EXIF 2.32, DateTimeOriginal: blanks stand for an unknown time; cameras also write zeros.
    for (const auto* text : {"", "   ", "    :  :     :  :  ", "0000:00:00 00:00:00",
                             "2026:00:10 10:00:00", "2026:02:30 10:00:00", "2026:11:07 24:00:00",
                             "2026:11:07 10:61:00", "2026:11:07", "yesterday at ten pm"}) {
        EXPECT_EQ(iso(exif_capture_time(text, "", "")), "unknown") << text;
    }
}

TEST(CaptureTime, keeps_the_digits_of_the_fraction_as_the_file_gives_them) {
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "050", "")), "2026-11-07T10:12:03.050");
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "61  ", "")), "2026-11-07T10:12:03.61");
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "123456789123", "")),
              "2026-11-07T10:12:03.123456789");
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "   ", "")), "2026-11-07T10:12:03");
}

TEST(CaptureTime, drops_a_fraction_or_offset_that_is_no_number_and_keeps_the_rest) {
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "abc", "   :  ")),
              "2026-11-07T10:12:03");
    EXPECT_EQ(iso(exif_capture_time("2026:11:07 10:12:03", "4", "+99:00")),
              "2026-11-07T10:12:03.4");
}

TEST(CaptureTime, reads_the_zero_byte_and_blanks_that_cameras_leave_at_the_end) {
    EXPECT_EQ(iso(exif_capture_time(std::string_view("2026:11:07 10:12:03\0 ", 21), "",
                                    std::string_view("-04:00\0", 7))),
              "2026-11-07T10:12:03-04:00");
}

std::string two_digits(int number) {
    std::string text = std::to_string(number);
    return text.size() < 2 ? "0" + text : text;
}

RC_GTEST_PROP(CaptureTimeProperty, says_every_real_moment_just_as_exif_wrote_it, ()) {
    const std::string month = two_digits(*rc::gen::inRange(1, 13));
    const std::string day = two_digits(*rc::gen::inRange(1, 29));
    const std::string clock = two_digits(*rc::gen::inRange(0, 24)) + ":" +
                              two_digits(*rc::gen::inRange(0, 60)) + ":" +
                              two_digits(*rc::gen::inRange(0, 60));
    const auto digit =
        rc::gen::map(rc::gen::inRange(0, 10), [](int value) { return char('0' + value); });
    const auto fraction =
        *rc::gen::container<std::string>(*rc::gen::inRange<std::size_t>(0, 10), digit);
    const std::string expected =
        "2026-" + month + "-" + day + "T" + clock + (fraction.empty() ? "" : "." + fraction);
    RC_ASSERT(iso(exif_capture_time("2026:" + month + ":" + day + " " + clock, fraction, "")) ==
              expected);
}

}  // namespace
}  // namespace quarterturn
