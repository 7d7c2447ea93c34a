#include "ui/shell/screen.h"

#include "ui/widgets/reading_order.h"

namespace quarterturn {

void Screen::arrive(const Place&) {}

bool Screen::focusNextPrevChild(bool next) {
    return isWindow() ? focus_in_reading_order(*this, next) : QWidget::focusNextPrevChild(next);
}

}  // namespace quarterturn
