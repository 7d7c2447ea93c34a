#include "ui/recipe/tick_field.h"

#include <QSignalBlocker>

#include "ui/widgets/parts.h"

namespace quarterturn {

TickField::TickField(const QString& word, QWidget* parent)
    : Field(parent), box_(new QCheckBox(word)) {
    QHBoxLayout* row = make_row();
    row->addWidget(box_);
    setLayout(row);
    setFocusProxy(box_);
    connect(box_, &QCheckBox::toggled, this, &Field::changed);
}

void TickField::name_it(const QString& name) {
    //: a record and one of its fields: "pins 2, crossed"
    box_->setAccessibleName(tr("%1, %2").arg(name, box_->text()));
}

void TickField::show_value(bool ticked) {
    const QSignalBlocker silent(this);
    box_->setChecked(ticked);
}

}  // namespace quarterturn
