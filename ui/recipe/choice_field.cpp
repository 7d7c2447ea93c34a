#include "ui/recipe/choice_field.h"

#include <QComboBox>
#include <QEvent>
#include <QSignalBlocker>

#include "ui/widgets/parts.h"

namespace quarterturn {

ChoiceField::ChoiceField(QWidget* parent) : Field(parent), box_(new QComboBox) {
    QHBoxLayout* row = make_row();
    row->addWidget(box_);
    row->addStretch();
    setLayout(row);
    setFocusProxy(box_);
    box_->installEventFilter(this);
    connect(box_, &QComboBox::currentIndexChanged, this, &Field::changed);
}

void ChoiceField::name_it(const QString& name) {
    box_->setAccessibleName(name);
}

bool ChoiceField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel) return Field::eventFilter(watched, event);
    event->ignore();
    return true;
}

void ChoiceField::add_choice(const QString& words, int number) {
    box_->addItem(words, number);
}

void ChoiceField::choose(int number) {
    const QSignalBlocker silent(this);
    box_->setCurrentIndex(box_->findData(number));
}

int ChoiceField::chosen() const {
    return box_->currentIndex() < 0 ? -1 : box_->currentData().toInt();
}

}  // namespace quarterturn
