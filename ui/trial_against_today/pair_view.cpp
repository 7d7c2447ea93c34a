#include "ui/trial_against_today/pair_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double cell_corner = 8;
constexpr double cell_aspect = 0.8;  // a head with its hair, upright
constexpr double key_step = 0.02;
constexpr double handle = morning_target / 2.0;

// The largest box of a cell's proportions in the middle of `room`.
QRectF in_the_middle(const QRectF& room) {
    const double height = std::min(room.height(), room.width() / cell_aspect);
    const QSizeF size(height * cell_aspect, height);
    return {room.center() - QPointF(size.width() / 2, size.height() / 2), size};
}

QTransform transform_of(const Similarity& lay) {
    return {lay.along, lay.across, -lay.across, lay.along, lay.x, lay.y};
}

QPainterPath rounded(const QRectF& cell) {
    QPainterPath path;
    path.addRoundedRect(cell, cell_corner, cell_corner);
    return path;
}

}  // namespace

PairView::PairView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(space(60), space(60));
    blinking_.setInterval(usual_milliseconds);
    connect(&blinking_, &QTimer::timeout, this, &PairView::show_other);
}

QSize PairView::sizeHint() const {
    return {space(180), space(120)};
}

void PairView::show_pair(const PairSide& agreed, const PairSide& made,
                         const std::optional<LaidPair>& laid) {
    sides_ = {agreed, made};
    laid_ = laid;
    tell_state();
    update();
}

void PairView::show_mode(PairMode mode) {
    mode_ = mode;
    blink(mode == PairMode::blink);
    tell_state();
    update();
}

void PairView::slide_to(double divide) {
    divide_ = std::clamp(divide, 0.0, 1.0);
    tell_state();
    update();
    emit moved(divide_);
}

void PairView::stand_for(int milliseconds) {
    blinking_.setInterval(std::clamp(milliseconds, least_milliseconds, most_milliseconds));
}

void PairView::blink(bool on) {
    if (on == blinking_.isActive()) return;
    on ? blinking_.start() : blinking_.stop();
    emit blinking_changed(on);
}

void PairView::show_other() {
    shown_ = 1 - shown_;
    update();
}

// Not while they blink: a screen reader would read it out each second.
void PairView::tell_state() {
    const QString both =
        tr("%1, %2; %3, %4").arg(sides_[0].which, said(0), sides_[1].which, said(1));
    setAccessibleName(both);
    setAccessibleDescription(
        mode_ == PairMode::divide
            ? tr("%1 % of the picture is from the trial.").arg(qRound(divide_ * 100))
            : QString());
}

PairMode PairView::drawn_mode() const {
    return laid_ && laid_->refused.empty() ? mode_ : PairMode::side_by_side;
}

QRectF PairView::half(int side) const {
    const double gap = space(4);
    const double width = (this->width() - gap) / 2;
    const bool at_left = (side == 0) == leads_left();
    return {at_left ? 0 : width + gap, 0, width, height() * 1.0};
}

QRectF PairView::cell(int side) const {
    return in_the_middle(half(side).adjusted(0, 0, 0, -caption_height()));
}

QRectF PairView::middle_cell() const {
    return in_the_middle({0, 0, width() * 1.0, height() - caption_height()});
}

// From pixels of a side's picture to the widget.
QTransform PairView::placed(int side, const QRectF& cell) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    const double height = shown.picture.height();
    QTransform place;
    if (shown.mirrored) place = QTransform(-1, 0, 0, 1, shown.picture.width(), 0);
    place *= QTransform::fromScale(1 / height, 1 / height);
    if (side == 1) place *= transform_of(laid_->alignment.second_onto_first);
    const Box window = window_of(*laid_, cell.width() / cell.height());
    const double scale = cell.height() / window.height;
    place *= QTransform::fromTranslate(-window.x, -window.y);
    place *= QTransform::fromScale(scale, scale);
    return place * QTransform::fromTranslate(cell.x(), cell.y());
}

void PairView::paint_side(QPainter& painter, int side, const QRectF& cell) const {
    const QImage& picture = sides_[static_cast<std::size_t>(side)].picture;
    painter.save();
    painter.setClipPath(rounded(cell), Qt::IntersectClip);
    painter.fillRect(cell, card_colour(palette()));
    if (!picture.isNull()) {
        painter.setTransform(placed(side, cell), true);
        painter.drawImage(QPointF(0, 0), picture);
    }
    painter.restore();
    if (side == 1 && laid_->hair_differs()) paint_hint(painter, cell);
    if (side == 1 && laid_->accessory_differs()) paint_move(painter, cell);
}

