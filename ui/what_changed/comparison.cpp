#include "ui/what_changed/comparison.h"

#include "ui/theme/theme.h"
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

void Comparison::show_recipes(const Recipe& was, const QString& then, const Recipe& is,
                              const QString& now) {
    empty_layout(changed_);
    empty_layout(same_parts_);
    stayed_ = 0;
    add_sides(then, now);
    bool any = false;
    for (const ComparedPart& part : compared_parts(was, is)) {
        const bool same = part.edit == PartEdit::same;
        auto* row = new PartRow(part, was.head_plan, is.head_plan);
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

void Comparison::add_sides(const QString& then, const QString& now) {
    QHBoxLayout* row = make_row(6);
    row->addWidget(make_heading(then), 1);
    row->addWidget(make_heading(now), 1);
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
