#pragma once
// All that is kept of a client on paper, over as many pages as it takes.

#include "indexer/looks/client_record.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

inline constexpr const char* private_record =
    "Private data of a person: keep it where nobody else can read it, and pass it on only as she "
    "has allowed.";

// Small pictures stand for her photos, drawn from those that the library keeps; an empty frame says
// why for one that is not hers to have. `day` is told at
// the head. Files are sought below `library_folder`; `business_line` stands at the foot, and above
// it that the pages hold private data.
struct ClientSheetWishes {
    Paper paper = Paper::a4;
    Date day{};
    Path library_folder;
    std::string business_line;
};

Document client_sheet(const ClientRecord& record, TextRuler& ruler,
                      const ClientSheetWishes& wishes);

// On the library's usual paper. Throws StoreError.
Document client_sheet(Library& library, const ClientRecord& record, TextRuler& ruler, Date day);

}  // namespace quarterturn
