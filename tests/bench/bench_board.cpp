// bench_board LIBRARY DAY WIDTHxHEIGHT: opens the library in the window offscreen as on the day of
// a wedding, waits until every photo of the first client on the board is as sharp as its box, and
// ends. Prints how many photos those are and the longest edge asked for, in pixels.

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <iostream>

#include "indexer/worker/confined.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_photos.h"
#include "ui/wedding_morning/wedding_morning_screen.h"

namespace quarterturn {
namespace {

std::vector<ScreenEntry> only_the_board() {
    return {{Moment::wedding_morning, QStringLiteral("The wedding morning"),
             [](Session& session) -> Screen* { return new WeddingMorningScreen(session); }}};
}

bool readable(Session& session, const BoardPhotos& photos) {
    const auto wishes = photos.wishes();
    return !wishes.empty() && std::ranges::all_of(wishes, [&](const PictureWish& wish) {
        return session.pictures().is_at_hand(wish.photo.id, wish.long_edge);
    });
}

int run(const Path& library, Date day, QSize size) {
    const auto decoder = make_confined_decoder();
    Session session(real_file_system(), *decoder,
                    [day] { return LocalTime(std::chrono::local_days(day)); });
    MainWindow window(session, only_the_board(), [](Session&) { return new QWidget; });
    const QString problem = session.open(library);
    if (!problem.isEmpty()) {
        std::cerr << problem.toStdString() << '\n';
        return 1;
    }
    window.resize(size);
    window.show();
    const auto* photos = window.findChild<BoardPhotos*>();
    if (!QTest::qWaitFor([&] { return readable(session, *photos); }, 60000)) return 1;
    window.repaint();
    int edge = 0;
    for (const PictureWish& wish : photos->wishes()) edge = std::max(edge, wish.long_edge);
    std::cout << photos->wishes().size() << ' ' << edge << '\n';
    std::cout.flush();
    std::_Exit(0);  // what is fetched ahead for the next client is no part of it
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    const auto day = argc == 4 ? quarterturn::parse_date(argv[2]) : std::nullopt;
    const QStringList sides = QString::fromUtf8(argc == 4 ? argv[3] : "").split('x');
    if (!day || sides.size() != 2) {
        std::cerr << "Usage: bench_board LIBRARY DAY WIDTHxHEIGHT\n";
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    quarterturn::apply_theme(application, {});
    return quarterturn::run(argv[1], *day, {sides[0].toInt(), sides[1].toInt()});
}
