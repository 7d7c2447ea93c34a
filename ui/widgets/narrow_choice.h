#pragma once

class QComboBox;

namespace quarterturn {

// Takes the room it is given, and no more for the sake of its longest choice.
void be_as_wide_as_there_is_room(QComboBox& choice);

}  // namespace quarterturn
