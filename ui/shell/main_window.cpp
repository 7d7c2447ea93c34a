#include "ui/shell/main_window.h"

#include <QAction>
#include <QCloseEvent>
#include <QKeyEvent>
#include <QMessageBox>
#include <QMetaEnum>
#include <QSettings>
#include <QTimer>

#include "indexer/looks/wedding_board.h"
#include "ui/shell/keyboard_place.h"
#include "ui/shell/moments_row.h"
#include "ui/shell/outside_changes.h"
#include "ui/shell/session.h"
#include "ui/shell/standing_notice.h"
#include "ui/shell/undo_buttons.h"
#include "ui/theme/theme.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/reading_order.h"

namespace quarterturn {
namespace {

const QString geometry_key = QStringLiteral("window/geometry");
const QString moment_key = QStringLiteral("window/moment");
constexpr QSize first_size{1280, 800};

QMetaEnum moment_words() {
    return QMetaEnum::fromType<Moment>();
}

std::optional<Moment> remembered_moment() {
    bool known = false;
    const int moment = moment_words().keyToValue(
        QSettings().value(moment_key).toString().toLatin1().constData(), &known);
    return known ? std::optional(static_cast<Moment>(moment)) : std::nullopt;
}

}  // namespace

MainWindow::MainWindow(Session& session, std::vector<ScreenEntry> entries,
                       std::function<QWidget*(Session&)> welcome)
    : session_(session), entries_(std::move(entries)), welcome_(std::move(welcome)) {
    setWindowTitle(tr("Quarterturn"));
    resize(first_size);
    restoreGeometry(QSettings().value(geometry_key).toByteArray());
    add_actions();
    connect(&session_, &Session::opened, this, [this] {
        choose_the_day();
        show_library();
    });
    connect(&session_, &Session::closing, this, &MainWindow::let_go_of_library);
    connect(&session_, &Session::closed, this, &MainWindow::show_library);
    connect(&session_, &Session::records_changed, this, &MainWindow::refresh_current);
    connect(&session_, &Session::asked_for, this, &MainWindow::go_to);
    connect(&session_, &Session::said, this, &MainWindow::say);
    connect(&session_, &Session::theme_changed, this, &MainWindow::build_anew,
            Qt::QueuedConnection);
    moment_ = remembered_moment().value_or(entries_.front().moment);
    if (!entry(moment_)) moment_ = entries_.front().moment;
    choose_the_day();
    build();
    new OutsideChanges(session_, *this);
}

// A screen may keep what she has typed as it goes, and the session tells of that.
MainWindow::~MainWindow() {
    session_.disconnect(this);
}

void MainWindow::add_actions() {
    const auto add = [this](const QString& text, const QKeySequence& keys, auto act) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, act);
        addAction(action);
    };
    const auto with_no_client = [this](auto act) {
        return [this, act] {
            if (!is_for_client()) act();
        };
    };
    const auto when_open = [this, with_no_client](auto act) {
        return with_no_client([this, act] {
            if (session_.is_open()) act();
        });
    };
    add(tr("Undo"), QKeySequence::Undo, when_open([this] { session_.undo(); }));
    add(tr("Redo"), QKeySequence::Redo, when_open([this] { session_.redo(); }));
    add(tr("Help"), QKeySequence::HelpContents, with_no_client([this] { show_help(); }));
    add(tr("Close the window"), QKeySequence::Quit, [this] { close(); });
}

void MainWindow::build() {
    screens_.clear();
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    stack_ = new PageStack;
    top_row_ = build_top_row();
    column->addWidget(top_row_);
    standing_ = new StandingNotice(session_);
    column->addWidget(standing_);
    column->addWidget(stack_, 1);
    column->addWidget(build_foot());
    setCentralWidget(page);
    if (session_.is_open() || isVisible()) show_library();
}

// The welcome is made when it is seen: mostly a library is open by then.
void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (stack_->count() == 0) show_library();
}

// Work that tells of itself on a screen goes on there: the screens are made anew when it has ended.
void MainWindow::build_anew() {
    if (const Job* work = session_.work()) {
        connect(work, &QObject::destroyed, this, &MainWindow::build_anew,
                static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::UniqueConnection));
        return say(tr("The text changes its size as soon as the work that runs has ended."));
    }
    const KeyboardPlace place(*this);
    show_alone(false);
    build();
    // Once it is laid out, so that it is scrolled to.
    QTimer::singleShot(0, this, [this, place] { place.come_back(*this); });
}

QWidget* MainWindow::build_top_row() {
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(space(6), space(2), space(6), 0);
    parts->setSpacing(space(1));
    moments_ = new MomentsRow(entries_);
    parts->addWidget(moments_, 1);
    QPushButton* help = make_quiet_button(tr("Help"));
    connect(help, &QPushButton::clicked, this, &MainWindow::show_help);
    parts->addWidget(new UndoButtons(session_));
    parts->addWidget(help);
    connect(moments_, &MomentsRow::chosen, this,
            [this](Moment moment) { go_to({.moment = moment}); });
    return row;
}

