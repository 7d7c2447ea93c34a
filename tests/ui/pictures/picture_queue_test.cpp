#include "ui/pictures/picture_queue.h"

#include <thread>

namespace quarterturn {
namespace {

PictureJob job(std::int64_t photo, bool small) {
    PictureJob made;
    made.photo.id = PhotoId{photo};
    made.small = small;
    made.long_edge = small ? 512 : 2000;
    return made;
}

std::string named(const PictureJob& made) {
    return (made.small ? "small " : "sharp ") + std::to_string(made.photo.id.value);
}

// Takes everything that is there without waiting.
std::vector<std::string> drain(PictureQueue& queue, std::size_t count) {
    std::vector<std::string> taken;
    for (std::size_t i = 0; i < count; ++i) taken.push_back(named(*queue.next()));
    return taken;
}

const int one_screen = 0;
const int other_screen = 0;

TEST(PictureQueue, SmallPicturesOfEverythingComeBeforeAnySharpOne) {
    PictureQueue queue;
    queue.replace(&one_screen, {job(1, true), job(1, false), job(2, true), job(2, false)});
    EXPECT_EQ(drain(queue, 4),
              (std::vector<std::string>{"small 1", "small 2", "sharp 1", "sharp 2"}));
}

TEST(PictureQueue, WhatScrolledAwayIsNotFetchedAnyMore) {
    PictureQueue queue;
    queue.replace(&one_screen, {job(1, true), job(2, true), job(3, true)});
    EXPECT_EQ(drain(queue, 1), std::vector<std::string>{"small 1"});
    queue.replace(&one_screen, {job(8, true), job(9, true)});
    EXPECT_EQ(drain(queue, 2), (std::vector<std::string>{"small 8", "small 9"}));
}

TEST(PictureQueue, TheViewerThatAskedLastComesFirst) {
    PictureQueue queue;
    queue.replace(&one_screen, {job(1, true)});
    queue.replace(&other_screen, {job(2, true)});
    EXPECT_EQ(drain(queue, 2), (std::vector<std::string>{"small 2", "small 1"}));
}

TEST(PictureQueue, AViewerThatIsGoneWantsNothing) {
    PictureQueue queue;
    queue.replace(&one_screen, {job(1, true)});
    queue.replace(&other_screen, {job(2, true)});
    queue.drop(&other_screen);
    EXPECT_EQ(drain(queue, 1), std::vector<std::string>{"small 1"});
}

TEST(PictureQueue, OnePictureIsNotFetchedByTwoThreadsAtOnce) {
    PictureQueue queue;
    queue.replace(&one_screen, {job(1, true)});
    const auto at_work = queue.next();
    queue.replace(&one_screen, {job(1, true), job(2, true)});
    EXPECT_EQ(named(*queue.next()), "small 2");
    queue.done(*at_work);
    queue.replace(&other_screen, {job(3, true)});
    EXPECT_EQ(named(*queue.next()), "small 3");
}

TEST(PictureQueue, AThreadThatWaitsIsLetGoWhenTheQueueCloses) {
    PictureQueue queue;
    std::optional<PictureJob> taken = job(1, true);
    std::thread waiting([&] { taken = queue.next(); });
    queue.close();
    waiting.join();
    EXPECT_FALSE(taken);
}

}  // namespace
}  // namespace quarterturn
