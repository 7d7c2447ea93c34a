#pragma once

#include "indexer/image/encode.h"
#include "tests/support/as_made_library.h"
#include "tests/support/higher_hair.h"

namespace quarterturn {

// On the wedding day the hair of the back stands 2.5 cm higher than in the photo of the trial, and
// that photo is otherwise the same.
struct DayWithHigherHair : AsMadeLibrary {
    DayWithHigherHair() {
        const CsvRow row = demo_row("phone/20260822_153044_back.jpg");
        const cv::Mat picture = with_higher_hair(row, demo_picture(row, 1200), 2.5);
        higher = add_bytes("higher.jpg", jpeg_bytes(picture, 92), 1, "2026-11-21T10:52:00", day,
                           Angle::back);
        library.photos().set_measured(higher, {.focus = 1e6}, 0, {}, {});
    }

    PhotoId higher;
};

}  // namespace quarterturn
