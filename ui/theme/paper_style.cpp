#include "ui/theme/paper_style.h"

#include <QStyleOption>

#include "ui/theme/theme.h"

namespace quarterturn {

PaperStyle::PaperStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void PaperStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    if (element == PE_FrameFocusRect) {
        draw_focus_ring(*painter, option->rect, option->palette);
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

int PaperStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* result) const {
    if (hint == SH_UnderlineShortcut) return 1;
    if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
    return QProxyStyle::styleHint(hint, option, widget, result);
}

}  // namespace quarterturn
