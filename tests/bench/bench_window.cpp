// bench_window FOLDER [WHAT]: opens the library in FOLDER in the window offscreen and prints a line
// for each thing she does there, in milliseconds until it is painted, the median and the 95th
// percentile, each time about another client, look or word; and at last how much memory the window
// takes then. Photos are tagged, which is undone. WHAT, a
// part of a line, has only such lines measured.

#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <fstream>
#include <iostream>
#include <random>

#include "app/quarterturn/screens.h"
#include "indexer/disk/clock.h"
#include "indexer/intake/threads.h"
#include "indexer/looks/pairs.h"
#include "indexer/worker/confined.h"
#include "ui/all_photos/photo_shelves.h"
#include "ui/pairs/fact_section.h"
#include "ui/pairs/wall_of_pairs.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr QSize window_size{1280, 800};
constexpr int repeats = 30;
constexpr int frames = 100;
constexpr int scrolled_by = 97;  // pixels from frame to frame
constexpr int arrows_in_a_row = 4;

using Work = std::function<void(int)>;

void print_line(const char* what, std::vector<double> times) {
    std::ranges::sort(times);
    std::cout << what << '\t' << times[times.size() / 2] << '\t' << times[times.size() * 95 / 100]
              << std::endl;
}

template <class Records>
auto one_of(const Records& records, int number) {
    return records[static_cast<std::size_t>(number) % records.size()];
}

class AtWork {
  public:
    AtWork(Session& session, MainWindow& window, QString only)
        : session_(session), window_(window), only_(std::move(only)) {
        for (const Client& client : library().clients().all()) clients_.push_back(client.id);
        looks_ = library().looks().all();
        std::ranges::shuffle(clients_, random_);
        std::ranges::shuffle(looks_, random_);
        // Those that are still to come have no photos.
        std::erase_if(looks_, [&](const Look& look) {
            const auto sitting = library().sittings().find(look.sittings.front());
            return sitting->starts > session_.now();
        });
    }

    void measure_all() {
        measure("opening the library", nothing, [&](int) { Library::open(library().folder()); });
        measure("what's coming up", away(Moment::settings),
                [&](int) { go_to({.moment = Moment::coming_up}); });
        measure("a client's record", nothing, [&](int i) {
            go_to({.moment = Moment::client_record, .client = one_of(clients_, i)});
        });
        measure("coverage of a look", nothing,
                [&](int i) { go_to({.moment = Moment::sign_off, .look = one_of(looks_, i).id}); });
        measure_all_photos();
        measure_pairs();
        measure_round_the_head();
    }

  private:
    static void nothing(int) {}

    Library& library() { return session_.library(); }

    Work away(Moment moment) {
        return [this, moment](int) {
            go_to({.moment = moment});
            paint();
        };
    }

    void go_to(const Place& place) { window_.go_to(place); }

    void paint() {
        QApplication::processEvents();
        window_.repaint();
        QApplication::processEvents();
    }

    void let_pictures_come() {
        QTest::qWait(600);
        paint();
    }

    double milliseconds_of(const Work& work, int number) {
        QElapsedTimer timer;
        timer.start();
        work(number);
        paint();
        return static_cast<double>(timer.nsecsElapsed()) / 1e6;
    }

    bool is_wanted(const char* what) const { return QString::fromUtf8(what).contains(only_); }

    void measure(const char* what, const Work& before, const Work& work) {
        if (!is_wanted(what)) return;
        std::vector<double> times;
        for (int i = -1; i < repeats; ++i) {
            before(i + 1);
            const double took = milliseconds_of(work, i + 1);
            if (i >= 0) times.push_back(took);  // the first time makes the screen
            QTest::qWait(5);
        }
        print_line(what, times);
    }

    template <class View>
    void measure_scrolling(const char* what, Moment moment) {
        if (!is_wanted(what)) return;
        go_to({.moment = moment});
        let_pictures_come();
        auto* view = window_.findChild<View*>();
        std::vector<double> times;
        for (int i = 0; i < frames; ++i) {
            times.push_back(milliseconds_of(
                [&](int frame) { view->verticalScrollBar()->setValue(frame * scrolled_by); }, i));
            QTest::qWait(8);
        }
        print_line(what, times);
        view->verticalScrollBar()->setValue(0);
    }

