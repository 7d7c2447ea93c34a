#include "ui/pairs/whole_page.h"

#include <QKeyEvent>
#include <QLocale>

#include "indexer/rules/fair_pair.h"
#include "ui/pairs/pair_sides.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/two_heads/mode_row.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int edge_of_button = 2;  // of the style sheet

}  // namespace

WholePage::WholePage(Session& session, ShownPairs& pairs, LaidPairs& laid, Viewer viewer,
                     QWidget* parent)
    : QWidget(parent),
      session_(session),
      pairs_(pairs),
      laid_(laid),
      viewer_(viewer),
      view_(new PairView) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(4), space(4), space(4), space(3));
    column->setSpacing(space(3));
    column->addWidget(build_top());
    nothing_ = make_heading(tr("Nothing may be shown here any longer."));
    nothing_->setAlignment(Qt::AlignCenter);
    nothing_->hide();
    column->addWidget(view_, 1);
    column->addWidget(nothing_, 1);
    column->addWidget(build_foot());
    const auto show = [this] {
        if (isVisible()) show_pair();
    };
    connect(&laid_, &LaidPairs::laid, this, show);
    connect(&session_.pictures(), &PictureLoader::arrived, this, show);
}

QWidget* WholePage::build_top() {
    what_ = make_quiet({});
    unfair_ = make_quiet({});
    auto* top = new QWidget;
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    for (QLabel* label : {what_, unfair_}) column->addWidget(label);
    what_->setVisible(viewer_ == Viewer::client);
    unfair_->hide();
    return top;
}

QWidget* WholePage::build_foot() {
    back_ = make_button(tr("Previous"));
    next_ = make_button(tr("Next"));
    QPushButton* leave =
        make_button(viewer_ == Viewer::client ? tr("End the showing (Esc)") : tr("Leave (Esc)"));
    modes_ = new ModeRow(*view_, {PairMode::side_by_side, PairMode::divide, PairMode::fade});
    light_ = make_button({});
    connect(light_, &QPushButton::clicked, this, &WholePage::toggle_light);
    count_ = make_quiet({});
    count_->setWordWrap(false);
    credits_ = make_quiet({});
    connect(back_, &QPushButton::clicked, this, [this] { step(-1); });
    connect(next_, &QPushButton::clicked, this, [this] { step(1); });
    connect(leave, &QPushButton::clicked, this, &WholePage::left);
    auto* foot = new QWidget;
    const int inside = morning_target - 2 * (space(1) + edge_of_button);
    foot->setStyleSheet(QStringLiteral("QPushButton { min-height: %1px; }").arg(inside));
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(2));
    auto* which = new FlowLayout(space(2));
    for (QWidget* part : {static_cast<QWidget*>(back_), static_cast<QWidget*>(next_),
                          static_cast<QWidget*>(count_)}) {
        which->addWidget(part);
    }
    auto* how = new FlowLayout(space(2));
    for (QWidget* part : {static_cast<QWidget*>(modes_), static_cast<QWidget*>(light_),
                          static_cast<QWidget*>(leave)}) {
        how->addWidget(part);
    }
    row->addLayout(which);
    row->addWidget(credits_, 1);
    row->addLayout(how);
    return foot;
}

void WholePage::show_position(int position) {
    const bool any = pairs_.rowCount() > 0;
    view_->setVisible(any);
    nothing_->setVisible(!any);
    for (QWidget* of_a_pair : {static_cast<QWidget*>(count_), static_cast<QWidget*>(credits_),
                               static_cast<QWidget*>(modes_)}) {
        of_a_pair->setVisible(any);
    }
    position_ = std::clamp(position, 0, std::max(pairs_.rowCount() - 1, 0));
    const QLocale locale;
    //: which pair of how many
    count_->setText(
        tr("%1 of %2").arg(locale.toString(position_ + 1), locale.toString(pairs_.rowCount())));
    back_->setEnabled(position_ > 0);
    next_->setEnabled(position_ + 1 < pairs_.rowCount());
    show_what_it_is();
    show_pair();
}

void WholePage::show_what_it_is() {
    if (viewer_ != Viewer::client) return;
    const int pairs = pairs_.rowCount();
    what_->setText(
        pairs == 1
            ? tr("1 pair that may be shown in consultation")
            : tr("%1 pairs that may be shown in consultation").arg(QLocale().toString(pairs)));
}

void WholePage::show_unfair(const LaidAndMeasured* laid) {
    const QString words = laid ? from_utf8(not_taken_alike(laid->figures)) : QString();
    unfair_->setText(words);
    unfair_->setVisible(!words.isEmpty());
}

void WholePage::show_light() {
    light_->setText(photos_bright_ ? tr("Photos dim (B)") : tr("Photos bright (B)"));
    light_->setVisible(remembered_theme().mood == Mood::dawn);
}

void WholePage::toggle_light() {
    photos_bright_ = !photos_bright_;
    show_pair();
}

void WholePage::step(int pairs) {
    const int there = position_ + pairs;
    if (there >= 0 && there < pairs_.rowCount()) show_position(there);
}

void WholePage::show_pair() {
    if (position_ >= pairs_.rowCount()) return;
    const TwoPhotos* two = pairs_.photos(position_);
    if (!two) return;
    const LaidAndMeasured* laid = nullptr;
    session_.attempt([&] { laid = laid_.of(two->first, two->second); });
    session_.attempt([&] { show_credits(*two); });
    want_large(session_, *view_, *two);
    const bool dim = remembered_theme().mood == Mood::dawn && !photos_bright_;
    show_large(session_, *view_, pairs_.at(position_), *two, laid, dim);
    show_light();
    show_unfair(laid);
    modes_->setEnabled(laid && laid->pair.refused.empty() && laid->pair.alignment.sure());
}

void WholePage::show_credits(const TwoPhotos& two) {
    QStringList lines;
    for (const PhotoId photo : {two.first.id, two.second.id}) {
        const auto credit = session_.library().credits().of(photo);
        const QString line = from_utf8(credit ? credit->line.value_or("") : "");
        if (!line.isEmpty() && !lines.contains(line)) lines << line;
    }
    credits_->setText(lines.join(u'\n'));
}

void WholePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (isVisible()) show_pair();
}

// The view keeps the arrow keys that move its divide.
void WholePage::keyPressEvent(QKeyEvent* event) {
    const bool forth = layoutDirection() == Qt::LeftToRight;
    switch (event->key()) {
        case Qt::Key_PageDown:
        case Qt::Key_Down:
        case Qt::Key_Space:
            return step(1);
        case Qt::Key_PageUp:
        case Qt::Key_Up:
        case Qt::Key_Backspace:
            return step(-1);
        case Qt::Key_B:
            return toggle_light();
        case Qt::Key_Right:
            return step(forth ? 1 : -1);
        case Qt::Key_Left:
            return step(forth ? -1 : 1);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace quarterturn
