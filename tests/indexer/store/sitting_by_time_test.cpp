// Where photos fall by their time stands beside what she said, and in no history.

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

TEST(SittingByTime, PlacesAPhotoAndLeavesNothingToUndo) {
    ExampleLibrary example;
    const PhotoId id = example.library.photos().add(example_photo("a.jpg"));
    example.library.photos().set_sitting_by_time(id, example.trial);
    EXPECT_EQ(example.library.photos().find(id)->tags.sitting, example.trial);
    EXPECT_EQ(example.library.history().undo(), std::nullopt);
    example.library.photos().set_sitting_by_time(id, std::nullopt);
    EXPECT_EQ(example.library.photos().find(id)->tags.sitting, std::nullopt);
}

TEST(SittingByTime, LeavesAlonePhotosPlacedByHand) {
    ExampleLibrary example;
    Photo photo = example_photo("a.jpg");
    photo.tags.placed_by_hand = true;
    const PhotoId id = example.library.photos().add(photo);
    example.library.photos().set_sitting_by_time(id, example.trial);
    EXPECT_EQ(example.library.photos().find(id)->tags.sitting, std::nullopt);
}

TEST(StoredFiles, AreThoseOfAllPhotos) {
    ExampleLibrary example;
    EXPECT_TRUE(example.library.photos().stored_files().empty());
    example.library.photos().add(example_photo("a.jpg"));
    example.library.photos().add(example_photo("b.jpg"));
    std::map<std::string, std::string> found;
    for (const StoredFile& file : example.library.photos().stored_files()) {
        found[file.path] = file.sha256;
    }
    EXPECT_EQ(found, (std::map<std::string, std::string>{{"photos/2026/a.jpg", sha256("a.jpg")},
                                                         {"photos/2026/b.jpg", sha256("b.jpg")}}));
}

}  // namespace
}  // namespace quarterturn
