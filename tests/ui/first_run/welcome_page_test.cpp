#include "ui/first_run/welcome_page.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/indexer/backup/backup_fixture.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/new_library_part.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

class WelcomePageTest : public testing::Test {
  protected:
    WelcomePageTest() {
        page.resize(1280, 800);
        show_active(page);
    }
    void press(const QString& text) {
        for (auto* button : page.findChildren<QPushButton*>()) {
            if (button->text() == text) QTest::mouseClick(button, Qt::LeftButton);
        }
    }
    QLineEdit* folder_field() { return page.findChild<QLineEdit*>(); }

    TemporaryFolder folder;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    WelcomePage page{session};
};

TEST_F(WelcomePageTest, StartsANewLibraryInTheFolderNamed) {
    folder_field()->setText(QString::fromStdString((folder / "mine").native()));
    press(QStringLiteral("Start here"));
    EXPECT_TRUE(session.is_open());
    EXPECT_TRUE(std::filesystem::exists(folder / "mine" / "records.sqlite"));
}

TEST_F(WelcomePageTest, ProposesTheFolderInWhichQturnLooks) {
    EXPECT_EQ(Path(folder_field()->text().toStdString()), NewLibraryPart::proposed_folder());
    EXPECT_EQ(NewLibraryPart::proposed_folder().filename(), "Quarterturn");
    EXPECT_EQ(NewLibraryPart::proposed_folder().parent_path().string(), std::getenv("HOME"));
}

TEST_F(WelcomePageTest, SaysWhyAFolderCannotBeUsed) {
    std::filesystem::create_directories(folder / "full" / "something");
    folder_field()->setText(QString::fromStdString((folder / "full").native()));
    press(QStringLiteral("Start here"));
    EXPECT_FALSE(session.is_open());
    auto* notice = page.findChild<NewLibraryPart*>()->findChild<Notice*>();
    EXPECT_TRUE(notice->isVisible());
    EXPECT_FALSE(notice->said().isEmpty());
}

TEST_F(WelcomePageTest, MakesALibraryAgainFromABackupAndOpensIt) {
    BackupTest lost;
    lost.back_up_to(lost.drive);
    page.restore_or_ask(lost.drive, folder / "again");
    ASSERT_TRUE(QTest::qWaitFor([this] { return session.is_open(); }, 20000));
    EXPECT_EQ(session.library().folder(), folder / "again");
    EXPECT_EQ(session.library().photos().all().size(), 3U);
}

TEST_F(WelcomePageTest, SaysWhyAFolderIsNoBackup) {
    page.restore_or_ask(folder / "nothing", folder / "again");
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            for (auto* each : page.findChildren<Notice*>()) {
                if (each->isVisible() && each->said().contains("nothing")) return true;
            }
            return false;
        },
        20000));
    EXPECT_FALSE(session.is_open());
}

TEST_F(WelcomePageTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(page), QStringList());
}

}  // namespace
}  // namespace quarterturn
