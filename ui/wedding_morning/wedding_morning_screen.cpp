#include "ui/wedding_morning/wedding_morning_screen.h"

#include <QShortcut>
#include <QStackedWidget>

#include "indexer/looks/kit_list.h"
#include "ui/shell/session.h"
#include "ui/wedding_morning/board_bar.h"
#include "ui/wedding_morning/board_edits.h"
#include "ui/wedding_morning/client_strip.h"
#include "ui/wedding_morning/own_timer.h"
#include "ui/wedding_morning/timer_strip.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

namespace {

std::size_t first_not_done(const std::vector<BoardClient>& clients) {
    const auto first = std::ranges::find(clients, false, &BoardClient::is_done);
    return first == clients.end() ? 0 : static_cast<std::size_t>(first - clients.begin());
}

}  // namespace

WeddingMorningScreen::WeddingMorningScreen(Session& session, BoardWorld world)
    : session_(session),
      world_(std::move(world)),
      watch_(world_),
      type_(BoardType::in_window()),
      pages_(new QStackedWidget) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(space(3), space(1), space(3), space(2));
    all->addWidget(pages_);
    build();
    add_keys();
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this] {
        if (!on_board_->isVisible()) return;
        on_board_->show_pictures();
        want_pictures();
    });
    connect(&watch_, &TimerWatch::ended, this, [this](const Timer& timer) {
        //: %1 is what the timer is called
        if (!isVisible()) session_.say(tr("Time is up: %1.").arg(from_utf8(timer.name)));
    });
    connect(world_.awake.get(), &StayAwake::refused, this, [this] {
        if (alone_) {
            notice_->say(
                tr("This computer does not let the program keep the screen on: choose a "
                   "longer time for its screen in the settings of the system."));
        }
    });
}

WeddingMorningScreen::~WeddingMorningScreen() {
    if (alone_) world_.awake->release();
}

QString WeddingMorningScreen::help() const {
    return tr(
        "What is needed at the mirror, client by client in the order of work. Page Down and Page "
        "Up go to the next client and the one before. A press on a photo, or Enter, enlarges it; "
        "arrow keys walk round the head, and Esc goes back. A press on a step, or Space, ticks it. "
        "T starts a timer, D makes the board dim or bright, B the photos on a dim board, F11 fills "
        "the screen with it and Esc "
        "leaves that. On the day of a wedding the window opens here.");
}

