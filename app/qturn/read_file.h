#pragma once
// Text files named on the command line.

#include <string>

namespace quarterturn {

// "-" is standard input. Throws WrongUse when there is no such file, DiskError when it cannot be
// read.
std::string read_text(const std::string& file);

}  // namespace quarterturn
