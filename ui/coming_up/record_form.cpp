#include "ui/coming_up/record_form.h"

#include <QFormLayout>
#include <QKeyEvent>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_buttons.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"

namespace quarterturn {

RecordForm::RecordForm(Session& session, const QString& title, QWidget* parent)
    : QWidget(parent),
      session_(session),
      fields_(new QFormLayout),
      below_(make_column()),
      notice_(new Notice),
      buttons_(new FormButtons(tr("Save"))) {
    fields_->setHorizontalSpacing(space(4));
    fields_->setVerticalSpacing(space(2));
    fields_->setLabelAlignment(Qt::AlignLeading);
    fields_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(3));
    column->addWidget(make_heading(title));
    column->addLayout(fields_);
    column->addLayout(below_);
    column->addWidget(notice_);
    connect(buttons_, &FormButtons::kept, this, &RecordForm::save);
    connect(buttons_, &FormButtons::left, this, &RecordForm::done);
    column->addWidget(buttons_);
}

void RecordForm::add_field(const QString& label, QWidget* field) {
    field->setAccessibleName(label);
    fields_->addRow(label, field);
}

void RecordForm::add_below(QWidget* widget) {
    below_->addWidget(widget);
}

void RecordForm::keyPressEvent(QKeyEvent* event) {
    if (!buttons_->take_key(*event)) QWidget::keyPressEvent(event);
}

void RecordForm::save() {
    try {
        session_.change_records_or_throw(edit());
    } catch (const std::exception& problem) {
        notice_->say(said_here(problem.what()));
        return;
    }
    emit done();
}

}  // namespace quarterturn
