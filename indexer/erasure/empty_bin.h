#pragma once
// Photos of the bin that go for good: file, small pictures, record and what they were undone by.
// Their lines in the ledger stay, as does what a seal of the past says of them. The records go
// first, in one step that also lists the files, so that finish_erasures goes on after a crash.

#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct BinEmptied {
    int gone = 0;
    // Sentences, each with the next step: photos that stay in the bin, since a file that a lock
    // left as it was may be theirs (left_locked.h), and files that may be of what went, or
    // could not be removed yet, and stay.
    std::vector<std::string> left;
};

// All of the bin, at once. Throws StoreError while another program moves files or reads the
// records, and DiskError; finish_erasures takes up what could not be removed.
BinEmptied empty_bin(Library& library);

// Whether a photo has lain in the bin for as long as it is kept there, by today and by the day that
// is sure (days_opened.h): a clock that is wrong for a day, or months ahead for a week, lets
// nothing go. Asked when a library is opened, which it notes.
bool any_to_leave_bin(Library& library, Date today);

// Those alone, but says nothing while none of them can go. Throws as empty_bin.
BinEmptied let_go_of_bin(Library& library, Date today);

}  // namespace quarterturn
