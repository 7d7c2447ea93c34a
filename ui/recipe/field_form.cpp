#include "ui/recipe/field_form.h"

#include <QFormLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

FieldForm::FieldForm(QWidget* parent) : Field(parent), rows_(new QFormLayout(this)) {
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setHorizontalSpacing(space(4));
    rows_->setVerticalSpacing(space(2));
    rows_->setLabelAlignment(Qt::AlignLeading | Qt::AlignTop);
    rows_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    rows_->setRowWrapPolicy(QFormLayout::WrapLongRows);
}

void FieldForm::add(const QString& word, Field& field) {
    field.name_it(word);
    QLabel* label = make_quiet(word);
    label->setWordWrap(false);
    rows_->addRow(label, &field);
    watch(field);
    fields_.emplace_back(word, &field);
}

void FieldForm::add_below(QWidget& widget) {
    rows_->addRow(&widget);
}

void FieldForm::name_it(const QString& whole) {
    for (const auto& [word, field] : fields_) {
        //: a record and one of its fields: "step 2, pins"
        field->name_it(tr("%1, %2").arg(whole, word));
    }
}

void FieldForm::focus_first() {
    if (!fields_.empty()) fields_.front().second->setFocus();
}

}  // namespace quarterturn