void WeddingMorningScreen::add_keys() {
    const auto add = [this](const QKeySequence& keys, auto act) {
        auto* shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    add(Qt::Key_PageDown, [this] { turn(1); });
    add(Qt::Key_PageUp, [this] { turn(-1); });
    add(Qt::Key_F11, [this] { emit alone_asked(!alone_); });
    add(Qt::Key_Escape, [this] { step_back(); });
    add(Qt::Key_D, [this] { toggle_dim(); });
    add(Qt::Key_B, [this] { toggle_photo_light(); });
    add(Qt::Key_T, [this] {
        if (board_) own_timer_->ask();
    });
}

void WeddingMorningScreen::build() {
    if (going_) going_->deleteLater();
    if (enlarged_) enlarged_->deleteLater();
    going_ = build_going();
    enlarged_ = new EnlargedPhoto(session_.pictures(), type_);
    connect(enlarged_, &EnlargedPhoto::closed, this, &WeddingMorningScreen::close_enlarged);
    pages_->addWidget(going_);
    pages_->addWidget(enlarged_);
    pages_->setCurrentWidget(going_);
}

QWidget* WeddingMorningScreen::build_going() {
    auto* going = new QWidget;
    auto* column = new QVBoxLayout(going);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(type_.px(0.35));
    bar_ = new BoardBar(world_, type_, alone_);
    own_timer_ = new OwnTimer(type_);
    notice_ = new Notice;
    take_along_ = new TakeAlong(session_, *notice_, *going);
    strip_ = new TimerStrip(watch_, type_);
    clients_ = new ClientStrip(type_);
    on_board_ = new Board(session_.pictures(), type_);
    body_ = new QStackedWidget;
    body_->addWidget(on_board_);
    column->addLayout(build_top());
    for (QWidget* part : std::initializer_list<QWidget*>{own_timer_, notice_, strip_}) {
        column->addWidget(part);
    }
    QScrollArea* around = make_scrolling_side(body_);
    on_board_->lie_in(*around);
    column->addWidget(around, 1);
    connect_board();
    return going;
}

// On the whole screen both stand in one line, and leave the height to the photos.
QLayout* WeddingMorningScreen::build_top() {
    auto* top = new QBoxLayout(alone_ ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    top->setSpacing(type_.px(0.35));
    if (alone_) {
        top->addWidget(clients_, 1);
        top->addWidget(bar_);
    } else {
        top->addWidget(bar_);
        top->addWidget(clients_);
    }
    return top;
}

void WeddingMorningScreen::connect_board() {
    connect(bar_, &BoardBar::wedding_chosen, this, [this](WeddingId wedding) {
        arrive({.moment = Moment::wedding_morning, .wedding = wedding});
        session_.attempt([this] { refresh(); });
    });
    connect(bar_, &BoardBar::timer_asked, own_timer_, &OwnTimer::ask);
    connect(bar_, &BoardBar::taken_along, this, &WeddingMorningScreen::take_along);
    connect(bar_, &BoardBar::dim_asked, this, &WeddingMorningScreen::toggle_dim);
    connect(bar_, &BoardBar::photo_light_asked, this, &WeddingMorningScreen::toggle_photo_light);
    connect(bar_, &BoardBar::alone_asked, this, &Screen::alone_asked);
    connect(bar_, &BoardBar::led_to, this, &WeddingMorningScreen::lead_to);
    connect(own_timer_, &OwnTimer::wanted, this, &WeddingMorningScreen::start_own_timer);
    connect(own_timer_, &OwnTimer::closed, own_timer_, &QWidget::hide);
    connect(strip_, &TimerStrip::put_away, this,
            [this](const Timer& timer) { change_timers(stop_timer(timer)); });
    connect(clients_, &ClientStrip::chosen, this, &WeddingMorningScreen::go_to_client);
    connect(on_board_, &Board::client_chosen, this, &WeddingMorningScreen::go_to_client);
    connect(on_board_, &Board::look_chosen, this, &WeddingMorningScreen::go_to_look);
    connect(on_board_, &Board::look_wanted, this, [this] { lead_to(Moment::coming_up); });
    connect(on_board_, &Board::done_said, this, &WeddingMorningScreen::say_done);
    connect(&on_board_->photos(), &BoardPhotos::enlarged, this, &WeddingMorningScreen::enlarge);
    connect(&on_board_->photos(), &BoardPhotos::turned, this, &WeddingMorningScreen::turn);
    connect(&on_board_->photos(), &BoardPhotos::laid_out, this,
            &WeddingMorningScreen::want_pictures);
    connect(&on_board_->photos(), &BoardPhotos::missing, this, [this](Angle angle) {
        session_.go_to({.moment = Moment::round_the_head,
                        .client = client().client.id,
                        .look = look()->state.look.id,
                        .shot = Shot{Stage::after, angle}});
    });
    connect(&on_board_->recipe(), &RecipePanel::ticked, this, &WeddingMorningScreen::tick);
    connect(&on_board_->recipe(), &RecipePanel::timer_asked, this,
            &WeddingMorningScreen::start_step_timer);
    connect(&on_board_->recipe(), &RecipePanel::photo_asked, this,
            &WeddingMorningScreen::enlarge_step);
    connect(&on_board_->recipe(), &RecipePanel::recipe_asked, this,
            [this] { lead_to(Moment::recipe); });
}

void WeddingMorningScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    wanted_client_ = place.client;
    wanted_look_ = place.look;
    if (enlarged_->isVisible()) close_enlarged();
}

void WeddingMorningScreen::refresh() {
    choose_wedding();
    if (!wedding_) {
        board_.reset();
        watch_.watch({});
        return show_empty(tr("Here everything for the morning of a wedding stands large beside the "
                             "mirror. There is no wedding yet."),
                          tr("See what's coming up"), {.moment = Moment::coming_up});
    }
    watch_.watch(session_.library().boards().timers(*wedding_));
    if (!gathered_ || !board_) board_ = wedding_board(session_.library(), *wedding_);
    show_all();
}

void WeddingMorningScreen::choose_wedding() {
    const auto weddings = next_wedding_first(session_.library(), session_.today());
    const bool there = std::ranges::any_of(
        weddings, [&](const Wedding& wedding) { return wedding_ == wedding.id; });
    if (!there) wedding_ = wedding_of(session_.library(), session_.today());
    if (!wedding_ && !weddings.empty()) wedding_ = weddings.front().id;
    if (wedding_) bar_->show_weddings(weddings, *wedding_);
}

void WeddingMorningScreen::show_all() {
    show_light();
    bar_->show();
    if (board_->clients.empty()) {
        return show_empty(
            tr("Nobody is in the party of %1 yet.").arg(isolated(from_utf8(board_->wedding.name))),
            tr("Add the party"), {.moment = Moment::coming_up, .wedding = wedding_});
    }
    clients_->show();
    body_->setCurrentWidget(on_board_);
    show_board();
}

void WeddingMorningScreen::show_empty(const QString& sentence, const QString& button,
                                      const Place& leads_to) {
    bar_->setVisible(wedding_.has_value());
    clients_->hide();
    if (empty_) empty_->deleteLater();
    empty_ = new EmptyPage(sentence, button);
    connect(empty_, &EmptyPage::started, this, [this, leads_to] { session_.go_to(leads_to); });
    body_->addWidget(empty_);
    body_->setCurrentWidget(empty_);
}

// Who was on the board stays there, also where the order of work has changed; else the first who is
// not done.
void WeddingMorningScreen::show_board() {
    const auto& clients = board_->clients;
    const auto wanted = std::ranges::find_if(
        clients, [&](const BoardClient& each) { return wanted_client_ == each.client.id; });
    place_.client = wanted == clients.end() ? first_not_done(clients)
                                            : static_cast<std::size_t>(wanted - clients.begin());
    wanted_client_ = client().client.id;
    const auto& looks = client().looks;
    const auto look = std::ranges::find_if(
        looks, [&](const BoardLook& each) { return wanted_look_ == each.state.look.id; });
    place_.look = look == looks.end() ? 0 : static_cast<std::size_t>(look - looks.begin());
    if (this->look()) session_.choose_look(this->look()->state.look.id);
    clients_->show_clients(clients, place_.client);
    on_board_->show_board(*board_, place_);
    want_pictures();
}

void WeddingMorningScreen::want_pictures() {
    if (board_ && !board_->clients.empty()) session_.pictures().want(this, on_board_->wishes());
}

BoardType WeddingMorningScreen::fitting_type() const {
    return alone_ ? BoardType::on_screen_of(height()) : BoardType::in_window();
}

void WeddingMorningScreen::stand_alone(bool alone) {
    if (std::exchange(alone_, alone) == alone) return;
    fit();
    on_board_->recipe().go_to_next();
    if (alone) {
        world_.awake->ask();
    } else {
        world_.awake->release();
    }
}

void WeddingMorningScreen::fit() {
    type_ = fitting_type();
    build();
    gathered_ = true;
    session_.attempt([this] { refresh(); });
    gathered_ = false;
}

// Pictures may have come while it was not to be seen.
void WeddingMorningScreen::showEvent(QShowEvent* event) {
    Screen::showEvent(event);
    on_board_->show_pictures();
    want_pictures();
}

void WeddingMorningScreen::resizeEvent(QResizeEvent* event) {
    Screen::resizeEvent(event);
    if (fitting_type() != type_) fit();
}

}  // namespace quarterturn
