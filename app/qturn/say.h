#pragma once
// Text for a terminal.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/count_text.h"

namespace quarterturn {

// One line of valid UTF-8 that no file name can turn into a command to the terminal: controls,
// direction overrides and bytes that are no UTF-8 become U+FFFD; tabs and line ends become spaces.
std::string safe_text(std::string_view text);

// "left, front and back"
std::string joined(const std::vector<std::string>& words);

// The rows as lines, each column as wide as its longest cell.
std::vector<std::string> columns(const std::vector<std::vector<std::string>>& rows);

std::vector<std::string> split_lines(const std::string& text);
void append(std::vector<std::string>& lines, const std::vector<std::string>& more);

}  // namespace quarterturn