QWidget* MainWindow::build_foot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(space(8), space(1), space(8), space(2));
    sentence_ = make_quiet({});
    row->addWidget(sentence_);
    foot->hide();
    return foot;
}

// On the day of a wedding all that is needed is on its board.
void MainWindow::choose_the_day() {
    if (!session_.is_open() || !entry(Moment::wedding_morning)) return;
    session_.attempt([&] {
        if (wedding_of(session_.library(), session_.today())) moment_ = Moment::wedding_morning;
    });
}

void MainWindow::let_go_of_library() {
    show_alone(false);
    say({});
    screens_.clear();
    while (QWidget* screen = stack_->widget(0)) delete screen;
}

void MainWindow::show_library() {
    while (QWidget* old = stack_->widget(0)) {
        stack_->removeWidget(old);
        old->deleteLater();  // it may be what was clicked
    }
    screens_.clear();
    top_row_->setVisible(session_.is_open());
    standing_->refresh(alone_);
    if (session_.is_open()) {
        go_to({.moment = moment_});
    } else {
        stack_->addWidget(welcome_(session_));
    }
}

const ScreenEntry* MainWindow::entry(Moment moment) const {
    const auto found = std::find_if(entries_.begin(), entries_.end(),
                                    [&](const ScreenEntry& e) { return e.moment == moment; });
    return found == entries_.end() ? nullptr : &*found;
}

Screen* MainWindow::screen(Moment moment) {
    if (const auto made = screens_.find(moment); made != screens_.end()) return made->second;
    const ScreenEntry* wanted = entry(moment);
    if (!wanted || !session_.is_open()) return nullptr;
    Screen* screen = wanted->make(session_);
    screen->setAccessibleName(wanted->title);
    connect(screen, &Screen::alone_asked, this, &MainWindow::show_alone);
    stack_->addWidget(screen);
    screens_[moment] = screen;
    return screen;
}

void MainWindow::go_to(const Place& place) {
    Screen* wanted = screen(place.moment);
    if (!wanted) return;
    if (wanted != current_screen()) show_alone(false);
    moment_ = place.moment;
    moments_->show_moment(moment_);
    say({});
    wanted->arrive(place);
    stack_->setCurrentWidget(wanted);
    refresh_current();
}

Screen* MainWindow::current_screen() const {
    return qobject_cast<Screen*>(stack_->currentWidget());
}

void MainWindow::show_alone(bool alone) {
    Screen* screen = current_screen();
    if (alone == alone_ || !screen) return;
    alone_ = alone;
    if (alone) state_before_ = windowState();
    top_row_->setVisible(!alone);
    standing_->refresh(alone);
    setWindowState(alone ? state_before_ | Qt::WindowFullScreen : state_before_);
    screen->stand_alone(alone);
    if (is_for_client()) {
        say({});
    } else if (!kept_back_.isEmpty()) {
        say(std::exchange(kept_back_, {}).join(u'\n'));
    }
}

bool MainWindow::is_for_client() const {
    const Screen* screen = current_screen();
    return alone_ && screen && screen->is_for_client();
}

// The desktop has keys of its own to leave the whole screen.
void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::WindowStateChange && alone_ && !isFullScreen()) show_alone(false);
}

void MainWindow::refresh_current() {
    if (Screen* current = current_screen()) {
        session_.attempt([current] { current->refresh(); });
    }
}

void MainWindow::show_help() {
    const Screen* current = current_screen();
    const QString general =
        tr("Undo and redo work on every screen. What is signed off is opened again on its own "
           "screen.");
    QMessageBox box(this);
    box.setWindowTitle(tr("Help"));
    box.setText(current ? current->help() + QStringLiteral("\n\n") + general : general);
    box.exec();
}

// What comes while a client looks is said when she no longer does.
void MainWindow::say(const QString& sentence) {
    if (is_for_client() && !sentence.isEmpty()) {
        kept_back_ << sentence;
        return;
    }
    sentence_->setText(sentence);
    sentence_->parentWidget()->setVisible(!sentence.isEmpty());
}

bool MainWindow::focusNextPrevChild(bool next) {
    return focus_in_reading_order(*centralWidget(), next);
}

// The page scrolls also while the keyboard is in the row at the top, which has no use for the key.
void MainWindow::keyPressEvent(QKeyEvent* event) {
    const Screen* screen = current_screen();
    if (!screen || !scroll_by_key(*screen, event->key())) QMainWindow::keyPressEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    show_alone(false);
    QSettings settings;
    settings.setValue(geometry_key, saveGeometry());
    settings.setValue(moment_key,
                      QString::fromLatin1(moment_words().valueToKey(static_cast<int>(moment_))));
    QMainWindow::closeEvent(event);
}

}  // namespace quarterturn
