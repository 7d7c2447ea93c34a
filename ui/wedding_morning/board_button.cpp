#include "ui/wedding_morning/board_button.h"

#include <QTextLayout>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int button_edge = 2;  // of the style sheet

}  // namespace

QString on_lines(const QString& words, const QFont& font, int width) {
    QTextLayout layout(words, font);
    QTextOption wrapping = layout.textOption();
    wrapping.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(wrapping);
    QStringList lines;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        lines << words.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines.join(QLatin1Char('\n'));
}

// The style sheet says how high a button is, whatever its minimum.
void suit_board(QPushButton& button, const BoardType& type, BoardRole role) {
    button.setFont(type.font(role));
    const int inside = type.target() - 2 * (space(1) + button_edge);
    button.setStyleSheet(QStringLiteral("QPushButton { min-height: %1px; }").arg(inside));
}

}  // namespace quarterturn
