#pragma once

#include <QWidget>

namespace quarterturn {

// Gives the keyboard to the next (or the one before) of all that takes it in `part`, in the order
// it is laid out, also where it was added later; after the last one comes the first. Where there is
// no layout, in the order of making. Answers false when nothing takes it.
bool focus_in_reading_order(QWidget& part, bool next);

}  // namespace quarterturn
