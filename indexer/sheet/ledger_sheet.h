#pragma once
// The ledger of what went out, on paper.

#include <span>

#include "indexer/record/ledger.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct LedgerSheetWishes {
    Paper paper = Paper::a4;
    Date day{};                 // on which it stood so
    std::string business_line;  // may be empty
};

// Each with its number, day, use and photo, file and whole checksum, places, consents, and when it
// was taken down; in the order given.
Document ledger_sheet(std::span<const Exported> exports, TextRuler& ruler,
                      const LedgerSheetWishes& wishes);

}  // namespace quarterturn
