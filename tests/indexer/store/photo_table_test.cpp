#include "indexer/store/photo_table.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

std::vector<std::string> names(const std::vector<Photo>& photos) {
    std::vector<std::string> result;
    for (const Photo& photo : photos) result.push_back(photo.file.name);
    return result;
}

using Names = std::vector<std::string>;

// Every field differs from its default and from its neighbours.
Photo full_photo(const ExampleLibrary& example) {
    Photo photo = example_photo("IMG_0042.HEIC");
    photo.file.orientation = 6;
    photo.file.taken = CaptureTime{at("2026-11-07T10:12:03.610"), 3, std::chrono::minutes{-210}};
    photo.file.device = example.phone;
    photo.measures = {.focus = 181.25,
                      .motion = 0.125,
                      .mean_light = 0.5,
                      .clipped_shadows = 0.25,
                      .clipped_highlights = 0.0625};
    photo.fingerprint = 0xF123456789ABCDEFULL;  // the highest bit is set
    photo.head_signs = HeadSigns{false, true, false};
    photo.flaws = {Flaw::too_dark, Flaw::out_of_focus};
    photo.suggestion = {.angle = Angle::left_three_quarter,
                        .stage = Stage::during,
                        .angle_source = "keyword 'left'",
                        .stage_source = "taken after the last gap"};
    photo.tags = {.sitting = example.trial,
                  .placed_by_hand = true,
                  .look = example.look,
                  .stage = Stage::after,
                  .angle = Angle::crown,
                  .mirrored = true,
                  .shown = {example.mira},
                  .note = "the pin above the ear — 髪",
                  .accepted_because = "the only one"};
    return photo;
}

TEST(PhotoTable, KeepsEveryFieldOverARestart) {
    ExampleLibrary example;
    Photo photo = full_photo(example);
    photo.id = example.library.photos().add(photo);
    photo.moment = photo.file.taken->local;
    example.reopen();
    EXPECT_EQ(example.library.photos().find(photo.id), photo);
}

TEST(PhotoTable, KeepsUnknownAsUnknown) {
    ExampleLibrary example;
    Photo photo = example_photo("scan.png");
    photo.id = example.library.photos().add(photo);
    EXPECT_EQ(example.library.photos().find(photo.id), photo);
}

TEST(PhotoTable, ListsByMomentWithUnknownLast) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    photos.add(example_photo("unknown.jpg"));
    photos.add(example_photo("late.jpg", taken_at("2026-11-07T11:00:00")));
    photos.add(example_photo("early.jpg", taken_at("2026-11-07T10:59:59.9")));
    photos.add(example_photo("also late.jpg", taken_at("2026-11-07T11:00:00")));
    photos.add(example_photo("old.jpg", taken_at("1969-12-31T23:59:59")));
    EXPECT_EQ(names(photos.all()),
              (Names{"old.jpg", "early.jpg", "late.jpg", "also late.jpg", "unknown.jpg"}));
}

}  // namespace
}  // namespace quarterturn
