// quarterturn_shots: pictures of the real window, for the README and for looking at. Opens a
// library offscreen, goes to each moment and saves what stands there as OUT/<number>-<moment>.png.
//
//     quarterturn_shots --library DIR --today 2026-11-07 --out DIR [--size 1280x800]
//                       [--look NUMBER] [--mood dawn] [--text largest] [--right-to-left]
//                       [--board | --pairs | --consent]
//
// With --board it shows the board of a wedding alone as it fills a screen, each client of the party
// in turn, then one photo enlarged. With --pairs it shows the wall of pairs, one of them in each
// way, its client's progress, and it alone on the screen. With --consent it shows what a client
// allows, a form, her signature, and the parts of the portfolio.
//
// Without --library it shows the page of the first run. Set QT_SCALE_FACTOR for other scales.

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QSettings>
#include <QTemporaryDir>
#include <algorithm>
#include <functional>
#include <iostream>

#include "app/quarterturn/screens.h"
#include "indexer/image/decode.h"
#include "indexer/intake/threads.h"
#include "indexer/worker/confined.h"
#include "ui/consent/signature_pad.h"
#include "ui/first_run/welcome_page.h"
#include "ui/pairs/wall_of_pairs.h"
#include "ui/portfolio_screen/candidate_shelves.h"
#include "ui/portfolio_screen/export_part.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_photo.h"
#include "ui/wedding_morning/client_tile.h"
#include "ui/wedding_morning/wedding_morning_screen.h"
#include "ui/widgets/plain_english.h"

