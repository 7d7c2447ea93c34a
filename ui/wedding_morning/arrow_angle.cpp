#include "ui/wedding_morning/arrow_angle.h"

#include <QKeyEvent>

namespace quarterturn {

std::optional<Angle> angle_of_arrow(const QKeyEvent& event) {
    const bool further = event.modifiers() & Qt::ShiftModifier;
    switch (event.key()) {
        case Qt::Key_Up:
            return further ? Angle::crown : Angle::front;
        case Qt::Key_Down:
            return further ? Angle::detail : Angle::back;
        case Qt::Key_Left:
            return further ? Angle::left_three_quarter : Angle::left;
        case Qt::Key_Right:
            return further ? Angle::right_three_quarter : Angle::right;
        default:
            return std::nullopt;
    }
}

}  // namespace quarterturn
