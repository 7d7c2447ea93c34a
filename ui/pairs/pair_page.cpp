#include "ui/pairs/pair_page.h"

#include <QShortcut>
#include <QStackedWidget>

#include "indexer/rules/head_points.h"
#include "ui/pairs/fact_words.h"
#include "ui/pairs/pair_details.h"
#include "ui/pairs/pair_sides.h"
#include "ui/pairs/picture_panel.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/two_heads/mode_row.h"
#include "ui/two_heads/point_edits.h"
#include "ui/two_heads/points_panel.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int details_steps = 84;
constexpr int least_details_steps = 60;

}  // namespace

PairPage::PairPage(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent)
    : QWidget(parent), session_(session), pairs_(pairs), laid_(laid) {
    comparing_ = build_comparing();
    points_ = new PointsPanel;
    picture_ = new PicturePanel(session_);
    stage_ = new PageStack;
    stage_->addWidget(comparing_);
    stage_->addWidget(points_);
    stage_->addWidget(picture_);
    connect(picture_, &PicturePanel::left, this, &PairPage::leave_stage);
    connect(points_, &PointsPanel::kept, this, [this] { keep_points(false); });
    connect(points_, &PointsPanel::found_anew, this, [this] { keep_points(true); });
    connect(points_, &PointsPanel::left, this, &PairPage::leave_stage);
    details_ = new PairDetails(session_);
    connect(details_, &PairDetails::like_asked, this, &PairPage::like_asked);
    connect(details_, &PairDetails::points_asked, this, &PairPage::set_points);
    connect(details_, &PairDetails::picture_asked, this, &PairPage::choose_picture);
    connect(details_, &PairDetails::progress_asked, this, &PairPage::progress_asked);
    QScrollArea* side = make_scrolling_side(details_);
    side->setMinimumWidth(space(least_details_steps));
    side->setMaximumWidth(space(details_steps));
    auto* row = make_row(6);
    row->addWidget(stage_, 5);
    row->addWidget(side, 3);
    auto* column = new QVBoxLayout(this);
    set_reading_margins(*column, space(6), space(3), space(2), space(2));
    column->setSpacing(space(2));
    column->addWidget(build_top());
    column->addLayout(row, 1);
    setFocusProxy(view_);
    add_keys();
    connect(&laid_, &LaidPairs::laid, this, &PairPage::show_laid);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &PairPage::show_pictures);
}

QWidget* PairPage::build_top() {
    QPushButton* wall = make_button(tr("All pairs"));
    title_ = make_heading({});
    back_ = make_button(tr("Previous"));
    next_ = make_button(tr("Next"));
    QPushButton* whole = make_button(tr("Whole screen"));
    connect(wall, &QPushButton::clicked, this, &PairPage::left);
    connect(back_, &QPushButton::clicked, this, [this] { emit step_asked(-1); });
    connect(next_, &QPushButton::clicked, this, [this] { emit step_asked(1); });
    connect(whole, &QPushButton::clicked, this, &PairPage::whole_screen_asked);
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    set_reading_margins(*row, 0, 0, space(4), 0);
    row->setSpacing(space(2));
    row->addWidget(wall);
    row->addSpacing(space(2));
    row->addWidget(title_, 1);
    for (QPushButton* button : {back_, next_, whole}) row->addWidget(button);
    return top;
}

QWidget* PairPage::build_comparing() {
    view_ = new PairView;
    modes_ = new ModeRow(*view_, {PairMode::side_by_side, PairMode::divide, PairMode::fade});
    unsure_ = make_quiet({});
    auto* comparing = new QWidget;
    auto* column = new QVBoxLayout(comparing);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(modes_);
    column->addWidget(unsure_);
    column->addWidget(view_, 1);
    return comparing;
}

