#include "ui/recipe/number_field.h"

#include <QLineEdit>
#include <QLocale>
#include <QRegularExpressionValidator>
#include <QSignalBlocker>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

void accept_only(QLineEdit& line, const QString& pattern) {
    line.setValidator(new QRegularExpressionValidator(QRegularExpression(pattern), &line));
}

}  // namespace

NumberField::NumberField(const QString& unit, QWidget* parent)
    : Field(parent), line_(new QLineEdit) {
    QHBoxLayout* row = make_row(1);
    line_->setFixedWidth(space(18));
    row->addWidget(line_);
    if (!unit.isEmpty()) {
        QLabel* label = make_text(unit);
        label->setWordWrap(false);
        row->addWidget(label);
    }
    row->addStretch();
    setLayout(row);
    setFocusProxy(line_);
    connect(line_, &QLineEdit::textChanged, this, &Field::changed);
}

void NumberField::name_it(const QString& name) {
    line_->setAccessibleName(name);
}

void NumberField::show_text(const QString& text) {
    const QSignalBlocker silent(this);
    line_->setText(text);
}

QString NumberField::text() const {
    return line_->text();
}

WholeNumberField::WholeNumberField(const QString& unit, QWidget* parent)
    : NumberField(unit, parent) {
    accept_only(line(), QStringLiteral("[0-9]{0,4}"));
}

void WholeNumberField::show_value(std::optional<int> number) {
    if (value() != number) show_text(number ? QString::number(*number) : QString());
}

std::optional<int> WholeNumberField::value() const {
    bool is_number = false;
    const int number = text().toInt(&is_number);
    return is_number ? std::optional(number) : std::nullopt;
}

SizeField::SizeField(const QString& unit, QWidget* parent) : NumberField(unit, parent) {
    accept_only(line(), QStringLiteral("[0-9]{0,3}([.,][0-9]{0,2})?"));
}

void SizeField::show_value(std::optional<double> size) {
    if (value() == size) return;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    show_text(size ? locale.toString(*size, 'g', 6) : QString());
}

std::optional<double> SizeField::value() const {
    bool is_number = false;
    const double size = text().replace(',', '.').toDouble(&is_number);
    return is_number ? std::optional(size) : std::nullopt;
}

}  // namespace quarterturn