namespace quarterturn {
namespace {

constexpr int settling_ms = 1500;  // until the pictures on screen are sharp

void settle() {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settling_ms) QApplication::processEvents({}, 20);
}

QSize size_in(const QString& text) {
    const QStringList sides = text.split('x');
    return {sides.value(0).toInt(), sides.value(1).toInt()};
}

Theme theme_in(const QCommandLineParser& parser) {
    Theme theme;
    if (parser.value("mood") == "dawn") theme.mood = Mood::dawn;
    if (parser.value("text") == "large") theme.text_size = TextSize::large;
    if (parser.value("text") == "largest") theme.text_size = TextSize::largest;
    return theme;
}

void save(MainWindow& window, const QString& file) {
    settle();
    const bool saved = window.grab().save(file);
    std::cout << (saved ? "Saved " : "Could not save ") << file.toStdString() << "\n";
}

void save_all(MainWindow& window, Session& session, const QString& folder) {
    if (!session.is_open()) {
        save(window, folder + "/0-first-run.png");
        return;
    }
    int number = 1;
    for (const ScreenEntry& entry : all_screens()) {
        window.go_to({.moment = entry.moment});
        const QString name = entry.title.toLower().replace(' ', '-').remove('\'');
        save(window, QStringLiteral("%1/%2-%3.png").arg(folder).arg(number++).arg(name));
    }
}

void save_board(MainWindow& window, const QString& folder) {
    window.go_to({.moment = Moment::wedding_morning});
    auto* board = static_cast<WeddingMorningScreen*>(window.screen(Moment::wedding_morning));
    emit board->alone_asked(true);
    settle();
    const auto clients = board->findChildren<ClientTile*>();
    for (qsizetype i = 0; i < clients.size(); ++i) {
        clients[i]->click();
        save(window, QStringLiteral("%1/board-%2.png").arg(folder).arg(i + 1));
    }
    clients.front()->click();
    settle();
    for (auto* photo : board->findChildren<BoardPhoto*>()) {
        if (!photo->isVisible() || !photo->shot().photo) continue;
        photo->click();
        return save(window, folder + "/board-enlarged.png");
    }
}

void press(QWidget& screen, const QString& text) {
    for (auto* button : screen.findChildren<QAbstractButton*>()) {
        if (button->isVisible() && button->text() == text) return button->click();
    }
}

bool says(const QWidget& screen, const QString& text) {
    const auto labels = screen.findChildren<QLabel*>();
    return std::ranges::any_of(
        labels, [&](const QLabel* label) { return label->isVisible() && label->text() == text; });
}

// As long as it takes to lay and measure what is in view.
void wait_while_it_says(const QWidget& screen, const QString& text) {
    constexpr int most = 40;
    for (int i = 0; i < most && says(screen, text); ++i) settle();
}

void save_pairs(MainWindow& window, const QString& folder) {
    window.go_to({.moment = Moment::before_and_after});
    QWidget& screen = *window.screen(Moment::before_and_after);
    const auto save_as = [&](const char* name) {
        save(window, folder + "/pairs-" + name + ".png");
    };
    settle();
    settle();
    save_as("wall");
    press(screen, "low bun");
    save_as("filtered");
    press(screen, "Clear the filters");
    emit screen.findChild<WallOfPairs*>()->picked(1);
    wait_while_it_says(screen, "Being measured…");
    save_as("one");
    press(screen, "Sliding divide");
    save_as("divide");
    press(screen, "Cross-fade");
    save_as("fade");
    press(screen, "Set the heads by hand");
    save_as("points");
    press(screen, "Leave as it was");
    press(screen, "One picture of both…");
    save_as("picture");
    press(screen, "Back to the pair");
    press(screen, "Progress over time");
    settle();
    save_as("progress");
    press(screen, "Back to the pair");
    press(screen, "More like this");
    for (int i = 0; i < 10; ++i) settle();
    wait_while_it_says(screen, "Measuring the hair in the photos");
    save_as("like");
    press(screen, "Back to the pairs");
    press(screen, "For a client");
    save_as("client");
    press(screen, "Pictures from clients");
    for (int i = 0; i < 3; ++i) settle();
    save_as("kept");
    press(screen, "All pairs");
    press(screen, "Whole screen");
    settle();
    save_as("whole");
}

bool offers(const QWidget& screen, const QString& text) {
    const auto buttons = screen.findChildren<QAbstractButton*>();
    return std::ranges::any_of(buttons, [&](const QAbstractButton* button) {
        return button->isVisible() && button->text() == text;
    });
}

void save_hair_only(QWidget& portfolio, const std::function<void(const char*)>& save_as) {
    auto& shelves = *portfolio.findChild<CandidateShelves*>();
    const QString hair_only = QStringLiteral("Hair only…");
    const int rows = shelves.model()->rowCount();
    for (int i = 0; i < rows && !offers(portfolio, hair_only); ++i) {
        shelves.setCurrentIndex(shelves.model()->index(i, 0));
        QApplication::processEvents();
    }
    press(portfolio, hair_only);
    wait_while_it_says(portfolio, "Looking for the face…");
    save_as("hair-only");
    press(portfolio, "Draw a part");
    save_as("hair-only-drawn");
    press(portfolio, "Back to choosing");
}

void save_consent(MainWindow& window, const QString& folder) {
    const auto save_as = [&](const char* name) {
        save(window, folder + "/consent-" + name + ".png");
    };
    window.go_to({.moment = Moment::consent});
    QWidget& consent = *window.screen(Moment::consent);
    save_as("client");
    press(consent, "Grant…");
    save_as("form");
    press(consent, "Leave as it was");
    press(consent, "Sign on the screen");
    save_as("sign");
    auto& page = *consent.findChild<SignaturePad*>();
    for (QWidget* above = &page; above; above = above->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(above))
            area->ensureWidgetVisible(&page, 0, 300);
    }
    save_as("pad");
    window.go_to({.moment = Moment::portfolio});
    QWidget& portfolio = *window.screen(Moment::portfolio);
    for (int i = 0; i < 10; ++i) settle();
    save_as("nothing-chosen");
    auto& shelves = *portfolio.findChild<CandidateShelves*>();
    for (int i = 0; i < 4; ++i) {
        shelves.setCurrentIndex(shelves.model()->index(i, 0));
        emit shelves.picked(i);
        settle();
    }
    shelves.setCurrentIndex(shelves.model()->index(shelves.model()->rowCount() - 1, 0));
    save_as("lacking");
    shelves.setCurrentIndex(shelves.model()->index(1, 0));
    save_as("choosing");
    save_hair_only(portfolio, save_as);
    press(portfolio, "Sending out");
    save_as("sending");
    portfolio.findChild<ExportPart*>()->export_to(Path((folder + "/sent").toStdString()));
    for (int i = 0; i < 4; ++i) settle();
    save_as("sent");
    press(portfolio, "What went out");
    save_as("ledger");
    window.go_to({.moment = Moment::client_record});
    press(*window.screen(Moment::client_record), "Erase her…");
    save_as("erase");
}

