#include "ui/recipe/temperature_field.h"

#include <QComboBox>
#include <QSignalBlocker>

#include "ui/recipe/number_field.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int celsius_row = 0;
constexpr int fahrenheit_row = 1;

}  // namespace

TemperatureField::TemperatureField(QWidget* parent)
    : Field(parent), number_(new WholeNumberField({})), unit_(new QComboBox) {
    unit_->addItem(tr("°C"));
    unit_->addItem(tr("°F"));
    QHBoxLayout* row = make_row(1);
    row->addWidget(number_);
    row->addWidget(unit_);
    setLayout(row);
    setFocusProxy(number_);
    watch(*number_);
    connect(unit_, &QComboBox::currentIndexChanged, this, &Field::changed);
}

void TemperatureField::name_it(const QString& name) {
    number_->name_it(name);
    unit_->setAccessibleName(tr("%1: unit").arg(name));
}

void TemperatureField::show_value(const Degrees& degrees) {
    const QSignalBlocker silent(this);
    number_->show_value(degrees.fahrenheit ? degrees.fahrenheit : degrees.celsius);
    if (degrees.fahrenheit) unit_->setCurrentIndex(fahrenheit_row);
    if (degrees.celsius) unit_->setCurrentIndex(celsius_row);
}

Degrees TemperatureField::value() const {
    const auto number = number_->value();
    if (unit_->currentIndex() == fahrenheit_row) return {.celsius = {}, .fahrenheit = number};
    return {.celsius = number, .fahrenheit = {}};
}

}  // namespace quarterturn
