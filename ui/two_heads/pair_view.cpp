#include "ui/two_heads/pair_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/two_heads/laid_picture.h"

namespace quarterturn {
namespace {

constexpr double key_step = 0.02;
constexpr double handle = morning_target / 2.0;

}  // namespace

PairView::PairView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(space(40), space(40));
    blinking_.setInterval(usual_milliseconds);
    connect(&blinking_, &QTimer::timeout, this, &PairView::show_other);
}

QSize PairView::sizeHint() const {
    return {space(180), space(120)};
}

void PairView::show_pair(const PairSide& first, const PairSide& second,
                         const std::optional<LaidPair>& laid) {
    sides_ = {first, second};
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

void PairView::stand_for(int how_long) {
    blinking_.setInterval(std::clamp(how_long, least_milliseconds, most_milliseconds));
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
    QString share;
    const int percent = qRound(divide_ * 100);
    if (mode_ == PairMode::divide) {
        //: how much of the picture, and of which photo
        share = tr("%1 % of the picture is this one: %2").arg(percent).arg(sides_[0].which);
    } else if (mode_ == PairMode::fade) {
        //: how strongly, and which photo
        share = tr("%1 % of what is seen is this one: %2").arg(percent).arg(sides_[0].which);
    }
    setAccessibleDescription(share);
}

PairMode PairView::drawn_mode() const {
    return laid_ && laid_->refused.empty() ? mode_ : PairMode::side_by_side;
}

QRectF PairView::inside_of_frame() const {
    const double frame = space(2);
    return QRectF(rect()).adjusted(frame, frame, -frame, -frame);
}

QRectF PairView::half(int side) const {
    const QRectF all = inside_of_frame();
    const double gap = space(4);
    const double width = (all.width() - gap) / 2;
    const bool at_left = (side == 0) == leads_left();
    return {all.x() + (at_left ? 0 : width + gap), all.y(), width, all.height()};
}

QRectF PairView::cell(int side) const {
    return in_the_middle(half(side).adjusted(0, 0, 0, -caption_height()));
}

QRectF PairView::middle_cell() const {
    return in_the_middle(inside_of_frame().adjusted(0, 0, 0, -caption_height()));
}

void PairView::paint_side(QPainter& painter, int side, const QRectF& cell) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    const Similarity lay = side == 1 ? laid_->alignment.second_onto_first : Similarity{};
    draw_laid(painter, cell, shown.picture, shown.mirrored, lay,
              window_of(*laid_, cell.width() / cell.height()), palette());
    if (side == 1 && laid_->hair_differs()) paint_hint(painter, cell);
    if (side == 1 && laid_->accessory_differs()) paint_move(painter, cell);
}

void PairView::paint_whole(QPainter& painter, int side, const QRectF& cell) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    draw_whole(painter, cell, shown.picture, shown.mirrored, palette());
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
    paint_both_captions(painter, cell.bottom());
}

void PairView::paint_both_captions(QPainter& painter, double bottom) const {
    const int left = leads_left() ? 0 : 1;
    paint_caption(painter, left, bottom, half(left), Qt::AlignRight);
    paint_caption(painter, 1 - left, bottom, half(1 - left), Qt::AlignLeft);
}

// The second lies below; how strongly the first lies over it is where the handle stands.
void PairView::paint_faded(QPainter& painter) const {
    const QRectF cell = middle_cell();
    paint_side(painter, 1, cell);
    painter.setOpacity(divide_);
    paint_side(painter, 0, cell);
    painter.setOpacity(1);
    const double y = cell.bottom() - handle - space(2);
    const QLineF way(cell.left() + handle + space(2), y, cell.right() - handle - space(2), y);
    painter.setPen(QPen(card_colour(palette()), 6, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(way);
    painter.setPen(QPen(accent_colour(palette()), 2, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(way);
    paint_handle(painter, way.pointAt(leads_left() ? 1 - divide_ : divide_));
    paint_both_captions(painter, cell.bottom());
}

void PairView::paint_divide(QPainter& painter, const QRectF& cell, double x) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(card_colour(palette()), 6));
    painter.drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom()));
    painter.setPen(QPen(accent_colour(palette()), 2));
    painter.drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom()));
    paint_handle(painter, {x, cell.center().y()});
}

void PairView::paint_handle(QPainter& painter, const QPointF& middle) const {
    painter.setPen(QPen(accent_colour(palette()), 2));
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
        case PairMode::fade:
            paint_faded(painter);
            break;
        case PairMode::blink:
            paint_in_turns(painter);
            break;
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void PairView::keyPressEvent(QKeyEvent* event) {
    // The divide goes where the arrow points, and so does the handle of the fade.
    const double way = leads_left() == (mode_ == PairMode::divide) ? key_step : -key_step;
    if (mode_ == PairMode::blink && event->key() == Qt::Key_Space) {
        blinks() ? blink(false) : show_other();
    } else if (!slides()) {
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
    if (!slides() || !(event->buttons() & Qt::LeftButton)) return;
    const QRectF cell = middle_cell();
    const double share = (event->position().x() - cell.x()) / cell.width();
    slide_to(leads_left() == (mode_ == PairMode::divide) ? share : 1 - share);
}

void PairView::hideEvent(QHideEvent* event) {
    blink(false);
    QWidget::hideEvent(event);
}

}  // namespace quarterturn