void PairView::paint_whole(QPainter& painter, int side, const QRectF& cell) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    painter.save();
    painter.setClipPath(rounded(cell));
    painter.fillRect(cell, card_colour(palette()));
    if (!shown.picture.isNull()) {
        const QSizeF size = QSizeF(shown.picture.size()).scaled(cell.size(), Qt::KeepAspectRatio);
        const QPointF corner = cell.center() - QPointF(size.width() / 2, size.height() / 2);
        painter.drawImage(QRectF(corner, size), shown.picture.mirrored(shown.mirrored, false));
    }
    painter.restore();
    if (!shown.missing.isEmpty()) paint_missing(painter, shown.missing, cell);
}

void PairView::paint_beside(QPainter& painter) const {
    const bool laid = laid_ && laid_->refused.empty();
    for (const int side : {0, 1}) {
        const QRectF place = cell(side);
        laid ? paint_side(painter, side, place) : paint_whole(painter, side, place);
        paint_caption(painter, side, place.bottom(), half(side), Qt::AlignHCenter);
    }
}

void PairView::paint_divided(QPainter& painter) const {
    const QRectF cell = middle_cell();
    const double share = leads_left() ? divide_ : 1 - divide_;
    const double x = cell.x() + cell.width() * share;
    const int left = leads_left() ? 0 : 1;
    paint_side(painter, 1 - left, cell);
    painter.save();
    painter.setClipRect(QRectF(cell.topLeft(), QPointF(x, cell.bottom())));
    paint_side(painter, left, cell);
    painter.restore();
    paint_divide(painter, cell, x);
    paint_caption(painter, left, cell.bottom(), half(left), Qt::AlignRight);
    paint_caption(painter, 1 - left, cell.bottom(), half(1 - left), Qt::AlignLeft);
}

void PairView::paint_divide(QPainter& painter, const QRectF& cell, double x) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(card_colour(palette()), 6));
    painter.drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom()));
    painter.setPen(QPen(accent_colour(palette()), 2));
    painter.drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom()));
    const QPointF middle(x, cell.center().y());
    painter.setBrush(card_colour(palette()));
    painter.drawEllipse(middle, handle, handle);
    for (const double way : {-1.0, 1.0}) {
        const QPointF tip = middle + QPointF(way * 12, 0);
        painter.drawPolyline(
            QPolygonF{tip + QPointF(-way * 6, -6), tip, tip + QPointF(-way * 6, 6)});
    }
}

void PairView::paint_in_turns(QPainter& painter) const {
    const QRectF cell = middle_cell();
    paint_side(painter, shown_, cell);
    paint_caption(painter, shown_, cell.bottom(), rect(), Qt::AlignHCenter);
}

void PairView::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    switch (drawn_mode()) {
        case PairMode::side_by_side:
            paint_beside(painter);
            break;
        case PairMode::divide:
            paint_divided(painter);
            break;
        case PairMode::blink:
            paint_in_turns(painter);
            break;
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void PairView::keyPressEvent(QKeyEvent* event) {
    const double way = leads_left() ? key_step : -key_step;
    if (mode_ == PairMode::blink && event->key() == Qt::Key_Space) {
        blinks() ? blink(false) : show_other();
    } else if (mode_ != PairMode::divide) {
        QWidget::keyPressEvent(event);
    } else if (event->key() == Qt::Key_Left) {
        slide_to(divide_ - way);
    } else if (event->key() == Qt::Key_Right) {
        slide_to(divide_ + way);
    } else if (event->key() == Qt::Key_Home) {
        slide_to(0);
    } else if (event->key() == Qt::Key_End) {
        slide_to(1);
    } else {
        QWidget::keyPressEvent(event);
    }
}

void PairView::mousePressEvent(QMouseEvent* event) {
    mouseMoveEvent(event);
}

void PairView::mouseMoveEvent(QMouseEvent* event) {
    if (mode_ != PairMode::divide || !(event->buttons() & Qt::LeftButton)) return;
    const QRectF cell = middle_cell();
    const double share = (event->position().x() - cell.x()) / cell.width();
    slide_to(leads_left() ? share : 1 - share);
}

void PairView::hideEvent(QHideEvent* event) {
    blink(false);
    QWidget::hideEvent(event);
}

}  // namespace quarterturn
