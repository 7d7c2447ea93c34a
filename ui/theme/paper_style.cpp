#include "ui/theme/paper_style.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int tick_box = 20;
constexpr int field_border = 2;

QColor edge_colour(const QStyleOption& option) {
    const bool attended = option.state & QStyle::State_HasFocus;
    return attended ? accent_colour(option.palette) : outline_colour(option.palette);
}

void draw_field(QPainter& painter, const QStyleOption& option) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const bool attended = option.state & QStyle::State_HasFocus;
    painter.setPen(QPen(edge_colour(option), attended ? 3 : field_border));
    painter.setBrush(card_colour(option.palette));
    painter.drawRoundedRect(QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5), 6, 6);
    painter.restore();
}

void draw_tick_box(QPainter& painter, const QStyleOption& option) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(option.rect).adjusted(1, 1, -1, -1);
    const bool ticked = option.state & QStyle::State_On;
    painter.setPen(
        QPen(ticked ? accent_colour(option.palette) : outline_colour(option.palette), 2));
    painter.setBrush(ticked ? accent_colour(option.palette) : card_colour(option.palette));
    painter.drawRoundedRect(box, 4, 4);
    if (ticked) {
        QPainterPath tick(box.topLeft() + QPointF(box.width() * 0.24, box.height() * 0.52));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.43, box.height() * 0.72));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.77, box.height() * 0.3));
        painter.strokePath(tick, QPen(on_accent_colour(option.palette), 2.4, Qt::SolidLine,
                                      Qt::RoundCap, Qt::RoundJoin));
    }
    painter.restore();
}

void draw_round_mark(QPainter& painter, const QStyleOption& option) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF round = QRectF(option.rect).adjusted(1, 1, -1, -1);
    const bool chosen = option.state & QStyle::State_On;
    painter.setPen(
        QPen(chosen ? accent_colour(option.palette) : outline_colour(option.palette), 2));
    painter.setBrush(card_colour(option.palette));
    painter.drawEllipse(round);
    if (chosen) {
        const double ring = round.width() * 0.24;
        painter.setPen(Qt::NoPen);
        painter.setBrush(accent_colour(option.palette));
        painter.drawEllipse(round.adjusted(ring, ring, -ring, -ring));
    }
    painter.restore();
}

}  // namespace

void draw_chevron(QPainter& painter, const QRect& area, const QColor& colour, bool up) {
    const QPointF centre = QRectF(area).center();
    const double half = 5;
    const double drop = up ? -half / 2 : half / 2;
    QPainterPath path(centre + QPointF(-half, -drop));
    path.lineTo(centre + QPointF(0, drop));
    path.lineTo(centre + QPointF(half, -drop));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.strokePath(path, QPen(colour, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.restore();
}

PaperStyle::PaperStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void PaperStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    switch (element) {
        case PE_FrameFocusRect:
            draw_focus_ring(*painter, option->rect, option->palette);
            return;
        case PE_IndicatorCheckBox:
            draw_tick_box(*painter, *option);
            return;
        case PE_IndicatorRadioButton:
            draw_round_mark(*painter, *option);
            return;
        case PE_FrameLineEdit:
            draw_field(*painter, *option);
            return;
        case PE_PanelLineEdit: {
            const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            if (frame && frame->lineWidth > 0) draw_field(*painter, *option);
            return;
        }
        default:
            QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void PaperStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    const QColor ink = ink_colour(option->palette);
    if (control == CC_ComboBox) {
        draw_field(*painter, *option);
        draw_chevron(*painter, subControlRect(control, option, SC_ComboBoxArrow, widget), ink,
                     false);
    } else if (control == CC_SpinBox) {
        draw_field(*painter, *option);
        draw_chevron(*painter, subControlRect(control, option, SC_SpinBoxUp, widget), ink, true);
        draw_chevron(*painter, subControlRect(control, option, SC_SpinBoxDown, widget), ink, false);
    } else {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
    }
}

// What is chosen is cut with an ellipsis where it does not fit.
void PaperStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    const auto* choice = qstyleoption_cast<const QStyleOptionComboBox*>(option);
    if (element != CE_ComboBoxLabel || !choice) {
        return QProxyStyle::drawControl(element, option, painter, widget);
    }
    QStyleOptionComboBox fitting(*choice);
    const QRect field = subControlRect(CC_ComboBox, choice, SC_ComboBoxEditField, widget);
    fitting.currentText =
        choice->fontMetrics.elidedText(choice->currentText, Qt::ElideRight, field.width() - 2);
    QProxyStyle::drawControl(element, &fitting, painter, widget);
}

QSize PaperStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                   const QWidget* widget) const {
    QSize needed = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
        case CT_LineEdit:
        case CT_ComboBox:
        case CT_SpinBox:
            needed.setHeight(std::max(option->fontMetrics.height() + space(4), least_target + 8));
            needed.rwidth() += space(3);
            break;
        case CT_CheckBox:
        case CT_RadioButton:
            needed.setHeight(std::max(needed.height() + 4, least_target + 4));
            break;
        default:
            break;
    }
    return needed;
}

QRect PaperStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                 SubControl part, const QWidget* widget) const {
    const QRect whole = option->rect;
    const int arrow_width = least_target + 4;
    const auto visual = [&](const QRect& area) {
        return visualRect(option->direction, whole, area);
    };
    if (control == CC_ComboBox && part == SC_ComboBoxArrow) {
        return visual({whole.right() - arrow_width, whole.top(), arrow_width, whole.height()});
    }
    const bool edit = (control == CC_ComboBox && part == SC_ComboBoxEditField) ||
                      (control == CC_SpinBox && part == SC_SpinBoxEditField);
    if (edit) return visual(whole.adjusted(space(2), 3, -arrow_width, -3));
    if (control == CC_SpinBox && (part == SC_SpinBoxUp || part == SC_SpinBoxDown)) {
        const int half = whole.height() / 2;
        const int top = part == SC_SpinBoxUp ? whole.top() : whole.top() + half;
        return visual({whole.right() - arrow_width, top, arrow_width, half});
    }
    return QProxyStyle::subControlRect(control, option, part, widget);
}

QRect PaperStyle::subElementRect(SubElement element, const QStyleOption* option,
                                 const QWidget* widget) const {
    const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
    if (element == SE_LineEditContents && frame && frame->lineWidth > 0) {
        return option->rect.adjusted(space(2), 2, -space(2), -2);
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

int PaperStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                            const QWidget* widget) const {
    switch (metric) {
        case PM_IndicatorWidth:
        case PM_IndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
            return tick_box;
        case PM_CheckBoxLabelSpacing:
        case PM_RadioButtonLabelSpacing:
            return space(2);
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int PaperStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* result) const {
    if (hint == SH_UnderlineShortcut) return 1;
    if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
    if (hint == SH_ComboBox_Popup) return 0;
    // The wheel turns the page, also where the pointer comes to lie on a choice.
    if (hint == SH_ComboBox_AllowWheelScrolling) return 0;
    return QProxyStyle::styleHint(hint, option, widget, result);
}

}  // namespace quarterturn
