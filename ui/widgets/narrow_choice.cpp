#include "ui/widgets/narrow_choice.h"

#include <QComboBox>

namespace quarterturn {

void be_as_wide_as_there_is_room(QComboBox& choice) {
    constexpr int least_letters = 8;
    choice.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice.setMinimumContentsLength(least_letters);
    choice.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

}  // namespace quarterturn
