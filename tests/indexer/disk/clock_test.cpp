#include "indexer/disk/clock.h"

#include <gtest/gtest.h>
#include <stdlib.h>
#include <time.h>

#include "tests/support/command.h"

namespace quarterturn {
namespace {

// date(1) reads the same clock on another road.
LocalTime told_by_date() {
    return parse_local_time(output_of("date +%Y-%m-%dT%H:%M:%S").substr(0, 19)).value();
}

TEST(LocalNow, IsWhatDateSaysInEachTimeZone) {
    for (const char* zone : {"UTC", "Pacific/Kiritimati", "Asia/Kathmandu"}) {
        ::setenv("TZ", zone, 1);
        ::tzset();
        const LocalTime before = told_by_date();
        const LocalTime now = local_now();
        EXPECT_LE(before, now) << zone;
        EXPECT_LE(now, told_by_date()) << zone;
    }
}

}  // namespace
}  // namespace quarterturn
