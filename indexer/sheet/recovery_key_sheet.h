#pragma once
// The recovery key on paper, to be put away where nobody looks for it by chance.

#include "indexer/record/time.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct RecoveryKeyPage {
    std::string key;  // as recovery_key_text gives it
    Path library;
    Date made{};
    std::string business_line;
};

Document recovery_key_sheet(const RecoveryKeyPage& page, TextRuler& ruler, Paper paper);

}  // namespace quarterturn
