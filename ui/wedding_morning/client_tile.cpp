#include "ui/wedding_morning/client_tile.h"

#include <QPainter>
#include <QStyle>

#include "indexer/rules/ring.h"
#include "ui/painter/ring.h"
#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double widest_tile = 18;  // bodies
constexpr double margin = 0.6;
constexpr double underline = 0.22;

}  // namespace

ClientTile::ClientTile(const BoardClient& client, const BoardType& type, QWidget* parent)
    : TextButton({}, parent), type_(type) {
    setCheckable(true);
    setAutoExclusive(true);
    setFont(type.font(BoardRole::small));
    show_client(client);
}

void ClientTile::show_client(const BoardClient& client) {
    setText(name_of(client));
    QStringList below;
    for (const std::string& word : {client.role, client.ready_by}) {
        if (!word.empty()) below << from_utf8(word);
    }
    below << done_in_words(client);
    below_ = below.join(QStringLiteral(" · "));
    ring_.reset();
    if (!client.looks.empty()) ring_ = ring_of(client.looks.front().state.coverage);
    setAccessibleName(
        QStringList{text(), role_and_time(client), below.last()}.join(QStringLiteral(", ")));
    setToolTip(accessibleName());
    updateGeometry();
    update();
}

int ClientTile::ring_side() const {
    return ring_ ? type_.px(2.2) : 0;
}

QSize ClientTile::sizeHint() const {
    QFont bold = font();
    bold.setBold(true);
    const int words = std::max(QFontMetrics(bold).horizontalAdvance(text()),
                               fontMetrics().horizontalAdvance(below_));
    const int width = words + ring_side() + type_.px(3 * margin) + 4;
    return {
        std::min(width, type_.px(widest_tile) + ring_side()),
        std::max(2 * fontMetrics().height() + type_.px(2 * margin + underline), type_.target())};
}

QRect ClientTile::words_area() const {
    const int side = type_.px(margin);
    const int start = ring_ ? ring_side() + 2 * side : side;
    return QStyle::visualRect(
        layoutDirection(), rect(),
        rect().adjusted(start, side / 2, -side, -side / 2 - type_.px(underline)));
}

void ClientTile::draw_lines(QPainter& painter) const {
    const QRect area = words_area();
    const auto line = [&](int number) {
        return QRect(area.left(), area.center().y() + (number - 1) * fontMetrics().height(),
                     area.width(), fontMetrics().height());
    };
    const auto flags =
        Qt::AlignVCenter | Qt::AlignAbsolute | (isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft);
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(ink_colour(palette()));
    painter.drawText(line(0), flags,
                     painter.fontMetrics().elidedText(text(), Qt::ElideRight, area.width()));
    painter.setFont(font());
    painter.drawText(line(1), flags,
                     fontMetrics().elidedText(below_, Qt::ElideMiddle, area.width()));
}

void ClientTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(isChecked() ? Qt::NoPen : QPen(hairline_colour(palette()), 1));
    painter.setBrush(isChecked() || underMouse() ? wash_colour(palette()) : card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 10, 10);
    if (isChecked()) {
        const int thick = type_.px(underline);
        painter.setPen(Qt::NoPen);
        painter.setBrush(accent_colour(palette()));
        painter.drawRoundedRect(rect().adjusted(8, height() - thick - 2, -8, -2), thick / 2.0,
                                thick / 2.0);
    }
    if (ring_) {
        QRect box(type_.px(margin), (height() - ring_side()) / 2, ring_side(), ring_side());
        box = QStyle::visualRect(layoutDirection(), rect(), box);
        draw_ring(painter, box, *ring_, {outline_colour(palette()), accent_colour(palette())});
    }
    draw_lines(painter);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
