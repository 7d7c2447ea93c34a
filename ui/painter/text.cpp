#include "ui/painter/text.h"

#include <QFontMetricsF>

#include "ui/painter/paint.h"
#include "ui/painter/shaped_line.h"

namespace quarterturn {
namespace {

QFont font_of(double points, bool bold) {
    QFont font;
    // Noto Sans has sisters for nearly every script, which are found by themselves.
    font.setFamilies({"Noto Sans", "DejaVu Sans"});
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPixelSize(std::max(1, qRound(points * 10)));
    font.setBold(bold);
    // The smallest spacing there is: it switches off ligatures, which a reader would copy out of a
    // PDF as one strange character.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 64);
    return font;
}

Qt::Alignment alignment_of(Align align, const QString& words) {
    switch (align) {
        case Align::left:
            return Qt::AlignLeft;
        case Align::centre:
            return Qt::AlignHCenter;
        case Align::right:
            return Qt::AlignRight;
        case Align::start:
            return words.isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft;
    }
    return Qt::AlignLeft;
}

QTextOption option_of(Align align, const QString& words) {
    QTextOption option(alignment_of(align, words));
    // A line that begins with a name in Arabic is still a line that runs to the right.
    option.setTextDirection(align == Align::start ? Qt::LayoutDirectionAuto : Qt::LeftToRight);
    option.setUseDesignMetrics(true);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    return option;
}

QString paragraphs(const std::string& text) {
    return QString::fromStdString(text).replace('\n', QChar::LineSeparator);
}

// Lines of the width, one below the other; answers how high they stand.
double break_lines(QTextLayout& layout, double width) {
    double height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height});
        height += line.height();
    }
    layout.endLayout();
    return height;
}

// How many lines stand whole within the height; one at least, if there is any.
int lines_within(const QTextLayout& layout, double height) {
    int count = 0;
    while (count < layout.lineCount() &&
           layout.lineAt(count).y() + layout.lineAt(count).height() <= height + 1) {
        ++count;
    }
    return std::min(std::max(count, 1), layout.lineCount());
}

void draw_line(QPainter& painter, const QTextLayout& layout, const QTextLine& line,
               const QPointF& at) {
    if (needs_shaping(layout.text().mid(line.textStart(), line.textLength()))) {
        draw_shaped_line(painter, layout.text(), line, at);
    } else {
        line.draw(&painter, at);
    }
}

void draw_cut_line(QPainter& painter, const QTextLayout& whole, const QTextLine& line,
                   const QPointF& at) {
    const QString rest = whole.text().mid(line.textStart()).replace(QChar::LineSeparator, ' ');
    QTextLayout cut(QFontMetricsF(whole.font()).elidedText(rest, Qt::ElideRight, line.width()),
                    whole.font());
    cut.setTextOption(whole.textOption());
    break_lines(cut, line.width());
    if (cut.lineCount() > 0) draw_line(painter, cut, cut.lineAt(0), at + QPointF(0, line.y()));
}

class QtTextRuler : public TextRuler {
  public:
    double height_mm(const std::string& text, double points, bool bold, double width_mm) override {
        QTextLayout layout(paragraphs(text), font_of(points, bold));
        layout.setTextOption(option_of(Align::left, layout.text()));
        return break_lines(layout, width_mm * dots_per_mm) / dots_per_mm;
    }
};

}  // namespace

LaidText::LaidText(const TextItem& item)
    : layout_(paragraphs(item.text), font_of(item.points, item.bold)),
      at_(item.box.x * dots_per_mm, item.box.y * dots_per_mm) {
    layout_.setTextOption(option_of(item.align, layout_.text()));
    break_lines(layout_, item.box.width * dots_per_mm);
    fitting_ = lines_within(layout_, item.box.height * dots_per_mm);
}

void LaidText::draw(QPainter& painter, const QColor& colour) const {
    painter.setPen(colour);
    for (int i = 0; i < fitting_; ++i) {
        const bool cut = i + 1 == fitting_ && fitting_ < layout_.lineCount();
        if (cut)
            draw_cut_line(painter, layout_, layout_.lineAt(i), at_);
        else
            draw_line(painter, layout_, layout_.lineAt(i), at_);
    }
}

void draw_text(QPainter& painter, const TextItem& item, const QColor& colour) {
    LaidText(item).draw(painter, colour);
}

std::unique_ptr<TextRuler> make_text_ruler() {
    return std::make_unique<QtTextRuler>();
}

}  // namespace quarterturn
