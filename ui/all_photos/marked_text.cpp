#include "ui/all_photos/marked_text.h"

#include <QCoreApplication>
#include <QPainter>
#include <QTextLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QTextLayout::FormatRange mark(int start, qsizetype length, const QPalette& palette) {
    QTextCharFormat format;
    format.setFontWeight(QFont::Bold);
    format.setFontUnderline(true);
    format.setBackground(wash_colour(palette));
    return {start, static_cast<int>(length), format};
}

}  // namespace

void draw_marked(QPainter& painter, const QRect& area, const QString& before,
                 const std::vector<TextPiece>& pieces, const QPalette& palette) {
    QString text = before;
    QList<QTextLayout::FormatRange> marks;
    for (const TextPiece& piece : pieces) {
        const QString words = from_utf8(piece.text).simplified();
        const QString spaced = from_utf8(piece.text).replace(QLatin1Char('\n'), QLatin1Char(' '));
        if (piece.marked) marks << mark(static_cast<int>(text.size()), words.size(), palette);
        text += piece.marked ? words : spaced;
    }
    QTextLayout layout(text, painter.font());
    QTextOption option(painter.layoutDirection() == Qt::RightToLeft ? Qt::AlignRight
                                                                    : Qt::AlignLeft);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(painter.layoutDirection());
    layout.setTextOption(option);
    layout.setFormats(marks);
    layout.beginLayout();
    qreal y = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(area.width());
        line.setPosition({0, y});
        y += line.height();
        if (y + line.height() > area.height() + 1) break;
    }
    layout.endLayout();
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    layout.draw(&painter, area.topLeft());
    painter.restore();
}

QString shown(WordsOf where) {
    switch (where) {
        case WordsOf::photo:
            return QCoreApplication::translate("found", "note");
        case WordsOf::client:
            return QCoreApplication::translate("found", "client");
        case WordsOf::wedding:
            return QCoreApplication::translate("found", "wedding");
        case WordsOf::sitting:
            return QCoreApplication::translate("found", "sitting");
        case WordsOf::look:
            return QCoreApplication::translate("found", "look");
        case WordsOf::recipe:
            return QCoreApplication::translate("found", "recipe");
    }
    return {};
}

}  // namespace quarterturn
