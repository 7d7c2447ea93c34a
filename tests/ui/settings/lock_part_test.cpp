// The lock in the settings, on a real library that is locked.

#include "ui/settings/lock_part.h"

#include <QApplication>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/support/files.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/lock_work.h"

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
    void type(const QString& field, const std::string& words) {
        for (auto* each : part->findChildren<QLineEdit*>()) {
            if (each->isVisible() && each->accessibleName().startsWith(field)) {
                each->setText(QString::fromStdString(words));
            }
        }
    }
    void type_former(const std::string& words) {
        type(QStringLiteral("Passphrase or recovery key"), words);
    }
    void click(const char* button) { seen(QString::fromLatin1(button))->click(); }
    bool comes_to_say(const char* words) {
        return QTest::qWaitFor([&] { return says(QString::fromLatin1(words)); });
    }
    bool opens_with(const std::string& words) {
        try {
            return keys_from(*read_lock(real_file_system(), library), words) != nullptr;
        } catch (const LockError&) {
            return false;
        }
    }
    QString said_by_closed_work() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }));
        const auto work = session.take_closed_work();
        if (!work) return {};
        QString said;
        Job job([&](Job& self) { return [&said, words = work->work(self)] { said = words; }; });
        QSignalSpy ended(&job, &Job::ended);
        EXPECT_TRUE(ended.wait());
        return said;
    }
    // Unlocked for good, but for the one photo.
    void unlock_but_for_the_photo() {
        const Path photo = sealed_photo();
        std::filesystem::rename(photo, folder / "elsewhere");
        unlock_for_good(real_file_system(), library, lock.keys, {});
        ASSERT_TRUE(read_left_lock(real_file_system(), library));
        std::filesystem::create_directories(photo.parent_path());
        std::filesystem::rename(folder / "elsewhere", photo);
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
    type_former(passphrase);
    click("Unlock for good");
    click("Take the lock off");
    EXPECT_TRUE(closing.wait());
    EXPECT_EQ(said_by_closed_work(), QStringLiteral("The library is not locked any longer."));
    EXPECT_FALSE(read_lock(real_file_system(), library));
}

TEST_F(LockPartTest, ChangesNothingWithoutTheWordsThatOpenIt) {
    shown();
    QSignalSpy closing(&session, &Session::closing);
    click("Unlock for good");
    for (const auto* field : {"New passphrase", "The same"}) {
        type(QString::fromLatin1(field), "nine herons over the weir");
    }
    for (const auto* button : {"Change the passphrase", "New recovery key…", "Take the lock off"}) {
        type_former({});
        seen(QString::fromUtf8(button))->click();
        EXPECT_TRUE(says(QStringLiteral("This needs the passphrase or the recovery key")));
        EXPECT_EQ(session.work(), nullptr);
        type_former("ten wrens in the hedgerow");
        seen(QString::fromUtf8(button))->click();
        EXPECT_TRUE(comes_to_say("That is not the passphrase")) << button;
        EXPECT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }));
    }
    EXPECT_EQ(problems_at_all_sizes(*part), QStringList());
    EXPECT_TRUE(closing.isEmpty());
    EXPECT_TRUE(opens_with(passphrase));
    EXPECT_TRUE(opens_with(lock.recovery_key));
}

TEST_F(LockPartTest, ChangesThePassphraseWithTheRecoveryKey) {
    shown();
    for (const auto* field : {"New passphrase", "The same"}) {
        type(QString::fromLatin1(field), "nine herons over the weir");
    }
    type_former(lock.recovery_key);
    click("Change the passphrase");
    EXPECT_TRUE(comes_to_say("The passphrase is changed."));
    EXPECT_TRUE(opens_with("nine herons over the weir"));
    EXPECT_FALSE(opens_with(passphrase));
}

TEST_F(LockPartTest, MakesANewRecoveryKeyForWhoKnowsThePassphrase) {
    shown();
    QTimer chooses;
    QObject::connect(&chooses, &QTimer::timeout, [this] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr) return;
        dialog->selectFile(QString::fromStdString((folder / "key.pdf").native()));
        static_cast<QDialog*>(dialog)->accept();
    });
    chooses.start(20);
    type_former(passphrase);
    seen(QStringLiteral("New recovery key…"))->click();
    EXPECT_TRUE(comes_to_say("Saved:"));
    EXPECT_TRUE(std::filesystem::exists(folder / "key.pdf"));
    EXPECT_TRUE(opens_with(passphrase));
    EXPECT_FALSE(opens_with(lock.recovery_key));
}

TEST_F(LockPartTest, TakesNoWordsOfAnotherLockThatLiesThereNow) {
    shown();
    const NewLock another = new_lock(passphrase, least_guess_cost());
    QSignalSpy closing(&session, &Session::closing);
    click("Unlock for good");
    type_former(passphrase);
    write_lock(real_file_system(), library, another.file);
    click("Take the lock off");
    EXPECT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }));
    EXPECT_TRUE(closing.isEmpty());
    EXPECT_FALSE(session.take_closed_work());
}

TEST_F(LockPartTest, GoesOnWithWhatStayedLocked) {
    unlock_but_for_the_photo();
    shown();
    EXPECT_TRUE(says(QStringLiteral("some of the library stayed locked")));
    EXPECT_EQ(problems_at_all_sizes(*part), QStringList());
    QSignalSpy closing(&session, &Session::closing);
    type_former(lock.recovery_key);
    click("Unlock for good");
    EXPECT_TRUE(closing.wait());
    EXPECT_EQ(said_by_closed_work(), QStringLiteral("The library is not locked any longer."));
    EXPECT_FALSE(read_left_lock(real_file_system(), library));
    EXPECT_EQ(text_of(library / "photos/2026/one.jpg"), "one.jpg");
}

TEST(LockWork, TellsAReasonOnceWhereItHoldsForManyFiles) {
    LockReport report;
    EXPECT_EQ(said_of(report, QStringLiteral("Done.")), QStringLiteral("Done."));
    for (int number = 1; number <= 41; ++number) {
        const Path file = "/library/photos/" + std::to_string(number) + ".jpg";
        report.problems.push_back({file, file.string() + " may not be read: allow it."});
    }
    EXPECT_EQ(said_of(report, QStringLiteral("Done.")),
              QStringLiteral("Done.\nEach of /library/photos/1.jpg and 40 other files may not be "
                             "read: allow it.\nqturn lock status names each file that was left."));
}

TEST_F(LockPartTest, SaysBesideTheFieldThatWhatStayedLockedHadAnotherPassphrase) {
    unlock_but_for_the_photo();
    shown();
    QSignalSpy closing(&session, &Session::closing);
    for (const auto& [words, answer] :
         {std::pair{"", "This needs the passphrase or the recovery key"},
          std::pair{"ten wrens in the hedgerow", "That is not the passphrase"}}) {
        type_former(words);
        click("Unlock for good");
        EXPECT_TRUE(comes_to_say(answer));
        EXPECT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }));
    }
    EXPECT_TRUE(closing.isEmpty());
    EXPECT_TRUE(session.is_open());
}

}  // namespace
}  // namespace quarterturn
