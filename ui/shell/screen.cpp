#include "ui/shell/screen.h"

#include "ui/widgets/reading_order.h"

namespace quarterturn {

void Screen::arrive(const Place&) {}

void Screen::stand_alone(bool) {}

bool Screen::focusNextPrevChild(bool next) {
    return isWindow() ? focus_in_reading_order(*this, next) : QWidget::focusNextPrevChild(next);
}

}  // namespace quarterturn