int run(QApplication& application) {
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addOptions({{"library", "Library to show.", "folder"},
                       {"out", "Where the pictures go.", "folder", "."},
                       {"size", "Of the window.", "WxH", "1280x800"},
                       {"today", "The day it is in the pictures.", "date"},
                       {"look", "The look the screens are about.", "number"},
                       {"mood", "paper or dawn.", "mood"},
                       {"text", "normal, large or largest.", "size"},
                       {"right-to-left", "Mirror the layout."},
                       {"board", "The board of a wedding as it fills a screen."},
                       {"pairs", "The wall of pairs and what it leads to."},
                       {"consent", "What clients allow, and the portfolio."}});
    parser.process(application);
    if (parser.isSet("right-to-left")) QApplication::setLayoutDirection(Qt::RightToLeft);
    remember_theme(theme_in(parser));  // of these settings alone, see main()
    apply_theme(application, theme_in(parser));

    const auto day = parse_date(parser.value("today").toStdString());
    const Session::Clock clock = [day] {
        return LocalTime(std::chrono::local_days(day.value_or(Date{}))) + std::chrono::hours(8);
    };
    const auto decoder = make_confined_decoder();
    Session session(real_file_system(), *decoder, clock);
    MainWindow window(session, all_screens(),
                      [](Session& s) -> QWidget* { return new WelcomePage(s); });
    const QString library = parser.value("library");
    const QString problem =
        library.isEmpty() ? QString() : session.open(Path(library.toStdString()));
    if (!problem.isEmpty()) {
        std::cerr << problem.toStdString() << "\n";
        return 1;
    }
    if (parser.isSet("look")) session.choose_look(LookId{parser.value("look").toLongLong()});
    window.resize(size_in(parser.value("size")));
    window.show();
    QDir().mkpath(parser.value("out"));
    if (parser.isSet("board")) {
        save_board(window, parser.value("out"));
    } else if (parser.isSet("pairs")) {
        save_pairs(window, parser.value("out"));
    } else if (parser.isSet("consent")) {
        save_consent(window, parser.value("out"));
    } else {
        save_all(window, session, parser.value("out"));
    }
    return 0;
}

// A screen as large as the window, so that what fills the screen fills the picture.
void offer_screen(const QString& folder, const QStringList& arguments) {
    const qsizetype at = arguments.indexOf(QStringLiteral("--size"));
    const QSize size = size_in(at < 0 ? QStringLiteral("1280x800") : arguments.value(at + 1));
    const QString file = folder + QStringLiteral("/screen.json");
    QFile screen(file);
    if (!screen.open(QIODevice::WriteOnly)) return;
    screen.write(QStringLiteral(R"({"screens": [{"name": "one", "x": 0, "y": 0, "width": %1,
                                    "height": %2, "logicalDpi": 96, "dpr": 1}]})")
                     .arg(size.width())
                     .arg(size.height())
                     .toUtf8());
    qputenv("QT_QPA_PLATFORM", QStringLiteral("offscreen:configfile=%1").arg(file).toUtf8());
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    const quarterturn::OneThreadEach as_the_program;
    const QTemporaryDir settings;
    quarterturn::offer_screen(settings.path(), QStringList(argv + 1, argv + argc));
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("quarterturn-shots"));
    quarterturn::PlainEnglish english;
    QApplication::installTranslator(&english);
    return quarterturn::run(application);
}
