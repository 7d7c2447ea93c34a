#include <sys/stat.h>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/first_run/unlock_part.h"
#include "ui/first_run/welcome_page.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

constexpr auto passphrase = "seven owls below the granary";

class UnlockTest : public testing::Test {
  protected:
    UnlockTest() {
        { const Library made = Library::create(library); }
        lock = new_lock(passphrase, least_guess_cost());
        lock_library(real_file_system(), library, lock, {});
        key_ring::forget(library);
        page.resize(1280, 800);
        show_active(page);
        page.open_or_ask(library);
    }
    ~UnlockTest() override { key_ring::forget(library); }

    UnlockPart& part() { return *page.findChild<UnlockPart*>(); }
    void press(const QString& text) {
        for (auto* button : part().findChildren<QPushButton*>()) {
            if (button->text() == text) QTest::mouseClick(button, Qt::LeftButton);
        }
    }
    void type(const std::string& words) {
        part().findChild<QLineEdit*>()->setText(QString::fromStdString(words));
        press(QStringLiteral("Open it"));
    }

    TemporaryFolder folder;
    Path library = folder / "library";
    NewLock lock;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    WelcomePage page{session};
};

TEST_F(UnlockTest, OpensWithThePassphrase) {
    EXPECT_FALSE(session.is_open());
    type(passphrase);
    EXPECT_TRUE(QTest::qWaitFor([this] { return session.is_open(); }));
}

TEST_F(UnlockTest, SaysThatItWasAnotherAndAsksAgain) {
    type("nine herons over the weir");
    auto* notice = page.findChild<Notice*>();
    EXPECT_TRUE(QTest::qWaitFor([&] { return part().isVisible() && notice->isVisible(); }));
    EXPECT_TRUE(notice->said().startsWith(QStringLiteral("That is not the passphrase")));
    EXPECT_FALSE(session.is_open());
    type(passphrase);
    EXPECT_TRUE(QTest::qWaitFor([this] { return session.is_open(); }));
}

TEST_F(UnlockTest, OpensWithTheRecoveryKey) {
    press(QStringLiteral("I have only the recovery key"));
    type(lock.recovery_key);
    EXPECT_TRUE(QTest::qWaitFor([this] { return session.is_open(); }));
}

TEST_F(UnlockTest, SaysThatLockingWasInterruptedAndGoesOn) {
    const auto told = [this] {
        return std::ranges::any_of(part().findChildren<QLabel*>(), [](const QLabel* label) {
            return label->text().contains(QStringLiteral("was interrupted"));
        });
    };
    EXPECT_FALSE(told());
    LockFile half_done = read_lock(real_file_system(), library).value();
    half_done.state = LockState::locking;
    write_lock(real_file_system(), library, half_done);
    page.open_or_ask(library);
    EXPECT_TRUE(told());
    EXPECT_EQ(problems_at_all_sizes(page), QStringList());
    type(passphrase);
    EXPECT_TRUE(QTest::qWaitFor([this] { return session.is_open(); }));
    EXPECT_EQ(read_lock(real_file_system(), library)->state, LockState::locked);
}

TEST_F(UnlockTest, SaysWhatCouldNotBeLockedWhenItGoesOn) {
    LockFile half_done = read_lock(real_file_system(), library).value();
    half_done.state = LockState::locking;
    write_lock(real_file_system(), library, half_done);
    ASSERT_EQ(::mkfifo((library / "photos" / "pipe").c_str(), 0600), 0);
    page.open_or_ask(library);
    QSignalSpy said(&session, &Session::said);
    type(passphrase);
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.is_open() && !said.isEmpty(); }));
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().at(0).toString().contains(QStringLiteral("no ordinary file")));
}

TEST_F(UnlockTest, LeadsBackToTheLockWithWhatBecameOfIt) {
    key_ring::add(library, lock.keys);
    ASSERT_EQ(session.open(library), QString());
    QSignalSpy asked(&session, &Session::asked_for);
    session.close_for({.title = QStringLiteral("At work"),
                       .library = library,
                       .work = [](Job&) { return QStringLiteral("It is done."); },
                       .of_lock = true});
    QCoreApplication::processEvents();
    ASSERT_FALSE(session.is_open());
    WelcomePage standing_there(session);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !asked.isEmpty(); }));
    const auto place = asked.value(0).value(0).value<Place>();
    EXPECT_EQ(place.moment, Moment::settings);
    EXPECT_EQ(place.of_lock, QStringLiteral("It is done."));
}

TEST_F(UnlockTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(page), QStringList());
}

}  // namespace
}  // namespace quarterturn
