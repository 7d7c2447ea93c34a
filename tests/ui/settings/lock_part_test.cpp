// The lock in the settings, on a real library that is locked.

#include "ui/settings/lock_part.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/support/files.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"

namespace quarterturn {
namespace {

constexpr auto passphrase = "seven owls below the granary";

class LockPartTest : public testing::Test {
  protected:
    LockPartTest() {
        {
            Library made = Library::create(library);
            std::filesystem::create_directories(library / "photos" / "2026");
            Photo photo = example_photo("one.jpg");
            photo.file.path = "photos/2026/one.jpg";
            std::ofstream(made.photo_file(photo)) << "one.jpg";
            made.photos().add(photo);
        }
        lock = new_lock(passphrase, least_guess_cost());
        lock_library(real_file_system(), library, lock, {});
    }
    ~LockPartTest() override { key_ring::forget(library); }

    LockPart& shown() {
        EXPECT_EQ(session.open(library), QString());
        part = std::make_unique<LockPart>(session);
        part->resize(900, 500);
        part->refresh();
        show_active(*part);
        return *part;
    }
    QPushButton* seen(const QString& text) {
        for (auto* button : part->findChildren<QPushButton*>()) {
            if (button->isVisible() && button->text() == text) return button;
        }
        return nullptr;
    }
    bool says(const QString& words) {
        return std::ranges::any_of(part->findChildren<QLabel*>(), [&](const QLabel* label) {
            return label->isVisible() && label->text().contains(words);
        });
    }
    // The one photo, under the name that the lock gave it.
    Path sealed_photo() const {
        for (const auto& entry :
             std::filesystem::recursive_directory_iterator(library / "photos")) {
            if (entry.is_regular_file()) return entry.path();
        }
        return {};
    }

    TemporaryFolder folder;
    Path library = folder / "library";
    NewLock lock;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    std::unique_ptr<LockPart> part;
};

TEST_F(LockPartTest, AsksOnceMoreBeforeTheLockIsTakenOff) {
    shown();
    QSignalSpy closing(&session, &Session::closing);
    seen(QStringLiteral("Unlock for good"))->click();
    EXPECT_TRUE(says(QStringLiteral("lie on the disk as plain files")));
    EXPECT_EQ(problems_at_all_sizes(*part), QStringList());
    EXPECT_EQ(seen(QStringLiteral("Unlock for good")), nullptr) << "nothing to click a second time";
    seen(QStringLiteral("Keep the lock"))->click();
    EXPECT_EQ(seen(QStringLiteral("Take the lock off")), nullptr);
    EXPECT_TRUE(closing.isEmpty());
    seen(QStringLiteral("Unlock for good"))->click();
    seen(QStringLiteral("Take the lock off"))->click();
    EXPECT_TRUE(closing.size() == 1 || closing.wait());
    const ClosedWork work = session.take_closed_work().value();
    Job job([&](Job& self) {
        (void)work.work(self);
        return std::function<void()>([] {});
    });
    QSignalSpy ended(&job, &Job::ended);
    EXPECT_TRUE(ended.wait());
    EXPECT_FALSE(read_lock(real_file_system(), library));
}

TEST_F(LockPartTest, GoesOnWithWhatStayedLocked) {
    const Path photo = sealed_photo();
    std::filesystem::rename(photo, folder / "elsewhere");
    unlock_for_good(real_file_system(), library, lock.keys, {});
    ASSERT_TRUE(read_left_lock(real_file_system(), library));
    std::filesystem::create_directories(photo.parent_path());
    std::filesystem::rename(folder / "elsewhere", photo);
    shown();
    EXPECT_TRUE(says(QStringLiteral("some of the library stayed locked")));
    EXPECT_EQ(problems_at_all_sizes(*part), QStringList());
    for (auto* field : part->findChildren<QLineEdit*>()) {
        if (field->accessibleName().startsWith(QStringLiteral("Passphrase or recovery key"))) {
            field->setText(QString::fromStdString(lock.recovery_key));
        }
    }
    seen(QStringLiteral("Unlock for good"))->click();
    const ClosedWork work = session.take_closed_work().value();
    Job job([&](Job& self) {
        EXPECT_EQ(work.work(self), QStringLiteral("The library is not locked any longer."));
        return std::function<void()>([] {});
    });
    QSignalSpy ended(&job, &Job::ended);
    EXPECT_TRUE(ended.wait());
    EXPECT_FALSE(read_left_lock(real_file_system(), library));
    EXPECT_EQ(text_of(library / "photos/2026/one.jpg"), "one.jpg");
}

}  // namespace
}  // namespace quarterturn