bool PairPage::show_pair(PairId id) {
    const bool another = !pair_ || pair_->id != id;
    pair_ = session_.library().pairs().find(id);
    two_.reset();
    if (!pair_) return false;
    const auto first = session_.library().photos().find(pair_->made.first);
    const auto second = session_.library().photos().find(pair_->made.second);
    if (!first || !second) return false;
    two_ = {*first, *second};
    if (another) leave_stage();
    //: whose pair, which look, which angle
    title_->setText(
        tr("%1  ·  %2  ·  %3")
            .arg(pairs_.client(*pair_), pairs_.look(*pair_), angle_and_kind(pair_->made.place)));
    const int position = pairs_.position_of(id);
    back_->setEnabled(position > 0);
    next_->setEnabled(position >= 0 && position + 1 < pairs_.rowCount());
    details_->show_pair(*pair_);
    if (stage_->currentWidget() == picture_) picture_->show_pair(*pair_);
    want_large(session_, *view_, *two_);
    show_laid();
    return true;
}

void PairPage::show_pictures() {
    if (!two_) return;
    show_large(session_, *view_, *pair_, *two_, laid_.at_hand(two_->first.id, two_->second.id));
}

void PairPage::show_laid() {
    if (!two_) return;
    const LaidAndMeasured* laid = nullptr;
    session_.attempt([&] { laid = laid_.of(two_->first, two_->second); });
    const bool sure = laid && laid->pair.refused.empty() && laid->pair.alignment.sure();
    modes_->setEnabled(sure);
    const bool unsure = laid && laid->pair.refused.empty() && !sure;
    unsure_->setText(unsure ? tr("Whether both heads lie upon each other is not sure, so both "
                                 "photos stand here whole. Set the heads by hand to lay them.")
                            : QString());
    unsure_->setVisible(unsure);
    if (laid && !sure) modes_->choose(PairMode::side_by_side);
    show_large(session_, *view_, *pair_, *two_, laid);
    details_->show_laid(laid);
}

void PairPage::set_points() {
    const LaidAndMeasured* laid = two_ ? laid_.at_hand(two_->first.id, two_->second.id) : nullptr;
    if (!laid) return;
    const auto side = [&](const Photo& photo, const QString& which) {
        return PairSide{session_.pictures().at_hand(photo.id, small_long_edge),
                        photo.tags.mirrored,
                        which,
                        photo.moment ? shown(date_of(*photo.moment)) : QString(),
                        {}};
    };
    const PairPlace& place = pair_->made.place;
    points_->show_pair(side(two_->first, first_words(place)),
                       side(two_->second, second_words(place)), place.angle);
    points_->show_points(laid->pair.first_points, laid->pair.second_points);
    stage_->setCurrentWidget(points_);
}

void PairPage::choose_picture() {
    if (!pair_) return;
    session_.attempt([this] {
        picture_->show_pair(*pair_);
        stage_->setCurrentWidget(picture_);
        picture_->setFocus();
    });
}

bool PairPage::leave_stage() {
    if (stage_->currentWidget() == comparing_) return false;
    stage_->setCurrentWidget(comparing_);
    return true;
}

void PairPage::keep_points(bool found_anew) {
    if (!two_) return;
    std::vector<PointsOfPhoto> changes{{two_->first.id, points_->points(0)},
                                       {two_->second.id, points_->points(1)}};
    for (PointsOfPhoto& change : changes) {
        if (found_anew) change.points.reset();
        if (!change.points) continue;
        if (const auto reason = reason_against(*change.points, pair_->made.place.angle)) {
            return points_->say(from_utf8(*reason));
        }
    }
    leave_stage();
    session_.change_records(change_points(changes));
}

// Before the side that scrolls takes them.
void PairPage::add_keys() {
    for (const auto& [key, step] :
         {std::pair(Qt::Key_PageDown, 1), std::pair(Qt::Key_PageUp, -1)}) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, step] { emit step_asked(step); });
    }
}

void PairPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (two_ && isVisible()) want_large(session_, *view_, *two_);
}

}  // namespace quarterturn
