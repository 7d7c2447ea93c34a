#include "ui/drawing_board/head_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <cmath>

#include "indexer/rules/drawing_on_head.h"
#include "ui/drawing_board/drawing_words.h"
#include "ui/painter/head_drawing.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double within_reach = 0.12;   // of what is pointed at, in half-widths of the head
constexpr double shortest_line = 0.08;  // what is shorter was a click
constexpr double crosshair_step = 0.1;
constexpr double fine_step = 0.02;

double length_of(const std::vector<PlanPoint>& trail) {
    double furthest = 0;
    for (const PlanPoint& point : trail) {
        furthest =
            std::max(furthest, std::hypot(point.x - trail.front().x, point.y - trail.front().y));
    }
    return furthest;
}

}  // namespace

HeadCanvas::HeadCanvas(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    look_again();
}

QSize HeadCanvas::sizeHint() const {
    return {space(90), space(96)};
}

QSize HeadCanvas::minimumSizeHint() const {
    return {space(60), space(64)};
}

QRectF HeadCanvas::head_box() const {
    const int margin = fontMetrics().height() + space(2);
    return QRectF(rect()).adjusted(margin, margin, -margin, -margin);
}

void HeadCanvas::show_drawing(const HeadDrawing& drawing) {
    if (things_drawn(drawing) != things_drawn(drawing_)) chosen_.reset();
    drawing_ = drawing;
    look_again();
}

void HeadCanvas::use(DrawingTool tool) {
    tool_ = tool;
    leave_line();
}

bool HeadCanvas::draws_lines() const {
    return tool_ == DrawingTool::parting || tool_ == DrawingTool::section;
}

StrokeKind HeadCanvas::kind() const {
    return tool_ == DrawingTool::parting ? StrokeKind::parting : StrokeKind::section;
}

void HeadCanvas::choose(std::optional<std::size_t> thing) {
    chosen_ = thing;
    look_again();
}

void HeadCanvas::look_again() {
    //: %1 says what is drawn on it
    setAccessibleName(tr("The head from above: %1").arg(drawing_words(drawing_)));
    setAccessibleDescription(hint());
    update();
    emit hint_changed();
}

QString HeadCanvas::line_hint() const {
    return tr("The line begins at %1 and is now at %2. Space puts a corner, Enter ends the line, "
              "Escape leaves it.")
        .arg(place_words(points_.front()), place_words(crosshair_));
}

QString HeadCanvas::hint() const {
    if (!points_.empty()) return line_hint();
    if (chosen_) {
        return tr("Chosen: %1. Delete takes it out.").arg(thing_words(drawing_, *chosen_));
    }
    if (by_keys_ && hasFocus()) {
        const QString place = place_words(crosshair_);
        if (draws_lines()) return tr("At %1. Space begins a line; the arrows go on.").arg(place);
        if (tool_ == DrawingTool::mark) return tr("At %1. Space puts a mark.").arg(place);
        return tr("At %1. Space takes out what is there.").arg(place);
    }
    switch (tool_) {
        case DrawingTool::parting:
            return tr("Draw the parting where it lies, as you stand behind the chair.");
        case DrawingTool::section:
            return tr("Draw along a section, or all the way round it.");
        case DrawingTool::mark:
            return tr("Touch the head where a numbered mark belongs.");
        case DrawingTool::take_out:
            return tr("Touch what is to go.");
    }
    return {};
}

void HeadCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    by_keys_ = false;
    leave_line();
    trail_ = {on_head_plan(head_box(), event->position())};
}

void HeadCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (trail_.empty() || !draws_lines()) return;
    trail_.push_back(on_head_plan(head_box(), event->position()));
    update();
}

void HeadCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || trail_.empty()) return;
    const std::vector<PlanPoint> trail = std::exchange(trail_, {});
    if (draws_lines() && length_of(trail) >= shortest_line) {
        end_line(stroke_of(kind(), drawn_line(trail)));
    } else {
        touch_at(on_head_plan(head_box(), event->position()));
    }
}

