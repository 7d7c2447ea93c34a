// bench_window FOLDER COUNT: makes a library of COUNT photos in FOLDER, opens it in the window
// offscreen and prints one line of milliseconds: first paint of all photos, then the middle and the
// 95th of a hundred frames while scrolling, then, going round the head, from a key to the next
// photo shown (the middle of twenty), then looking for a word.

#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <iostream>
#include <opencv2/imgproc.hpp>

#include "indexer/intake/thumbnails.h"
#include "indexer/worker/confined.h"
#include "tests/support/many_photos.h"
#include "ui/all_photos/all_photos_screen.h"
#include "ui/all_photos/photo_shelves.h"
#include "ui/round_the_head/round_the_head_screen.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr QSize window_size{1280, 800};
constexpr int frames = 100;
constexpr int scrolled_by = 97;  // pixels from frame to frame
constexpr int keys = 20;
constexpr int pictures_drawn = 16;

double milliseconds(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

double at_share(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

// Every photo has its small picture: links to a few, as the window reads them all alike.
void make_small_pictures(Library& library, int count) {
    std::vector<Path> drawn;
    cv::RNG random{20261107};
    for (int i = 1; i <= count; ++i) {
        char name[65];
        std::snprintf(name, sizeof name, "%064x", static_cast<unsigned>(i));
        const Path file = thumbnail_file(library, name);
        if (i > pictures_drawn) {
            std::filesystem::create_directories(file.parent_path());
            std::filesystem::create_hard_link(drawn[static_cast<std::size_t>(i % pictures_drawn)],
                                              file);
            continue;
        }
        cv::Mat picture(512, 384, CV_8UC3);
        random.fill(picture, cv::RNG::UNIFORM, 40, 215);
        cv::GaussianBlur(picture, picture, {0, 0}, 3);
        keep_thumbnail(library, name, as_jpeg(picture));
        drawn.push_back(file);
    }
}

void paint(QWidget& screen) {
    screen.repaint();
    QApplication::processEvents();
}

void let_pictures_come(QWidget& screen) {
    for (int i = 0; i < 60; ++i) QTest::qWait(10);
    paint(screen);
}

double first_paint(AllPhotosScreen& screen) {
    QElapsedTimer timer;
    timer.start();
    screen.resize(window_size);
    screen.refresh();
    screen.show();
    paint(screen);
    return milliseconds(timer);
}

// Each frame is painted whole, so that a page with nothing to scroll over paints as much.
std::vector<double> scroll(QWidget& screen) {
    auto* shelves = screen.findChild<PhotoShelves*>();
    QScrollBar* bar = shelves->verticalScrollBar();
    std::vector<double> times;
    for (int i = 0; i < frames; ++i) {
        QElapsedTimer timer;
        timer.start();
        bar->setValue(i * scrolled_by);
        shelves->viewport()->repaint();
        QApplication::processEvents();
        times.push_back(milliseconds(timer));
        QTest::qWait(8);
    }
    return times;
}

double look_for(QWidget& screen, const QString& words) {
    auto* field = screen.findChild<QLineEdit*>();
    field->setText(words);
    QElapsedTimer timer;
    timer.start();
    QTest::keyClick(field, Qt::Key_Return);
    paint(screen);
    return milliseconds(timer);
}

double key_to_next_photo(Session& session) {
    RoundTheHeadScreen screen(session);
    QObject::connect(&session, &Session::records_changed, &screen, [&] { screen.refresh(); });
    screen.resize(window_size);
    screen.arrive({.moment = Moment::round_the_head, .look = LookId{1}});
    screen.refresh();
    screen.show();
    (void)QTest::qWaitForWindowActive(&screen);
    let_pictures_come(screen);
    std::vector<double> times;
    const std::array arrows{Qt::Key_Up, Qt::Key_Left, Qt::Key_Down, Qt::Key_Right};
    for (int i = 0; i < keys; ++i) {
        QElapsedTimer timer;
        timer.start();
        if (i % 5 == 4) {
            session.undo();  // so that photos never run out
            session.undo();
            session.undo();
            session.undo();
            continue;
        }
        QTest::keyClick(screen.windowHandle(), arrows[static_cast<std::size_t>(i) % 4]);
        paint(screen);
        times.push_back(milliseconds(timer));
        QTest::qWait(5);
    }
    return at_share(times, 0.5);
}

int run(const Path& folder, int count) {
    {
        Library library = Library::create(folder);
        fill_with_photos(library, count);
        make_small_pictures(library, count);
    }
    const auto decoder = make_confined_decoder();
    Session session(real_file_system(), *decoder, [] { return LocalTime{}; });
    const QString problem = session.open(folder);
    if (!problem.isEmpty()) {
        std::cerr << problem.toStdString() << '\n';
        return 1;
    }
    double first = 0;
    double found = 0;
    std::vector<double> scrolled;
    {
        AllPhotosScreen screen(session);
        first = first_paint(screen);
        let_pictures_come(screen);
        scrolled = scroll(screen);
        found = look_for(screen, QStringLiteral("comb"));
    }
    std::cout << first << ' ' << at_share(scrolled, 0.5) << ' ' << at_share(scrolled, 0.95) << ' '
              << key_to_next_photo(session) << ' ' << found << '\n';
    return 0;
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "Usage: bench_window FOLDER COUNT\n";
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    quarterturn::apply_theme(application, {});
    return quarterturn::run(argv[1], std::stoi(argv[2]));
}
