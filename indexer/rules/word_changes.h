#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

struct WordRun {
    std::string words;  // as they stand, with single spaces between
    bool changed = false;

    bool operator==(const WordRun&) const = default;
};

struct WordChanges {
    std::vector<WordRun> was;  // changed: not in the new text any more
    std::vector<WordRun> is;   // changed: new
};

// Which words of a line left and which came: as many as can be stay, in their order. Upper and
// lower case and punctuation count.
WordChanges word_changes(std::string_view was, std::string_view is);

struct LineChanges {
    std::vector<std::vector<WordRun>> was;  // the runs of each line
    std::vector<std::vector<WordRun>> is;
};

// The same for several lines: those that are equal stay, the others are compared in their order.
LineChanges line_changes(const std::vector<std::string>& was, const std::vector<std::string>& is);

}  // namespace quarterturn
