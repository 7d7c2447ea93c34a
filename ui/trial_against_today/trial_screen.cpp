#include "ui/trial_against_today/trial_screen.h"

#include <QStackedWidget>

#include "indexer/rules/head_points.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/trial_against_today/agreed_pair_choice.h"
#include "ui/trial_against_today/day_photos_panel.h"
#include "ui/two_heads/laid_pairs.h"
#include "ui/two_heads/mode_row.h"
#include "ui/two_heads/point_edits.h"
#include "ui/two_heads/points_panel.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 66;
constexpr int least_view_steps = 90;  // in a lower window the page scrolls

}  // namespace

TrialScreen::TrialScreen(Session& session)
    : session_(session),
      laid_pairs_(new LaidPairs(session, this)),
      pages_(new QStackedWidget),
      empty_(new EmptyPage(tr("Here the photos of a wedding day stand beside those of the trial, "
                              "both heads equally large. There is no wedding yet."),
                           tr("See what's coming up"))) {
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    connect(laid_pairs_, &LaidPairs::laid, this, &TrialScreen::show_pair);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &TrialScreen::show_sides);
    going_ = new QWidget;
    auto* row = new QHBoxLayout(going_);
    row->setContentsMargins(space(6), space(3), space(6), space(3));
    row->setSpacing(space(6));
    QWidget* main = build_main();
    row->addWidget(build_side());
    row->addWidget(make_scrolling_side(main), 1);
    pages_->addWidget(empty_);
    pages_->addWidget(going_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QString TrialScreen::help() const {
    return tr(
        "Choose a client's look and an angle: the photo that was agreed stands beside that of the "
        "day, both heads equally large and in the same place. Slide the divide with the mouse, a "
        "finger or the arrow keys, or let the two blink; Space stops them and shows the other.\n"
        "Where the heads do not lie right upon each other, set two points in both photos. What is "
        "said to differ is a hint, measured in the photos, and no judgement.");
}

QWidget* TrialScreen::build_side() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, space(3), 0);
    column->setSpacing(space(2));
    choice_ = new AgreedPairChoice;
    connect(choice_, &AgreedPairChoice::wedding_chosen, this, [this](WeddingId wedding) {
        wedding_ = wedding;
        look_.reset();
        session_.attempt([this] { refresh(); });
    });
    connect(choice_, &AgreedPairChoice::look_chosen, this, [this](LookId look) {
        look_ = look;
        session_.attempt([this] { show_angles(); });
    });
    connect(choice_, &AgreedPairChoice::angle_chosen, this, [this](int place) {
        angle_ = look()->pairs.at(static_cast<std::size_t>(place)).angle;
        session_.attempt([this] { show_pair(); });
    });
    column->addWidget(choice_);
    column->addSpacing(space(3));
    add_ways(*column);
    column->addStretch();
    QScrollArea* scroll = make_scrolling_side(side);
    scroll->setFixedWidth(space(side_steps));
    return scroll;
}

void TrialScreen::add_ways(QVBoxLayout& column) {
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    QPushButton* bring = make_button(tr("Bring in today's photos"));
    connect(bring, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::bringing_in, .wedding = wedding_}); });
    place_button_ = make_next_button({});
    connect(place_button_, &QPushButton::clicked, this, &TrialScreen::propose_places);
    QPushButton* save = make_button(tr("Save as agreed, as made…"));
    connect(save, &QPushButton::clicked, this, &TrialScreen::ask_where);
    for (QPushButton* button : {place_button_, bring, save}) column.addWidget(button);
    column.addWidget(notice_);
}

QWidget* TrialScreen::build_main() {
    auto* main = new QWidget;
    auto* column = new QVBoxLayout(main);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(3));
    title_ = make_title({});
    comparing_ = build_comparing();
    points_ = new PointsPanel;
    connect(points_, &PointsPanel::kept, this, [this] { keep_points(false); });
    connect(points_, &PointsPanel::found_anew, this, [this] { keep_points(true); });
    connect(points_, &PointsPanel::left, this, [this] { stage_->setCurrentWidget(comparing_); });
    day_photos_ = new DayPhotosPanel(session_);
    connect(day_photos_, &DayPhotosPanel::kept, this, &TrialScreen::place_photos);
    connect(day_photos_, &DayPhotosPanel::left, this,
            [this] { stage_->setCurrentWidget(comparing_); });
    stage_ = new PageStack;
    for (QWidget* page :
         {comparing_, static_cast<QWidget*>(points_), static_cast<QWidget*>(day_photos_)}) {
        stage_->addWidget(page);
    }
    column->addWidget(title_);
    column->addWidget(stage_, 1);
    return main;
}

