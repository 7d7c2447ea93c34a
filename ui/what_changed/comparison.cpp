#include "ui/what_changed/comparison.h"

#include "indexer/rules/compared_parts.h"
#include "ui/theme/theme.h"
#include "ui/what_changed/moment_words.h"
#include "ui/what_changed/part_row.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

Comparison::Comparison(QWidget* parent)
    : QWidget(parent),
      changed_(make_column(4)),
      fold_(make_quiet_button({})),
      same_(new QWidget),
      same_parts_(new QVBoxLayout(same_)) {
    same_parts_->setContentsMargins(0, 0, 0, 0);
    same_parts_->setSpacing(space(4));
    same_->hide();
    fold_->setCheckable(true);
    connect(fold_, &QPushButton::toggled, this, &Comparison::show_fold);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(space(4));
    all->addLayout(changed_);
    all->addWidget(fold_, 0, Qt::AlignLeading);
    all->addWidget(same_);
}

void Comparison::show_moments(const RecipeMoment& was, const RecipeMoment& is) {
    const Recipe& old_recipe = was.revision.recipe;
    const Recipe& new_recipe = is.revision.recipe;
    empty_layout(changed_);
    empty_layout(same_parts_);
    stayed_ = 0;
    add_sides(was, is);
    bool any = false;
    for (const ComparedPart& part : compared_parts(old_recipe, new_recipe)) {
        const bool same = part.edit == PartEdit::same;
        auto* row = new PartRow(part, old_recipe.head_plan, new_recipe.head_plan);
        if (same) {
            ++stayed_;
        } else {
            changed_->addWidget(make_hairline());
            any = true;
        }
        (same ? same_parts_ : changed_)->addWidget(row);
    }
    if (!any) {
        changed_->addWidget(make_text(tr("Both recipes say the same: nothing has changed.")));
    }
    show_fold();
}

void Comparison::add_sides(const RecipeMoment& was, const RecipeMoment& is) {
    QHBoxLayout* row = make_row(6);
    const auto add_side = [row](const QString& heading, const RecipeMoment& moment) {
        QVBoxLayout* column = make_column(1);
        column->addWidget(make_heading(heading.arg(when_words(moment))));
        column->addWidget(make_quiet(which_words(moment)));
        row->addLayout(column, 1);
    };
    //: %1 is as in "trial on 7 Nov 2026"
    add_side(tr("Then: %1"), was);
    add_side(tr("Now: %1"), is);
    changed_->addLayout(row);
}

void Comparison::show_fold() {
    const bool open = fold_->isChecked();
    const QString words = tr("%n part(s) as before", nullptr, stayed_);
    fold_->setText((open ? QStringLiteral("▾  ") : QStringLiteral("▸  ")) + words);
    fold_->setAccessibleName(words);
    fold_->setVisible(stayed_ > 0);
    same_->setVisible(open && stayed_ > 0);
}

}  // namespace quarterturn
