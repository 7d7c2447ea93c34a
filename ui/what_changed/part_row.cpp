#include "ui/what_changed/part_row.h"

#include <QGridLayout>
#include <QStringList>

#include "ui/drawing_board/drawing_view.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString edit_words(PartEdit edit) {
    switch (edit) {
        case PartEdit::same:
            return PartRow::tr("as it was");
        case PartEdit::changed:
            return PartRow::tr("≠ changed");
        case PartEdit::added:
            return PartRow::tr("+ new");
        case PartEdit::removed:
            return PartRow::tr("− left out");
    }
    return {};
}

QString marked(const WordRun& run, bool gone) {
    const QString words = from_utf8(run.words).toHtmlEscaped();
    if (!run.changed) return words;
    return (gone ? QStringLiteral("<s>%1</s>") : QStringLiteral("<b><u>%1</u></b>")).arg(words);
}

QLabel* bold_text(const QString& text) {
    QLabel* label = make_text(text);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

}  // namespace

QString marked_text(const std::vector<std::vector<WordRun>>& lines, bool gone) {
    QStringList all;
    for (const std::vector<WordRun>& line : lines) {
        QStringList runs;
        for (const WordRun& run : line) runs << marked(run, gone);
        all << runs.join(QLatin1Char(' '));
    }
    return all.join(QStringLiteral("<br>"));
}

PartRow::PartRow(const ComparedPart& part, const HeadDrawing& was, const HeadDrawing& is,
                 QWidget* parent)
    : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space(6));
    grid->setVerticalSpacing(space(1));
    for (const int column : {0, 1}) grid->setColumnStretch(column, 1);
    grid->addWidget(bold_text(from_utf8(part.what)), 0, 0);
    grid->addWidget(make_quiet(edit_words(part.edit)), 0, 1);
    const LineChanges lines = line_changes(part.was, part.is);
    add_side(*grid, 0, lines.was, part.drawing ? &was : nullptr);
    add_side(*grid, 1, lines.is, part.drawing ? &is : nullptr);
}

void PartRow::add_side(QGridLayout& grid, int column,
                       const std::vector<std::vector<WordRun>>& lines, const HeadDrawing* drawing) {
    if (lines.empty()) {
        grid.addWidget(make_quiet(tr("nothing")), 1, column, Qt::AlignTop);
        return;
    }
    QLabel* text = make_text({});
    text->setTextFormat(Qt::RichText);
    text->setText(marked_text(lines, column == 0));
    grid.addWidget(text, 1, column, Qt::AlignTop);
    if (drawing) grid.addWidget(new DrawingView(*drawing), 2, column, Qt::AlignLeading);
}

}  // namespace quarterturn
