// Of a library of many photos, only what is seen is read and drawn.

#include <QTest>
#include <mutex>
#include <set>

#include "tests/support/failing_disk.h"
#include "tests/support/many_photos.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/all_photos/all_photos_screen.h"
#include "ui/all_photos/photo_shelves.h"

namespace quarterturn {
namespace {

// Notes for which photos a small picture was asked of the disk.
class NotingDisk : public FailingDisk {
  public:
    bool exists(const Path& file) override {
        if (file.extension() == ".jpg") {
            const std::lock_guard lock(mutex_);
            asked_.insert(file.filename().string());
        }
        return FailingDisk::exists(file);
    }
    std::size_t asked() {
        const std::lock_guard lock(mutex_);
        return asked_.size();
    }

  private:
    std::mutex mutex_;
    std::set<std::string> asked_;
};

TEST(AllPhotosOfALargeLibrary, OnlyWhatIsSeenIsAskedFor) {
    const TemporaryFolder folder;
    {
        Library library = Library::create(folder / "library");
        fill_with_photos(library, 100'000);
    }
    NotingDisk disk;
    NoDecoder decoder;
    Session session(disk, decoder, [] { return at("2026-11-07T08:00:00"); });
    ASSERT_EQ(session.open(folder / "library"), QString());
    AllPhotosScreen screen(session);
    screen.resize(1280, 800);
    screen.refresh();
    show_active(screen);
    auto& shelves = *screen.findChild<PhotoShelves*>();
    ASSERT_GT(shelves.model()->rowCount(), 0) << "the first of them at once";
    ASSERT_TRUE(QTest::qWaitFor([&] { return shelves.model()->rowCount() == 100'000; }));
    const auto in_view = [&](int position) {
        return shelves.viewport()->rect().intersects(
            shelves.visualRect(shelves.model()->index(position, 0)));
    };
    std::size_t seen = 0;
    while (in_view(static_cast<int>(seen))) ++seen;
    ASSERT_GT(seen, 5U);
    EXPECT_TRUE(QTest::qWaitFor([&] { return disk.asked() >= seen; }));
    QTest::qWait(50);
    EXPECT_EQ(disk.asked(), seen);

    shelves.setFocus();
    QTest::keyClick(screen.windowHandle(), Qt::Key_End);
    show_active(screen);
    EXPECT_TRUE(in_view(99'999));
    EXPECT_EQ(shelves.currentIndex().row(), 99'999);
    EXPECT_TRUE(QTest::qWaitFor([&] { return disk.asked() > seen; }));
    QTest::qWait(50);
    EXPECT_LE(disk.asked(), 3 * seen) << "what was scrolled over is not asked for";
}

}  // namespace
}  // namespace quarterturn