QWidget* TrialScreen::build_comparing() {
    view_ = new PairView;
    view_->setMinimumHeight(space(least_view_steps));
    modes_ = new ModeRow(*view_, {PairMode::side_by_side, PairMode::divide, PairMode::blink});
    points_button_ = make_quiet_button(tr("Set the heads by hand"));
    connect(points_button_, &QPushButton::clicked, this, &TrialScreen::set_points);
    auto* row = new FlowLayout(space(2));
    row->addWidget(modes_);
    row->addWidget(points_button_);
    waiting_ = make_quiet({});
    auto* comparing = new QWidget;
    auto* column = new QVBoxLayout(comparing);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addLayout(row);
    column->addWidget(waiting_);
    column->addWidget(view_, 1);
    return comparing;
}

void TrialScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    if (place.look) look_ = place.look;
    if (place.shot) angle_ = place.shot->angle;
}

void TrialScreen::refresh() {
    choose_wedding();
    pages_->setCurrentWidget(wedding_ ? going_ : static_cast<QWidget*>(empty_));
    if (!wedding_) return;
    as_made_ = as_made(session_.library(), *wedding_);
    look_ = choice_->show_looks(*as_made_, look_);
    show_waiting_photos();
    show_angles();
}

void TrialScreen::choose_wedding() {
    Library& library = session_.library();
    if (wedding_ && !library.weddings().find(*wedding_)) wedding_.reset();
    if (!wedding_) wedding_ = wedding_to_compare(library, session_.today());
    choice_->show_weddings(library.weddings().all(), wedding_);
}

// The angle stays from look to look.
void TrialScreen::show_angles() {
    angle_ = choice_->show_angles(look() ? look()->pairs : std::vector<AgreedPair>{}, angle_);
    show_pair();
}

const LookAsMade* TrialScreen::look() const {
    if (!as_made_ || !look_) return nullptr;
    for (const ClientAsMade& client : as_made_->clients) {
        for (const LookAsMade& look : client.looks) {
            if (look.look.id == *look_) return &look;
        }
    }
    return nullptr;
}

const AgreedPair* TrialScreen::pair() const {
    if (!look() || !angle_) return nullptr;
    const auto found = std::ranges::find(look()->pairs, *angle_, &AgreedPair::angle);
    return found == look()->pairs.end() ? nullptr : &*found;
}

void TrialScreen::show_pair() {
    if (!as_made_) return;
    const QString wedding = from_utf8(as_made_->wedding.name);
    //: an angle, and whose wedding
    title_->setText(pair() ? tr("%1  ·  %2").arg(capitalised_words(shown(*angle_)), wedding)
                           : wedding);
    std::vector<PictureWish> wishes;
    const int edge = qRound(std::max(view_->height(), space(100)) * 1.8 * devicePixelRatioF());
    if (pair()) {
        for (const auto& photo : {pair()->agreed, pair()->made}) {
            if (photo) wishes.push_back({*photo, edge});
        }
    }
    session_.pictures().want(this, wishes);
    laid_.reset();
    if (pair() && pair()->both()) {
        const auto* laid = laid_pairs_->of(*pair()->agreed, *pair()->made);
        if (laid) laid_ = laid->pair;
    }
    show_sides();
    show_words();
}

void TrialScreen::set_points() {
    if (!laid_) return;
    points_->show_points(laid_->first_points, laid_->second_points);
    stage_->setCurrentWidget(points_);
}

void TrialScreen::keep_points(bool found_anew) {
    if (!pair() || !pair()->both()) return;
    std::vector<PointsOfPhoto> changes{{pair()->agreed->id, points_->points(0)},
                                       {pair()->made->id, points_->points(1)}};
    for (PointsOfPhoto& change : changes) {
        if (found_anew) change.points.reset();
        if (!change.points) continue;
        if (const auto reason = reason_against(*change.points, angle_)) {
            return points_->say(from_utf8(*reason));
        }
    }
    stage_->setCurrentWidget(comparing_);
    session_.change_records(change_points(changes));
}

}  // namespace quarterturn
