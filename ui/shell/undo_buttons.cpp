#include "ui/shell/undo_buttons.h"

#include <QEvent>
#include <QTimer>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

void allow(QPushButton& button, bool can, const QString& why_not) {
    button.setToolTip(can ? QString() : why_not);
    if (can || !button.hasFocus()) button.setEnabled(can);
}

}  // namespace

UndoButtons::UndoButtons(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(1));
    undo_ = add(tr("Undo"));
    redo_ = add(tr("Redo"));
    connect(undo_, &QPushButton::clicked, &session_, &Session::undo);
    connect(redo_, &QPushButton::clicked, &session_, &Session::redo);
    connect(&session_, &Session::opened, this, &UndoButtons::show_state);
    connect(&session_, &Session::records_changed, this, &UndoButtons::show_state);
    show_state();
}

QPushButton* UndoButtons::add(const QString& name) {
    QPushButton* button = make_quiet_button(name);
    button->setFocusPolicy(Qt::TabFocus);
    button->installEventFilter(this);
    layout()->addWidget(button);
    return button;
}

void UndoButtons::show_state() {
    allow(*undo_, session_.can_undo(), tr("There is nothing to undo."));
    allow(*redo_, session_.can_redo(), tr("There is nothing to do again."));
}

bool UndoButtons::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut) QTimer::singleShot(0, this, &UndoButtons::show_state);
    return QWidget::eventFilter(watched, event);
}

}  // namespace quarterturn
