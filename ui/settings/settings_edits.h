#pragma once
// The edits that the settings make, each with its way back.

#include "ui/shell/setting_edit.h"

namespace quarterturn {

Edit change_usual_shots(const ShotList& after);

}  // namespace quarterturn
