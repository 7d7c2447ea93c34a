#pragma once

#include <QString>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

// A sentence of indexer/, which may name a command: here it names where the window does the same.
QString said_here(std::string_view sentence);
inline constexpr std::size_t most_lines_below = 5;
// A sentence, unless it is empty, and below it what is left to do about it: a line each, of many
// the first ones, so that it has its place below a page.
QString said_with(const QString& sentence, const std::vector<std::string>& left);

}  // namespace quarterturn
