// What waits for her after photos came in.

#include "indexer/intake/to_settle.h"

#include "indexer/intake/tagging.h"
#include "tests/indexer/intake/import_fixture.h"

namespace quarterturn {
namespace {

struct ToSettleTest : ImportTest {
    std::vector<std::string> names(const std::vector<Photo>& photos) {
        std::vector<std::string> names;
        for (const Photo& photo : photos) names.push_back(photo.file.name);
        return names;
    }
};

TEST_F(ToSettleTest, IsNothingWhenAllPhotosFit) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    bring_in();
    EXPECT_EQ(to_settle(library), ToSettle{});
}

TEST_F(ToSettleTest, PhotosThatFitTheSameSittingsStandTogether) {
    const SittingId shoot = add_sitting(mira, "2026-11-07T11:00", "2026-11-07T13:00");
    write_photo(card / "both1.jpg", 1, {.taken = "2026:11:07 11:30:00"});
    write_photo(card / "both2.jpg", 2, {.taken = "2026:11:07 11:31:00"});
    write_photo(card / "none.jpg", 3, {.taken = "2026:11:07 20:00:00"});
    write_photo(card / "fits.jpg", 4, {.taken = "2026:11:07 10:12:03"});
    write_photo(card / "when.jpg", 5);
    bring_in();
    const ToSettle waits = to_settle(library);
    ASSERT_EQ(waits.groups.size(), 3U);
    EXPECT_EQ(names(waits.groups[0].photos), (std::vector<std::string>{"both1.jpg", "both2.jpg"}));
    ASSERT_EQ(waits.groups[0].fits.size(), 2U);
    EXPECT_EQ(waits.groups[0].fits[0].id, trial);
    EXPECT_EQ(names(waits.groups[1].photos), std::vector<std::string>{"none.jpg"});
    EXPECT_TRUE(waits.groups[1].fits.empty());
    ASSERT_EQ(waits.groups[1].nearby.size(), 2U);
    EXPECT_EQ(waits.groups[1].nearby[0].id, shoot);  // ended at 13:00, the trial at 12:00
    EXPECT_EQ(names(waits.groups[2].photos), std::vector<std::string>{"when.jpg"});
}

TEST_F(ToSettleTest, WhatSheHasPlacedWaitsNoLonger) {
    write_photo(card / "none.jpg", 3, {.taken = "2026:11:07 20:00:00"});
    const ImportReport came = bring_in();
    place_by_hand(library, came.imported, std::nullopt);
    EXPECT_TRUE(to_settle(library).groups.empty());
}

TEST_F(ToSettleTest, ADoubtfulClockComesWithTwoPicturesOfAboutTheSameMoment) {
    for (int i = 0; i < 8; ++i) {
        const std::string minute = std::to_string(10 + 5 * i);
        write_photo(card / ("p" + std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 10:" + minute + ":00"});
        // A second camera beside it, three hours slow and twenty seconds later each time.
        write_photo(card / ("c" + std::to_string(i) + ".jpg"), 100 + i,
                    {.taken = "2026:11:07 07:" + minute + ":20", .make = "Farnholt", .model = "K"});
    }
    bring_in();
    const ToSettle waits = to_settle(library);
    ASSERT_EQ(waits.clocks.size(), 1U);
    const DoubtfulClock& clock = waits.clocks[0];
    EXPECT_EQ(clock.device.model, "K");
    EXPECT_EQ(clock.shift.shift, std::chrono::hours{3});
    EXPECT_EQ(clock.of_device.size(), 8U);
    EXPECT_EQ(clock.of_others.size(), 8U);
    ASSERT_TRUE(clock.own && clock.beside);
    EXPECT_EQ(clock.own->file.name.substr(1), clock.beside->file.name.substr(1));
}

}  // namespace
}  // namespace quarterturn
