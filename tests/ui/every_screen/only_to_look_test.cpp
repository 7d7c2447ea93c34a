// The real window on a library that may not be changed.

#include <gtest/gtest.h>
#include <unistd.h>

#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include "app/quarterturn/screens.h"
#include "indexer/worker/photo_decoder.h"
#include "tests/support/example_library.h"
#include "ui/first_run/demo.h"
#include "ui/first_run/welcome_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"
#include "ui/shell/standing_notice.h"

namespace quarterturn {
namespace {

using std::filesystem::perms;

constexpr auto of_a_demo = LocalTime(std::chrono::hours(6) + std::chrono::days(20764));
constexpr auto all_may_read = perms::owner_read | perms::group_read | perms::others_read;
constexpr auto all_may_enter = perms::owner_exec | perms::group_exec | perms::others_exec;

// Everybody may read the folder while this lives, and nobody who is not root change it.
class ToRead {
  public:
    explicit ToRead(const Path& folder) : folder_(folder) { allow(perms::none); }
    ~ToRead() { allow(perms::owner_write); }
    ToRead(const ToRead&) = delete;
    ToRead& operator=(const ToRead&) = delete;

  private:
    void allow(perms more) const {
        std::filesystem::permissions(folder_, all_may_read | all_may_enter | more);
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder_)) {
            const perms enter = entry.is_directory() ? all_may_enter : perms::none;
            std::filesystem::permissions(entry.path(), all_may_read | enter | more);
        }
    }

    Path folder_;
};

// Permissions mean nothing to root.
class NoRoot {
  public:
    NoRoot() : was_root_(::geteuid() == 0) {
        if (was_root_) is_none_ = ::seteuid(65534) == 0;
    }
    ~NoRoot() {
        if (was_root_ && is_none_) is_none_ = ::seteuid(0) != 0;
    }
    NoRoot(const NoRoot&) = delete;
    NoRoot& operator=(const NoRoot&) = delete;
    bool is_none() const { return is_none_; }

  private:
    bool was_root_;
    bool is_none_ = true;
};

TEST(OnlyToLook, EveryScreenShowsTheLibraryAndAChangeIsRefusedWithTheReason) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    const auto pictures = make_local_decoder();
    PhotoDecoder decoder(*pictures);
    {
        Library library = Library::create(place);
        fill_with_demo(library, decoder, find_demo_photos().value(), of_a_demo, {}, {});
    }
    const ToRead to_read(folder.path());
    const NoRoot no_root;
    if (!no_root.is_none()) GTEST_SKIP() << "The system lets us be nobody else.";
    Session session(real_file_system(), decoder, [] { return of_a_demo; });
    MainWindow window(session, all_screens(),
                      [](Session& s) -> QWidget* { return new WelcomePage(s); });
    window.resize(1280, 800);
    window.show();
    QSignalSpy said(&session, &Session::said);
    ASSERT_EQ(session.open(place), QString());
    EXPECT_TRUE(session.standing_words().contains(QStringLiteral("may not be changed")));
    EXPECT_TRUE(window.findChild<StandingNotice*>()->isVisible());
    for (const ScreenEntry& entry : all_screens()) {
        window.go_to({.moment = entry.moment});
        EXPECT_TRUE(QTest::qWaitFor([&] { return !session.work(); }, 60000));
        for (const auto& sentence : said) {
            ADD_FAILURE() << qPrintable(entry.title + QStringLiteral(": ") +
                                        sentence[0].toString());
        }
        said.clear();
    }
    window.go_to({.moment = Moment::before_and_after});
    const auto labels = window.screen(Moment::before_and_after)->findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() && label->text().contains("here nothing can be written");
    })) << "pairs of the demo are made when they are first listed";
    const std::size_t clients = session.library().clients().all().size();
    EXPECT_FALSE(session.change_records(
        {"added her", [](Library& l) { l.clients().add(client_called("Ada Vale")); }}));
    ASSERT_EQ(said.size(), 1);
    EXPECT_TRUE(said[0][0].toString().contains(QStringLiteral("may not be changed")));
    EXPECT_EQ(session.library().clients().all().size(), clients);
}

}  // namespace
}  // namespace quarterturn
