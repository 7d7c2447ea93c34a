#include "ui/consent/signature_pad.h"

#include <QMouseEvent>
#include <QPainter>
#include <QTabletEvent>
#include <QTouchEvent>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int least_height_steps = 40;
constexpr int least_width_steps = 80;
constexpr int least_ink_steps = 10;  // shorter than the shortest initials
constexpr double pen_width = 2.6;    // of a fine felt pen, in device-independent pixels
constexpr double picture_scale = 3;  // sharp on paper

}  // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_AcceptTouchEvents);
    setMinimumSize(space(least_width_steps), space(least_height_steps));
    setCursor(Qt::CrossCursor);
    setAccessibleName(tr("Area to sign in with a pen, a finger or the mouse"));
}

bool SignaturePad::is_signed() const {
    double length = 0;
    for (const QPolygonF& stroke : strokes_) {
        for (int i = 1; i < stroke.size(); ++i) {
            length += QLineF(stroke[i - 1], stroke[i]).length();
        }
    }
    return length >= space(least_ink_steps);
}

void SignaturePad::clear() {
    strokes_.clear();
    drawing_ = false;
    update();
    emit changed();
}

void SignaturePad::begin(QPointF at) {
    drawing_ = true;
    strokes_.push_back(QPolygonF({at}));
    update();
    emit changed();
}

void SignaturePad::go_on(QPointF at) {
    if (!drawing_) return;
    strokes_.back() << at;
    update();
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) begin(event->position());
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) go_on(event->position());
}

void SignaturePad::mouseReleaseEvent(QMouseEvent*) {
    end();
}

void SignaturePad::tabletEvent(QTabletEvent* event) {
    if (event->type() == QEvent::TabletPress) begin(event->position());
    if (event->type() == QEvent::TabletMove) go_on(event->position());
    if (event->type() == QEvent::TabletRelease) end();
    event->accept();  // else it would come again as the mouse's
}

bool SignaturePad::event(QEvent* event) {
    const QEvent::Type type = event->type();
    if (type != QEvent::TouchBegin && type != QEvent::TouchUpdate && type != QEvent::TouchEnd) {
        return QWidget::event(event);
    }
    // One finger signs; the ball of the hand beside it does not.
    const auto& points = static_cast<QTouchEvent*>(event)->points();
    if (type == QEvent::TouchBegin) {
        begin(points.front().position());
    } else if (!points.isEmpty()) {
        go_on(points.front().position());
    }
    if (type == QEvent::TouchEnd) end();
    event->accept();
    return true;
}

void SignaturePad::draw_strokes(QPainter& painter, const QColor& ink) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ink, pen_width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const QPolygonF& stroke : strokes_) {
        if (stroke.size() == 1) {
            painter.drawPoint(stroke.front());
        } else {
            painter.drawPolyline(stroke);
        }
    }
}

QImage SignaturePad::picture() const {
    QImage picture((QSizeF(size()) * picture_scale).toSize(), QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.scale(picture_scale, picture_scale);
    draw_strokes(painter, Qt::black);
    return picture;
}

void SignaturePad::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(outline_colour(palette()), 1));
    painter.setBrush(card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), space(2), space(2));
    const int line = height() - space(9);
    painter.setPen(QPen(hairline_colour(palette()), 1));
    painter.drawLine(space(6), line, width() - space(6), line);
    draw_strokes(painter, ink_colour(palette()));
}

}  // namespace quarterturn
