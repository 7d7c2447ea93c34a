#include "ui/widgets/measured_text.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <QTextOption>
#include <algorithm>
#include <cmath>

namespace quarterturn {
namespace {

// As text is painted: one new line for another, and a space for a tab.
QString as_painted(QString text) {
    return text.replace(QLatin1Char('\n'), QChar(QChar::LineSeparator))
        .replace(QLatin1Char('\t'), QLatin1Char(' '));
}

}  // namespace

MeasuredText::MeasuredText() = default;
MeasuredText::~MeasuredText() = default;

QSize MeasuredText::size(int width, const QString& text, const QFont& font) {
    if (!layout_ || text != text_ || font != layout_->font()) {
        text_ = text;
        layout_ = std::make_unique<QTextLayout>(as_painted(text), font);
        QTextOption option;
        option.setTextDirection(text.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
        layout_->setTextOption(option);
        // It is never ended, since its glyphs would go then.
        layout_->beginLayout();
        sizes_.clear();
    }
    const auto known = sizes_.constFind(width);
    if (known != sizes_.constEnd()) return *known;
    return *sizes_.insert(width, measured(width));
}

QSize MeasuredText::measured(int width) {
    layout_->clearLayout();
    const double leading = QFontMetricsF(layout_->font()).leading();
    double height = -leading;
    double widest = 0;
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width);
        height = std::ceil(height + leading) + line.ascent() + line.descent();
        widest = std::max(widest, line.naturalTextWidth());
    }
    return {static_cast<int>(std::ceil(widest)), static_cast<int>(std::ceil(height))};
}

}  // namespace quarterturn
