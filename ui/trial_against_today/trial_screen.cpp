#include "ui/trial_against_today/trial_screen.h"

#include <QComboBox>
#include <QListWidget>
#include <QStackedWidget>

#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/trial_against_today/laid_pairs.h"
#include "ui/trial_against_today/mode_row.h"
#include "ui/trial_against_today/point_edits.h"
#include "ui/trial_against_today/points_panel.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 66;

QVariant value_of(std::int64_t id) {
    return QVariant::fromValue(qlonglong{id});
}

QString capitalised(const QString& words) {
    return words.left(1).toUpper() + words.mid(1);
}

QString angle_words(const AgreedPair& pair) {
    const QString angle = capitalised(shown(pair.angle));
    if (pair.both()) return angle;
    if (pair.agreed) return TrialScreen::tr("%1\nno photo of the day").arg(angle);
    if (pair.made) return TrialScreen::tr("%1\nno photo from the trial").arg(angle);
    return TrialScreen::tr("%1\nno photo").arg(angle);
}

QString moment_of(const Photo& photo) {
    if (!photo.moment) return TrialScreen::tr("time unknown");
    //: a day and a time
    return TrialScreen::tr("%1, %2").arg(shown(date_of(*photo.moment)), clock_shown(*photo.moment));
}

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
    row->addWidget(main, 1);
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
    add_choices(*column);
    words_ = make_column(2);
    column->addLayout(words_);
    column->addStretch();
    add_ways_out(*column);
    QScrollArea* scroll = make_scrolling_side(side);
    scroll->setFixedWidth(space(side_steps));
    return scroll;
}

void TrialScreen::add_choices(QVBoxLayout& column) {
    weddings_ = new QComboBox;
    looks_ = new QComboBox;
    angles_ = new QListWidget;
    angles_->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    angles_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    angles_->setSpacing(space(1));
    const auto add = [&](const QString& name, QWidget* choice) {
        choice->setAccessibleName(name);
        column.addWidget(make_quiet(name));
        column.addWidget(choice);
    };
    add(tr("Wedding"), weddings_);
    add(tr("Client and look"), looks_);
    add(tr("Angle"), angles_);
    for (QComboBox* choice : {weddings_, looks_}) {
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    }
    connect(weddings_, &QComboBox::activated, this, [this](int index) {
        wedding_ = WeddingId{weddings_->itemData(index).toLongLong()};
        look_.reset();
        session_.attempt([this] { refresh(); });
    });
    connect(looks_, &QComboBox::activated, this, [this](int index) {
        look_ = LookId{looks_->itemData(index).toLongLong()};
        session_.attempt([this] { show_angles(); });
    });
    connect(angles_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row < 0 || !look()) return;
        angle_ = look()->pairs.at(static_cast<std::size_t>(row)).angle;
        session_.attempt([this] { show_pair(); });
    });
}

void TrialScreen::add_ways_out(QVBoxLayout& column) {
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    column.addWidget(notice_);
}

QWidget* TrialScreen::build_main() {
    auto* main = new QWidget;
    auto* column = new QVBoxLayout(main);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(3));
    title_ = make_title({});
    view_ = new PairView;
    modes_ = new ModeRow(*view_);
    points_button_ = make_quiet_button(tr("Set the heads by hand"));
    connect(points_button_, &QPushButton::clicked, this, &TrialScreen::set_points);
    QHBoxLayout* row = make_row(2);
    row->addWidget(modes_, 1);
    row->addWidget(points_button_);
    waiting_ = make_quiet({});
    comparing_ = new QWidget;
    auto* compare = new QVBoxLayout(comparing_);
    compare->setContentsMargins(0, 0, 0, 0);
    compare->setSpacing(space(2));
    compare->addLayout(row);
    compare->addWidget(waiting_);
    compare->addWidget(view_, 1);
    points_ = new PointsPanel;
    connect(points_, &PointsPanel::kept, this, [this] { keep_points(false); });
    connect(points_, &PointsPanel::found_anew, this, [this] { keep_points(true); });
    connect(points_, &PointsPanel::left, this, [this] { stage_->setCurrentWidget(comparing_); });
    stage_ = new QStackedWidget;
    stage_->addWidget(comparing_);
    stage_->addWidget(points_);
    column->addWidget(title_);
    column->addWidget(stage_, 1);
    return main;
}

void TrialScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    if (place.look) look_ = place.look;
    if (place.shot) angle_ = place.shot->angle;
}

void TrialScreen::refresh() {
    show_weddings();
    pages_->setCurrentWidget(wedding_ ? going_ : static_cast<QWidget*>(empty_));
    if (!wedding_) return;
    as_made_ = as_made(session_.library(), *wedding_);
    show_looks();
    show_angles();
}

