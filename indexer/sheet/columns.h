#pragma once
// Running text in columns: fills them one after the other, and breaks a paragraph between words
// where a column ends.

#include <deque>

#include "indexer/sheet/page.h"

namespace quarterturn {

// A paragraph, or a heading that stays with what follows it. The item's box is not looked at.
struct Paragraph {
    TextItem text;
    double gap_before = 0;  // mm; none at the head of a column
    bool heading = false;
};

struct Columns {
    double x = 0;
    double y = 0;
    double height = 0;
    double width = 0;  // of one column
    double gutter = 0;
    int count = 1;
};

struct FilledColumns {
    std::vector<TextItem> texts;  // with their boxes
    std::deque<Paragraph> rest;   // what found no room
    double height = 0;            // of the longest column
};

FilledColumns fill_columns(TextRuler& ruler, std::deque<Paragraph> paragraphs,
                           const Columns& columns);

// The smallest height at which everything fits into the columns, no more than `most`; nothing when
// it does not fit even then.
std::optional<double> balanced_height(TextRuler& ruler, const std::deque<Paragraph>& paragraphs,
                                      Columns columns, double most);

// The longest beginning of the text that stands within the height, broken between words, or within
// a word that is longer than a line; `second` is the rest. At least one letter is taken.
std::pair<std::string, std::string> split_text(TextRuler& ruler, const TextItem& text, double width,
                                               double height);

}  // namespace quarterturn
