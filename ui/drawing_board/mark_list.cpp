#include "ui/drawing_board/mark_list.h"

#include <QLineEdit>
#include <algorithm>

#include "ui/drawing_board/drawing_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

MarkList::MarkList(QWidget* parent)
    : QWidget(parent),
      none_(make_quiet(tr("Marks stand here by their numbers, each with a few words: \"comb\", "
                          "\"padding\", \"two pins crossed\"."))),
      column_(make_column(2)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(none_);
    all->addLayout(column_);
    all->addStretch();
}

void MarkList::show_marks(const std::vector<PlanMark>& marks) {
    const bool same =
        std::equal(marks.begin(), marks.end(), rows_.begin(), rows_.end(),
                   [](const PlanMark& mark, const Row& row) { return mark.number == row.number; });
    if (!same) build_rows(marks);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const QString words = from_utf8(marks[i].words);
        if (rows_[i].words->text() != words) rows_[i].words->setText(words);
        rows_[i].words->setToolTip(mark_words(marks[i]));
    }
    none_->setVisible(marks.empty());
}

void MarkList::build_rows(const std::vector<PlanMark>& marks) {
    empty_layout(column_);
    rows_.clear();
    for (const PlanMark& mark : marks) column_->addWidget(make_mark_row(mark.number));
}

QWidget* MarkList::make_mark_row(int number) {
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(2));
    auto* name = make_text(QString::number(number));
    name->setMinimumWidth(name->fontMetrics().horizontalAdvance(QStringLiteral("00")));
    auto* words = new QLineEdit;
    words->setAccessibleName(tr("Words to mark %1").arg(number));
    words->setPlaceholderText(tr("What is at mark %1?").arg(number));
    connect(words, &QLineEdit::textEdited, this,
            [this, number](const QString& text) { emit written(number, text); });
    connect(words, &QLineEdit::returnPressed, this, &MarkList::done);
    parts->addWidget(name);
    parts->addWidget(words, 1);
    rows_.push_back({number, words});
    return row;
}

void MarkList::write_at(int number) {
    for (const Row& row : rows_) {
        if (row.number == number) row.words->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace quarterturn