void TrialScreen::show_weddings() {
    if (wedding_ && !session_.library().weddings().find(*wedding_)) wedding_.reset();
    if (!wedding_) wedding_ = wedding_to_compare(session_.library(), session_.today());
    weddings_->clear();
    for (const Wedding& wedding : session_.library().weddings().all()) {
        //: a day and whose wedding is on it
        weddings_->addItem(
            tr("%1: %2").arg(short_shown(wedding.date), isolated(from_utf8(wedding.name))),
            value_of(wedding.id.value));
    }
    if (wedding_) weddings_->setCurrentIndex(weddings_->findData(value_of(wedding_->value)));
}

void TrialScreen::show_looks() {
    looks_->clear();
    for (const ClientAsMade& client : as_made_->clients) {
        for (const LookAsMade& look : client.looks) {
            //: a client and her look
            looks_->addItem(tr("%1: %2").arg(isolated(from_utf8(client.client.name)),
                                             isolated(from_utf8(look.look.name))),
                            value_of(look.look.id.value));
        }
    }
    const int there = look_ ? looks_->findData(value_of(look_->value)) : -1;
    look_.reset();
    if (looks_->count() == 0) return;
    looks_->setCurrentIndex(std::max(there, 0));
    look_ = LookId{looks_->currentData().toLongLong()};
}

// The angle stays from look to look; at first the first that has both.
void TrialScreen::show_angles() {
    const QSignalBlocker quiet(angles_);
    angles_->clear();
    int current = 0, first_of_both = -1;
    if (look()) {
        for (const AgreedPair& pair : look()->pairs) {
            if (angle_ == pair.angle) current = angles_->count();
            if (pair.both() && first_of_both < 0) first_of_both = angles_->count();
            angles_->addItem(angle_words(pair));
        }
        if (!angle_) current = std::max(first_of_both, 0);
        angle_ = look()->pairs.at(static_cast<std::size_t>(current)).angle;
    }
    angles_->setCurrentRow(angles_->count() > 0 ? current : -1);
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
    title_->setText(pair() ? tr("%1  ·  %2").arg(capitalised(shown(*angle_)), wedding) : wedding);
    std::vector<PictureWish> wishes;
    const int edge = qRound(std::max(view_->height(), space(100)) * 1.8 * devicePixelRatioF());
    if (pair()) {
        for (const auto& photo : {pair()->agreed, pair()->made}) {
            if (photo) wishes.push_back({*photo, edge});
        }
    }
    session_.pictures().want(this, wishes);
    laid_ =
        pair() && pair()->both() ? laid_pairs_->of(*pair()->agreed, *pair()->made) : std::nullopt;
    show_sides();
    show_words();
}

PairSide TrialScreen::side_of(const std::optional<Photo>& photo, bool made) const {
    PairSide side;
    const bool today = as_made_->wedding.date == session_.today();
    side.which = !made ? tr("At the trial") : today ? tr("Today") : tr("On the day");
    side.when = photo ? moment_of(*photo) : tr("no photo of this angle");
    if (!photo) return side;
    side.mirrored = photo->tags.mirrored;
    const int edge = qRound(std::max(view_->height(), space(100)) * 1.8 * devicePixelRatioF());
    side.picture = session_.pictures().at_hand(photo->id, edge);
    return side;
}

void TrialScreen::show_sides() {
    if (!as_made_) return;
    const AgreedPair none;
    const AgreedPair& two = pair() ? *pair() : none;
    const PairSide agreed = side_of(two.agreed, false);
    const PairSide made = side_of(two.made, true);
    view_->show_pair(agreed, made, laid_);
    points_->show_pair(agreed, made, two.angle);
}

void TrialScreen::show_words() {
    const bool both = pair() && pair()->both();
    const bool shown = laid_ && laid_->refused.empty();
    modes_->setEnabled(shown);
    points_button_->setEnabled(shown);
    QString waiting;
    if (both && !laid_) {
        waiting = tr("Laying both heads upon each other…");
    } else if (both && !shown) {
        waiting = from_utf8(laid_->refused);
    } else if (shown && !laid_->alignment.sure()) {
        waiting = tr("The heads may not lie right upon each other: set them by hand.");
    }
    waiting_->setText(waiting);
    waiting_->setVisible(!waiting.isEmpty());
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
    if (found_anew) {
        for (PointsOfPhoto& change : changes) change.points.reset();
    }
    stage_->setCurrentWidget(comparing_);
    session_.change_records(change_points(session_.library(), changes));
}

}  // namespace quarterturn
