// The power fails: a process that changes the records is killed at any moment. The records open
// again and hold just the changes up to some point, at least all that were reported as done.

#include <gtest/gtest.h>
#include <signal.h>

#include <random>
#include <thread>

#include "tests/support/child.h"
#include "tests/support/example_library.h"
#include "tests/support/killed.h"

namespace quarterturn {
namespace {

constexpr int photo_count = 5;

Tags numbered(int number) {
    Tags tags;
    tags.note = std::to_string(number);
    return tags;
}

// Change after change of all photos at once; says after each which one is done.
[[noreturn]] void change_for_ever(const Path& folder, int first, int report_to) {
    Library library = Library::open(folder);
    std::vector<PhotoId> photos;
    for (const Photo& photo : library.photos().all()) photos.push_back(photo.id);
    for (int number = first;; ++number) {
        Change change{std::to_string(number), {}, {}};
        for (const PhotoId photo : photos) change.tags.push_back({photo, numbered(number)});
        library.history().apply(change);
        if (::write(report_to, &number, sizeof number) != sizeof number) ::_exit(1);
    }
}

enum class Killed { soon_after_start, soon_after_first_change };

// The number of the last change that the killed process reported, or the one before `first`.
int last_reported(const Path& folder, int first, Killed when, std::chrono::microseconds life) {
    std::array<int, 2> ends{};
    EXPECT_EQ(::pipe(ends.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) change_for_ever(folder, first, ends[1]);
    ::close(ends[1]);
    int reported = first - 1;
    if (when == Killed::soon_after_first_change) {
        EXPECT_EQ(::read(ends[0], &reported, sizeof reported), ssize_t{sizeof reported});
    }
    std::this_thread::sleep_for(life);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    for (int number = 0; ::read(ends[0], &number, sizeof number) == sizeof number;) {
        reported = number;
    }
    ::close(ends[0]);
    return reported;
}

TEST(KilledProcess, RecordsHoldAllChangesUpToSomePoint) {
    TemporaryFolder folder;
    {
        Library library = Library::create(folder / "library");
        for (int i = 0; i < photo_count; ++i) {
            library.photos().add(example_photo("IMG_" + std::to_string(i) + ".jpg"));
        }
    }
    std::mt19937 random(20261107);
    int done = 0;
    for (int round = 0; round < kills(25); ++round) {
        const std::chrono::microseconds life{random() % 300'000};
        const Killed when =
            round % 2 == 0 ? Killed::soon_after_start : Killed::soon_after_first_change;
        const int reported = last_reported(folder / "library", done + 1, when, life);

        Library library = Library::open(folder / "library");
        const auto photos = library.photos().all();
        ASSERT_EQ(photos.size(), static_cast<std::size_t>(photo_count));
        const std::string note = photos[0].tags.note;
        for (const Photo& photo : photos) ASSERT_EQ(photo.tags.note, note) << "half a change";
        done = note.empty() ? 0 : std::stoi(note);
        ASSERT_GE(done, reported) << "what was done is lost";
        ASSERT_LE(done, reported + 1) << "changed before it was said to be";
        if (done > 0) {
            ASSERT_EQ(library.history().undo(), note);
            ASSERT_EQ(library.history().redo(), note);
        }
    }
    EXPECT_GE(done, kills(25) / 3) << "processes changed something before they were killed";
}

}  // namespace
}  // namespace quarterturn
