#include "ui/widgets/sentence_link.h"

#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int wrapping = Qt::TextWordWrap | Qt::AlignLeading | Qt::AlignTop;
constexpr int widest = 520;

int arrow_width() {
    return space(5);
}

void draw_arrow(QPainter& painter, const QRectF& area, const QColor& colour, bool to_left) {
    const double size = area.height() * 0.22;
    const double way = to_left ? -size : size;
    const QPointF tip(area.center().x() + way, area.center().y());
    QPainterPath arrow;
    arrow.moveTo(tip + QPointF(-way, -size));
    arrow.lineTo(tip);
    arrow.lineTo(tip + QPointF(-way, size));
    painter.strokePath(arrow, QPen(colour, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

}  // namespace

SentenceLink::SentenceLink(const QString& sentence, QWidget* parent)
    : TextButton(sentence, parent) {
    setAccessibleName(sentence);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QRect SentenceLink::text_area(int width) const {
    const int room = std::max(width - arrow_width() - space(1), 1);
    const int height = laid_.size(room, text(), font()).height();
    const int x = isRightToLeft() ? space(1) : arrow_width();
    return {x, std::max(space(1), (least_target - height) / 2), room, height};
}

QSize SentenceLink::sizeHint() const {
    const int whole = fontMetrics().horizontalAdvance(text()) + arrow_width() + space(2);
    const int width = std::min(whole, widest);
    return {width, heightForWidth(width)};
}

QSize SentenceLink::minimumSizeHint() const {
    const int width = arrow_width() + fontMetrics().averageCharWidth() * 16;
    return {width, least_target};
}

int SentenceLink::heightForWidth(int width) const {
    const QRect text = text_area(width);
    return std::max(least_target, text.height() + 2 * text.top());
}

void SentenceLink::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor colour = accent_colour(palette());
    if (underMouse()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(wash_colour(palette()));
        painter.drawRoundedRect(rect(), 6, 6);
    }
    const QRect area = text_area(width());
    const QRectF arrow(isRightToLeft() ? width() - arrow_width() : 0, area.top(), arrow_width(),
                       fontMetrics().height());
    draw_arrow(painter, arrow, colour, isRightToLeft());
    QFont underlined = font();
    underlined.setUnderline(true);
    painter.setFont(underlined);
    painter.setPen(colour);
    painter.drawText(area, wrapping, text());
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
