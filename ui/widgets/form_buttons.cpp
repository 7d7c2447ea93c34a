#include "ui/widgets/form_buttons.h"

#include <QKeyEvent>

#include "ui/widgets/parts.h"

namespace quarterturn {

FormButtons::FormButtons(const QString& keep, const QString& beside, QWidget* parent)
    : QWidget(parent), leave_(make_button(tr("Leave as it was"))) {
    QPushButton* keep_it = make_next_button(keep);
    connect(keep_it, &QPushButton::clicked, this, &FormButtons::kept);
    connect(leave_, &QPushButton::clicked, this, &FormButtons::left);
    QHBoxLayout* row = make_row();
    row->addWidget(keep_it);
    row->addWidget(leave_);
    if (beside.isEmpty()) {
        row->addStretch();
    } else {
        row->addWidget(make_quiet(beside), 1);
    }
    setLayout(row);
}

bool FormButtons::take_key(const QKeyEvent& event) {
    switch (event.key()) {
        case Qt::Key_Escape:
            emit left();
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            leave_->hasFocus() ? emit left() : emit kept();
            return true;
        default:
            return false;
    }
}

}  // namespace quarterturn