    void measure_all_photos() {
        measure("all photos", away(Moment::settings),
                [&](int) { go_to({.moment = Moment::all_photos}); });
        measure_scrolling<PhotoShelves>("a frame while scrolling all photos", Moment::all_photos);
        go_to({.moment = Moment::all_photos});
        auto* field = window_.screen(Moment::all_photos)->findChild<QLineEdit*>();
        const auto type = [&](const QString& words) {
            field->setText(words);
            QTest::keyClick(field, Qt::Key_Return);
        };
        measure("a word of one client", nothing, [&](int i) {
            type(QString::fromStdString(library().clients().find(one_of(clients_, i))->name));
        });
        const QStringList words{"comb", "ribbon", "veil", "flowers"};
        measure("a word of a quarter of all photos", nothing,
                [&](int i) { type(one_of(words, i)); });
        type({});
    }

    void measure_pairs() {
        measure("before and after", away(Moment::settings),
                [&](int) { go_to({.moment = Moment::before_and_after}); });
        const PairId pair = library().pairs().all().front().id;
        measure(
            "before and after, after a change",
            [&](int i) {
                away(Moment::settings)(i);
                refuse(library(), pair, i % 2 == 1);
            },
            [&](int) { go_to({.moment = Moment::before_and_after}); });
        refuse(library(), pair, false);
        measure_scrolling<WallOfPairs>("a frame while scrolling pairs", Moment::before_and_after);
        go_to({.moment = Moment::before_and_after});
        paint();
        QList<FilterValue*> values =
            window_.screen(Moment::before_and_after)->findChildren<FilterValue*>();
        values.removeIf([](FilterValue* value) { return !value->isVisible(); });
        // Ticked one after the other, and let go again.
        measure("a filter of pairs, with its counts", nothing,
                [&](int i) { one_of(values, i / 2)->click(); });
    }

    void measure_round_the_head() {
        const char* what = "a key to the next photo";
        if (!is_wanted(what)) return;
        const std::array arrows{Qt::Key_Up, Qt::Key_Left, Qt::Key_Down, Qt::Key_Right};
        std::vector<double> times;
        for (int round = 0; round < repeats / arrows_in_a_row + 1; ++round) {
            go_to({.moment = Moment::round_the_head, .look = one_of(looks_, round).id});
            let_pictures_come();
            for (const Qt::Key arrow : arrows) {
                times.push_back(milliseconds_of(
                    [&](int) { QTest::keyClick(window_.windowHandle(), arrow); }, 0));
                QTest::qWait(5);
            }
            for (int i = 0; i < arrows_in_a_row; ++i) session_.undo();
        }
        print_line(what, times);
    }

    Session& session_;
    MainWindow& window_;
    QString only_;
    std::mt19937 random_{20261107};
    std::vector<ClientId> clients_;
    std::vector<Look> looks_;
};

// Its share of what it has in common with other processes counted.
void print_memory() {
    std::ifstream memory("/proc/self/smaps_rollup");
    for (std::string word; memory >> word;) {
        double kib = 0;
        if (word == "Pss:" && memory >> kib) {
            std::cout << "memory after all of this, MiB\t" << kib / 1024 << "\t\n";
        }
    }
}

int run(const Path& folder, const QString& only) {
    const auto decoder = make_confined_decoder();
    Session session(real_file_system(), *decoder, local_now);
    MainWindow window(session, all_screens(), [](Session&) { return new QWidget; });
    const QString problem = session.open(folder);
    if (!problem.isEmpty()) {
        std::cerr << problem.toStdString() << '\n';
        return 1;
    }
    window.resize(window_size);
    window.show();
    (void)QTest::qWaitForWindowActive(&window);
    AtWork(session, window, only).measure_all();
    print_memory();
    return 0;
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    if (argc != 2 && argc != 3) {
        std::cerr << "Usage: bench_window FOLDER [WHAT]\n";
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    const quarterturn::OneThreadEach one_thread_each;
    QApplication application(argc, argv);
    quarterturn::apply_theme(application, {});
    return quarterturn::run(argv[1], QString::fromLocal8Bit(argc == 3 ? argv[2] : ""));
}
