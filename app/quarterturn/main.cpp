// The window: opens the library that was open last, or the page that helps to start one.

#include <QApplication>
#include <QCommandLineParser>
#include <QEvent>
#include <QFontDatabase>
#include <QIcon>
#include <QTimer>
#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <memory>
#include <span>
#include <string_view>
#include <thread>

#include "app/quarterturn/screens.h"
#include "indexer/disk/clock.h"
#include "indexer/intake/threads.h"
#include "indexer/worker/confined.h"
#include "ui/first_run/welcome_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/plain_english.h"

namespace quarterturn {
namespace {

struct Wishes {
    QString library;
    bool demo = false;
};

Wishes read_wishes(const QCoreApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QApplication::tr("Keeps a bridal hair trial so that it can be made again."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption library(QStringLiteral("library"),
                                     QApplication::tr("Open the library in this folder."),
                                     QApplication::tr("folder"));
    const QCommandLineOption demo(QStringLiteral("demo"), QApplication::tr("Open the demo."));
    parser.addOptions({library, demo});
    parser.addPositionalArgument(
        QStringLiteral("folder"),
        QApplication::tr("The library; else QUARTERTURN_LIBRARY, else the one opened last."),
        QStringLiteral("[folder]"));
    parser.process(application);
    const QStringList named = parser.positionalArguments();
    QString folder = parser.value(library);
    if (folder.isEmpty() && !named.isEmpty()) folder = named.front();
    if (folder.isEmpty()) folder = qEnvironmentVariable("QUARTERTURN_LIBRARY");
    return {folder, parser.isSet(demo)};
}

void on_welcome(MainWindow& window, const std::function<void(WelcomePage&)>& act) {
    window.show();
    if (auto* welcome = window.findChild<WelcomePage*>()) act(*welcome);
}

void open_first(Session& session, MainWindow& window, const Wishes& wishes) {
    if (wishes.demo) return on_welcome(window, &WelcomePage::try_demo);
    const Path folder =
        wishes.library.isEmpty() ? Session::last_library() : Path(wishes.library.toStdString());
    if (folder.empty()) return;
    if (session.wants_passphrase(folder)) {
        return on_welcome(window, [&](WelcomePage& welcome) { welcome.open_or_ask(folder); });
    }
    const QString problem = session.open(folder);
    if (!problem.isEmpty()) session.say(problem);
}

// Help and version are printed where there is no display, too.
bool wants_words_alone(int argc, char** argv) {
    const std::array<std::string_view, 5> words{"-h", "--help", "--help-all", "-v", "--version"};
    return std::ranges::any_of(
        std::span(argv, static_cast<std::size_t>(argc)).subspan(1),
        [&](const char* word) { return std::ranges::find(words, word) != words.end(); });
}

void name_program() {
    QCoreApplication::setOrganizationName(QStringLiteral("quarterturn"));
    QCoreApplication::setApplicationName(QStringLiteral("quarterturn"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Quarterturn"));
    QCoreApplication::setApplicationVersion(QStringLiteral(QUARTERTURN_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("quarterturn"));
}

// Qt ends a program that finds no display by a signal.
void end_without_display(QtMsgType type, const QMessageLogContext& context,
                         const QString& message) {
    if (type == QtFatalMsg) {
        std::fputs(
            "quarterturn: no window can be opened, since there is no display here or it cannot "
            "be reached: start it from a desktop, or use qturn, which needs none.\n",
            stderr);
        std::_Exit(2);
    }
    const bool about_displays = std::string_view(context.category).starts_with("qt.qpa");
    if (!about_displays) std::fprintf(stderr, "%s\n", qUtf8Printable(message));
}

std::unique_ptr<QApplication> application_with_display(int& argc, char** argv) {
    const QtMessageHandler usual = qInstallMessageHandler(end_without_display);
    auto application = std::make_unique<QApplication>(argc, argv);
    qInstallMessageHandler(usual);
    return application;
}

// The library that draws the icon takes its time to load: it follows once the window is painted.
class LateIcon : public QObject {
  public:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) {
            watched->removeEventFilter(this);
            QTimer::singleShot(0, this, [] {
                QApplication::setWindowIcon(QIcon(QStringLiteral(":/quarterturn.svg")));
            });
        }
        return QObject::eventFilter(watched, event);
    }
};

// Which fonts there are takes as long as opening the library, and goes beside it.
std::jthread look_for_fonts() {
    return std::jthread([] { (void)QFontDatabase::families(); });
}

int run(QApplication& application) {
    const Wishes wishes = read_wishes(application);
    const std::jthread fonts = look_for_fonts();
    apply_theme(application, remembered_theme());
    const auto decoder = make_confined_decoder();
    Session session(real_file_system(), *decoder, local_now);
    MainWindow window(session, all_screens(),
                      [](Session& s) -> QWidget* { return new WelcomePage(s); });
    LateIcon icon;
    window.installEventFilter(&icon);
    open_first(session, window, wishes);
    window.show();
    // All of it has its size before it is painted for the first time.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    return QApplication::exec();
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    // As long as the program runs: several of its threads use OpenCV, whose own threads may not be
    // begun or ended while any of them is at work.
    const quarterturn::OneThreadEach one_thread_each;
    quarterturn::name_program();
    if (quarterturn::wants_words_alone(argc, argv)) {
        const QCoreApplication words(argc, argv);
        quarterturn::read_wishes(words);
    }
    const auto application = quarterturn::application_with_display(argc, argv);
    quarterturn::PlainEnglish english;
    QApplication::installTranslator(&english);
    return quarterturn::run(*application);
}
