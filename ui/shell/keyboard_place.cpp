#include "ui/shell/keyboard_place.h"

#include <QAccessible>
#include <QScrollArea>

namespace quarterturn {
namespace {

QString name_of(QWidget& control) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&control);
    return face ? face->text(QAccessible::Name) : QString();
}

QList<QWidget*> alike(const QWidget& part, const QMetaObject* kind, const QString& name) {
    QList<QWidget*> found;
    for (QWidget* control : part.findChildren<QWidget*>()) {
        if (control->metaObject() != kind || !control->isVisibleTo(&part)) continue;
        if (control->focusPolicy() & Qt::TabFocus && name_of(*control) == name) found << control;
    }
    return found;
}

void scroll_to(QWidget& control) {
    for (QWidget* above = control.parentWidget(); above; above = above->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(above)) scroll->ensureWidgetVisible(&control);
    }
}

}  // namespace

KeyboardPlace::KeyboardPlace(const QWidget& part) : control_(part.window()->focusWidget()) {
    if (control_ && !part.isAncestorOf(control_)) control_ = nullptr;
    if (!control_) return;
    kind_ = control_->metaObject();
    name_ = name_of(*control_);
    number_ = alike(part, kind_, name_).indexOf(control_);
}

void KeyboardPlace::come_back(QWidget& part) const {
    const bool stayed =
        control_ && control_->isVisible() && part.window()->focusWidget() == control_;
    if (!kind_ || stayed) return;
    const QList<QWidget*> found = alike(part, kind_, name_);
    if (found.isEmpty()) return;
    QWidget* control = found[std::clamp<qsizetype>(number_, 0, found.size() - 1)];
    control->setFocus();
    scroll_to(*control);
}

}  // namespace quarterturn
