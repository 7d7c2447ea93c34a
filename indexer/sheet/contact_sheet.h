#pragma once
// Contact sheets: the photos of a look by angle, or every frame of a sitting.

#include "indexer/image/decode.h"
#include "indexer/looks/look_state.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

enum class SheetFor { own_work, others };

struct SheetWishes {
    Paper paper = Paper::a4;
    bool during = false;  // a row for during as well as before and after
    SheetFor whom = SheetFor::own_work;
};

// Columns left, front, right, back; rows before, (during,) after; further angles below; the recipe
// in short at the foot. Photos are cropped to a common head size where the head is found and
// otherwise whole. For others it names nobody (sheet_for_others.h). Throws StoreError when there is
// no such look.
Document contact_sheet(Library& library, Decoder& decoder, TextRuler& ruler, LookId look,
                       const SheetWishes& wishes);

// The photos on the sheet of a sitting, in its order, in boxes as large as they are drawn there.
std::vector<PhotoItem> frames_of_sitting(Library& library, SittingId sitting, Paper paper);

// Every photo of the sitting in the order of time, as many to a page as can be read.
Document sitting_sheet(Library& library, TextRuler& ruler, SittingId sitting, Paper paper,
                       SheetFor whom = SheetFor::own_work);

}  // namespace quarterturn
