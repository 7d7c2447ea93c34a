#pragma once
// Passphrases: from the first line of a file, or typed on the terminal without being shown.

#include <string>

#include "app/qturn/session.h"

namespace quarterturn {

// From `file`, else the terminal. Throws WrongUse when there is neither.
std::string asked_passphrase(const std::string& question, const std::string& file);
// Typed twice on the terminal.
std::string asked_new_passphrase(const std::string& file);

}  // namespace quarterturn
