#pragma once
// The edits that the settings make, each with its way back.

#include "ui/shell/edits.h"

namespace quarterturn {

// `said` as in "changed the paper for sheets".
Edit change_setting(Library& library, std::string said, std::string_view name, std::string value);
Edit change_usual_shots(Library& library, const ShotList& after);

}  // namespace quarterturn
