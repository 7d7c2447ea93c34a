#pragma once
// What sheet she wants, laid out and drawn away from the window's thread.

#include <QImage>
#include <functional>
#include <optional>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/portfolio/pass_on.h"
#include "indexer/sheet/contact_sheet.h"
#include "ui/painter/paint.h"

namespace quarterturn {

struct SheetWish {
    LookId look;
    // Every frame of this sitting instead.
    std::optional<SittingId> sitting{};
    SheetWishes wishes{};

    bool same_as(const SheetWish& other) const;
};

struct DrawnSheet {
    Document document;
    std::vector<QImage> pages;          // as they will be printed, for the screen
    std::vector<std::string> problems;  // a sentence for each photo that cannot be shown
};

// Throws StoreError.
Document laid_out(Library& library, Decoder& decoder, const SheetWish& wish);

// `pixels` is the long edge of each page.
DrawnSheet drawn(Document document, Decoder& decoder, FileSystem& disk, int pixels);

// The sheet for her own work and for the client. Throws StoreError with sentences when it shows
// what may not even be kept for that.
std::function<Document(Library&)> own_sheet(const Document& document, Date today);

// As PDF, through the gate and into the ledger. Throws StoreError with sentences when a photo on it
// may not go, and DiskError.
Written write_for_others(Library& library, Decoder& decoder, const Document& document,
                         const PassOnWishes& wishes, LocalTime now);

// Tells whether the records say something else for this sheet than before.
std::string records_of(Library& library, const SheetWish& wish);

// The look's name as a file's name, without an ending.
std::string file_name(Library& library, LookId look);

}  // namespace quarterturn
