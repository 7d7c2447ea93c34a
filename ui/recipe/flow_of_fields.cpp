#include "ui/recipe/flow_of_fields.h"

#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

FlowOfFields::FlowOfFields(QWidget* parent) : Field(parent), flow_(new FlowLayout(space(2), this)) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FlowOfFields::place(const QString& word, Field& field, int width_steps) {
    auto* pair = new QWidget;
    auto* row = new QHBoxLayout(pair);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(1));
    if (!word.isEmpty()) {
        QLabel* label = make_quiet(word);
        label->setWordWrap(false);
        row->addWidget(label);
    }
    if (width_steps > 0) field.setFixedWidth(space(width_steps));
    row->addWidget(&field);
    flow_->addWidget(pair);
    watch(field);
    if (fields_.empty()) setFocusProxy(&field);
    fields_.emplace_back(word, &field);
}

void FlowOfFields::name_it(const QString& whole) {
    for (const auto& [word, field] : fields_) {
        //: a record and one of its fields: "product 2, amount"
        field->name_it(word.isEmpty() ? whole : tr("%1, %2").arg(whole, word));
    }
}

}  // namespace quarterturn
