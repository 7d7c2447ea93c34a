#include "ui/widgets/reason_field.h"

#include <QKeyEvent>
#include <QLineEdit>

#include "ui/widgets/parts.h"

namespace quarterturn {

ReasonField::ReasonField(const QString& question, const QString& go_on, QWidget* parent)
    : QWidget(parent), field_(new QLineEdit) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(make_text(question));
    field_->setAccessibleName(question);
    field_->installEventFilter(this);
    column->addWidget(field_);
    QPushButton* yes = make_button(go_on);
    QPushButton* no = make_quiet_button(tr("Leave it"));
    QHBoxLayout* row = make_row();
    row->addWidget(yes);
    row->addWidget(no);
    row->addStretch();
    column->addLayout(row);
    connect(field_, &QLineEdit::returnPressed, this, &ReasonField::finish);
    connect(yes, &QPushButton::clicked, this, &ReasonField::finish);
    connect(no, &QPushButton::clicked, this, &ReasonField::close_field);
    setVisible(false);
}

void ReasonField::ask() {
    field_->clear();
    setVisible(true);
    field_->setFocus();
}

void ReasonField::finish() {
    const QString reason = field_->text().trimmed();
    if (reason.isEmpty()) {
        field_->setFocus();
        return;
    }
    close_field();
    emit given(reason);
}

void ReasonField::close_field() {
    setVisible(false);
    emit closed();
}

bool ReasonField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool command = key->modifiers() & (Qt::ControlModifier | Qt::AltModifier);
        if (event->type() == QEvent::ShortcutOverride) {
            if (!command) event->accept();
            return !command;
        }
        if (key->key() == Qt::Key_Escape) {
            close_field();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace quarterturn
