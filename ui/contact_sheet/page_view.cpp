#include "ui/contact_sheet/page_view.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int shadow = 10;

void draw_shadow(QPainter& painter, const QRectF& page, const QColor& ink) {
    QColor soft = ink;
    painter.setPen(Qt::NoPen);
    for (int i = shadow; i > 0; --i) {
        soft.setAlpha(3);
        painter.setBrush(soft);
        painter.drawRoundedRect(page.adjusted(-i, -i + 3, i, i + 3), i, i);
    }
}

}  // namespace

PageView::PageView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(200, 200);
}

void PageView::show_page(const QImage& page, const QString& waiting) {
    page_ = page;
    waiting_ = waiting;
    update();
}

void PageView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    if (!page_.isNull()) {
        const QRect room = rect().adjusted(shadow, shadow, -shadow, -shadow - 4);
        QRectF page(QPointF(), QSizeF(page_.size()).scaled(room.size(), Qt::KeepAspectRatio));
        page.moveCenter(QRectF(room).center());
        draw_shadow(painter, page, ink_colour(palette()));
        painter.drawImage(page, page_);
    }
    if (waiting_.isEmpty()) return;
    const int height = fontMetrics().height() + space(4);
    const QRect strip(0, (this->height() - height) / 2, width(), height);
    painter.fillRect(strip, card_colour(palette()));
    painter.setPen(ink_colour(palette()));
    painter.drawText(strip, Qt::AlignCenter, waiting_);
}

}  // namespace quarterturn
