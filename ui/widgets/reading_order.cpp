#include "ui/widgets/reading_order.h"

#include <QApplication>
#include <QLayout>
#include <QScrollArea>

namespace quarterturn {
namespace {

using Stops = QList<QWidget*>;

void gather(QWidget& widget, Stops& stops);

void gather(const QLayout& layout, Stops& stops) {
    for (int i = 0; i < layout.count(); ++i) {
        QLayoutItem* item = layout.itemAt(i);
        if (item->widget()) gather(*item->widget(), stops);
        if (item->layout()) gather(*item->layout(), stops);
    }
}

void gather(QWidget& widget, Stops& stops) {
    if (!widget.isVisible() || !widget.isEnabled()) return;
    const bool takes_tab = widget.focusPolicy() & Qt::TabFocus && !widget.focusProxy();
    if (takes_tab) {
        stops << &widget;
        return;
    }
    auto* scrolled = qobject_cast<QScrollArea*>(&widget);
    if (scrolled && scrolled->widget()) return gather(*scrolled->widget(), stops);
    if (widget.layout()) return gather(*widget.layout(), stops);
    for (QWidget* child : widget.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        gather(*child, stops);
    }
}

qsizetype place_of(QWidget* focus, const Stops& stops) {
    for (; focus; focus = focus->parentWidget()) {
        const qsizetype place = stops.indexOf(focus);
        if (place >= 0) return place;
    }
    return -1;
}

}  // namespace

bool focus_in_reading_order(QWidget& part, bool next) {
    Stops stops;
    gather(part, stops);
    if (stops.isEmpty()) return false;
    const qsizetype at = place_of(QApplication::focusWidget(), stops);
    const qsizetype to = next ? at + 1 : std::max<qsizetype>(at, 0) - 1 + stops.size();
    stops[to % stops.size()]->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return true;
}

}  // namespace quarterturn
