#include "ui/widgets/named_fields.h"

#include "ui/widgets/parts.h"

namespace quarterturn {

QLayout* make_named_fields(const std::vector<std::pair<QString, QWidget*>>& fields) {
    QHBoxLayout* row = make_row(3);
    for (const auto& [name, field] : fields) {
        field->setAccessibleName(name);
        QVBoxLayout* one = make_column(1);
        one->addWidget(make_quiet(name));
        one->addWidget(field);
        row->addLayout(one, 1);
    }
    return row;
}

}  // namespace quarterturn
