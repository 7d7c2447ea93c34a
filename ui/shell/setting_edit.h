#pragma once

#include "ui/shell/edits.h"

namespace quarterturn {

// `said` as in "changed the paper for sheets".
Edit change_setting(std::string said, std::string_view name, std::string value);

}  // namespace quarterturn
