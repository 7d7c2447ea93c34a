#pragma once

#include <QStyle>
#include <QVariant>
#include <QWidget>

namespace quarterturn {

// A kind of the style sheet for a control that is there already.
inline void show_kind(QWidget& control, const QString& kind) {
    if (control.property("kind").toString() == kind) return;
    control.setProperty("kind", kind);
    control.style()->unpolish(&control);
    control.style()->polish(&control);
}

}  // namespace quarterturn
