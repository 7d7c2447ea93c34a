// Every screen in the real window as she meets it beyond what the screens' own tests show: with the
// demo's photos and with nothing, in both moods, with the largest text, and from right to left.

#include <gtest/gtest.h>

#include <QApplication>
#include <QTest>

#include "app/quarterturn/screens.h"
#include "indexer/intake/sort.h"
#include "indexer/looks/sign_off.h"
#include "indexer/worker/photo_decoder.h"
#include "tests/support/example_library.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/bringing_in/settle_part.h"
#include "ui/first_run/demo.h"
#include "ui/first_run/welcome_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"

namespace quarterturn {
namespace {

struct Circumstances {
    const char* called;
    Theme theme;
    Qt::LayoutDirection direction = Qt::LeftToRight;
};

class EveryScreenTest : public testing::TestWithParam<Circumstances> {
  protected:
    static void SetUpTestSuite() {
        demo_folder = std::make_unique<TemporaryFolder>();
        const auto pictures = make_local_decoder();
        PhotoDecoder decoder(*pictures);
        Library library = Library::create(*demo_folder / "demo");
        fill_with_demo(library, decoder, find_demo_photos().value(), early, {}, {});
        signed_look = library.looks().named("Low twisted bun, leaf comb").front().id;
        ASSERT_TRUE(sign_off(library, signed_look, early).empty());
        Library::create(*demo_folder / "empty");
        std::filesystem::copy(*demo_folder / "demo", *demo_folder / "waiting",
                              std::filesystem::copy_options::recursive);
        Library waiting = Library::open(*demo_folder / "waiting");
        while (undo(waiting)) continue;  // until nothing is said of any photo
    }
    static void TearDownTestSuite() { demo_folder.reset(); }

    EveryScreenTest() {
        QApplication::setLayoutDirection(GetParam().direction);
        apply_theme(*qApp, GetParam().theme);
    }
    ~EveryScreenTest() override {
        QApplication::setLayoutDirection(Qt::LeftToRight);
        apply_theme(*qApp, {});
    }

    // With what was open before, the first run's page.
    QStringList problems(const Path& library) {
        MainWindow window(session, all_screens(),
                          [](Session& s) -> QWidget* { return new WelcomePage(s); });
        window.resize(laptop);
        if (library.empty()) return problems_of(window, QStringLiteral("first run"));
        EXPECT_EQ(session.open(library), QString());
        QStringList found;
        for (const ScreenEntry& entry : all_screens()) {
            window.go_to({.moment = entry.moment});
            EXPECT_TRUE(QTest::qWaitFor([&] { return all_is_there(window); }, 60000))
                << entry.title.toStdString();
            found += problems_of(window, entry.title);
        }
        return found;
    }

    // What came last finds its place in a few rounds of the layout: what is wrong stays wrong.
    static QStringList problems_of(MainWindow& window, const QString& screen) {
        QStringList found;
        (void)QTest::qWaitFor(
            [&] {
                found = problems_with(window);
                return found.isEmpty();
            },
            10000);
        if (window.size() != laptop) {
            found << QStringLiteral("needs %1 by %2 px").arg(window.width()).arg(window.height());
            window.resize(laptop);
        }
        found += too_large(window);
        for (QString& problem : found) problem = screen + QStringLiteral(": ") + problem;
        return found;
    }

    // Whatever the size of the text.
    static QStringList too_large(MainWindow& window) {
        window.resize(small_laptop);
        QApplication::processEvents();
        QStringList found;
        (void)QTest::qWaitFor(
            [&] {
                found = wider_than_their_pages(window);
                return found.isEmpty();
            },
            5000);
        if (window.size() != small_laptop) {
            found << QStringLiteral("is %1 by %2 px at least")
                         .arg(window.width())
                         .arg(window.height());
        }
        window.resize(laptop);
        QApplication::processEvents();
        return found;
    }

    static constexpr QSize laptop{1280, 800};
    static constexpr QSize small_laptop{1024, 640};
    static constexpr auto early = LocalTime(std::chrono::hours(6) + std::chrono::days(20764));
    static inline std::unique_ptr<TemporaryFolder> demo_folder;
    static inline LookId signed_look;

    std::unique_ptr<Decoder> pictures = make_local_decoder();
    PhotoDecoder decoder{*pictures};
    Session session{real_file_system(), decoder, [] { return early; }};

  private:
    // What is found or drawn on a thread of its own has come, in every library but the empty one.
    bool all_is_there(MainWindow& window) {
        if (session.work()) return false;
        if (window.moment() != Moment::bringing_in) return true;
        return session.library().photos().all().empty() ||
               window.findChild<SettlePart*>()->isVisible();
    }
};

TEST_P(EveryScreenTest, HasNoProblemsOnTheFirstRun) {
    EXPECT_EQ(problems({}), QStringList());
}

TEST_P(EveryScreenTest, HasNoProblemsWithNothing) {
    EXPECT_EQ(problems(*demo_folder / "empty"), QStringList());
}

TEST_P(EveryScreenTest, HasNoProblemsWithTheDemo) {
    EXPECT_EQ(problems(*demo_folder / "demo"), QStringList());
}

TEST_P(EveryScreenTest, HasNoProblemsWithPhotosThatWait) {
    EXPECT_EQ(problems(*demo_folder / "waiting"), QStringList());
}

TEST_P(EveryScreenTest, HasNoProblemsWithALookThatIsSignedOff) {
    session.open(*demo_folder / "demo");
    session.choose_look(signed_look);
    MainWindow window(session, all_screens(), [](Session&) { return new QWidget; });
    window.resize(laptop);
    window.go_to({.moment = Moment::sign_off, .look = signed_look});
    EXPECT_EQ(problems_of(window, QStringLiteral("signed off")), QStringList());
}

TEST_P(EveryScreenTest, ASignOffAndTheBoardOfEveryClientAreReadWholeInASmallWindow) {
    session.open(*demo_folder / "demo");
    MainWindow window(session, all_screens(), [](Session&) { return new QWidget; });
    window.resize(small_laptop);
    window.show();
    std::vector<Place> places{{.moment = Moment::sign_off}};
    for (const Client& client : session.library().clients().all()) {
        places.push_back({.moment = Moment::wedding_morning, .client = client.id});
    }
    for (const Place& place : places) {
        window.go_to(place);
        QStringList found;
        (void)QTest::qWaitFor(
            [&] {
                show_active(window);
                found = wider_than_their_pages(window) + clipped_text(window);
                return found.isEmpty();
            },
            5000);
        EXPECT_EQ(found, QStringList());
        EXPECT_EQ(window.size(), small_laptop);
    }
}

INSTANTIATE_TEST_SUITE_P(As, EveryScreenTest,
                         testing::Values(Circumstances{"usual", {}},
                                         Circumstances{"dawn", {.mood = Mood::dawn}},
                                         Circumstances{"largest", {.text_size = TextSize::largest}},
                                         Circumstances{"dawn_largest_right_to_left",
                                                       {Mood::dawn, TextSize::largest},
                                                       Qt::RightToLeft}),
                         [](const auto& tested) { return std::string(tested.param.called); });

}  // namespace
}  // namespace quarterturn