void HeadCanvas::touch_at(PlanPoint point) {
    const auto there = thing_at(drawing_, point, within_reach);
    if (tool_ == DrawingTool::take_out) {
        if (there) emit taken_out(*there);
        return;
    }
    const bool on_mark = there && *there >= drawing_.strokes.size();
    if (tool_ == DrawingTool::mark && !on_mark) {
        emit dropped(on_head(point));
    } else {
        choose(there);
    }
}

void HeadCanvas::keyPressEvent(QKeyEvent* event) {
    if (!press_key(event->key(), event->modifiers() & Qt::ShiftModifier)) event->ignore();
}

bool HeadCanvas::press_key(int key, bool finely) {
    const double step = finely ? fine_step : crosshair_step;
    switch (key) {
        case Qt::Key_Left:
            move_crosshair(-step, 0);
            return true;
        case Qt::Key_Right:
            move_crosshair(step, 0);
            return true;
        case Qt::Key_Up:
            move_crosshair(0, -step);
            return true;
        case Qt::Key_Down:
            move_crosshair(0, step);
            return true;
        case Qt::Key_Space:
            put_point(false);
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            put_point(true);
            return true;
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            if (chosen_) emit taken_out(*chosen_);
            return chosen_.has_value();
        case Qt::Key_Escape: {
            const bool something = !points_.empty() || chosen_;
            leave_line();
            return something;
        }
        default:
            break;
    }
    const int digit = key - Qt::Key_1;
    if (digit < 0 || digit > static_cast<int>(DrawingTool::take_out)) return false;
    emit tool_wanted(static_cast<DrawingTool>(digit));
    return true;
}

void HeadCanvas::move_crosshair(double x, double y) {
    by_keys_ = true;
    chosen_.reset();
    crosshair_ = on_head({crosshair_.x + x, crosshair_.y + y});
    look_again();
}

void HeadCanvas::put_point(bool last) {
    by_keys_ = true;
    if (!draws_lines()) {
        if (chosen_ && tool_ == DrawingTool::take_out) {
            emit taken_out(*chosen_);
        } else {
            touch_at(crosshair_);
        }
        return;
    }
    chosen_.reset();
    const bool begun = !points_.empty();
    if (!begun || points_.back() != crosshair_) points_.push_back(crosshair_);
    if (last && begun) {
        const Stroke stroke = stroke_of(kind(), std::exchange(points_, {}));
        if (stroke.points.size() > 1) end_line(stroke);
    }
    look_again();
}

void HeadCanvas::end_line(const Stroke& stroke) {
    chosen_.reset();
    emit drawn(stroke);
}

void HeadCanvas::leave_line() {
    points_.clear();
    trail_.clear();
    choose(std::nullopt);
}

void HeadCanvas::focusInEvent(QFocusEvent* event) {
    by_keys_ = event->reason() != Qt::MouseFocusReason;
    look_again();
    QWidget::focusInEvent(event);
}

void HeadCanvas::focusOutEvent(QFocusEvent* event) {
    if (event->reason() != Qt::ActiveWindowFocusReason) leave_line();
    QWidget::focusOutEvent(event);
}

bool HeadCanvas::focusNextPrevChild(bool next) {
    const auto things = static_cast<std::ptrdiff_t>(things_drawn(drawing_));
    const std::ptrdiff_t none = next ? -1 : things;
    const std::ptrdiff_t at = chosen_ ? static_cast<std::ptrdiff_t>(*chosen_) : none;
    const std::ptrdiff_t to = next ? at + 1 : at - 1;
    if (to < 0 || to >= things) return QWidget::focusNextPrevChild(next);
    by_keys_ = true;
    points_.clear();
    choose(static_cast<std::size_t>(to));
    return true;
}

}  // namespace quarterturn
