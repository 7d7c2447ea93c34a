#include "indexer/store/history.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Tags tagged(Angle angle) {
    Tags tags;
    tags.angle = angle;
    return tags;
}

TEST(History, UndoesAndDoesAgainOverARestart) {
    ExampleLibrary example;
    const PhotoId photo = example.library.photos().add(example_photo("one.jpg"));
    example.library.history().apply({"tagged 1 photo left", {{photo, tagged(Angle::left)}}, {}});
    example.reopen();
    EXPECT_EQ(example.library.history().undo(), "tagged 1 photo left");
    EXPECT_EQ(example.library.photos().find(photo)->tags, Tags{});
    example.reopen();
    EXPECT_EQ(example.library.history().redo(), "tagged 1 photo left");
    EXPECT_EQ(example.library.photos().find(photo)->tags.angle, Angle::left);
    EXPECT_EQ(example.library.history().redo(), std::nullopt);
}

}  // namespace
}  // namespace quarterturn
