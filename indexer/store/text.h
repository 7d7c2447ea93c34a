#pragma once
// Names and words in any script.

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

// What two spellings of one name have in common: case folded and normalised (NFKC_Casefold of the
// Unicode Standard, chapter 3.13). Bytes that are no UTF-8 are folded as ASCII.
std::string folded(std::string_view text);

// Throw StoreError unless `text` is UTF-8 without a zero byte, and for a name, more than white
// space. `what` as in "the client's name".
void refuse_unless_text(std::string_view what, std::string_view text);
void refuse_unless_name(std::string_view what, std::string_view text);

// Whether `left` stands before `right` in a list of names, in any script (the root order of the
// Unicode Collation Algorithm, UTS #10).
bool name_before(std::string_view left, std::string_view right);

// Sorts records by name; those with equal names stay in the order they are in.
template <class Record, class Name>
void sort_by_name(std::vector<Record>& records, Name Record::*name) {
    std::stable_sort(records.begin(), records.end(), [&](const Record& left, const Record& right) {
        return name_before(left.*name, right.*name);
    });
}

}  // namespace quarterturn
