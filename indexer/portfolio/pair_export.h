#pragma once
// A pair as one picture on its way out of the library: both photos pass the gate (rules/gate.h),
// both stand in the ledger before the file is there.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "indexer/image/head.h"
#include "indexer/portfolio/export.h"
#include "indexer/record/pair.h"
#include "indexer/sheet/pair_picture.h"

namespace quarterturn {

struct PairExportWishes {
    Use use = Use::own_record;
    Path file;  // a JPEG outside the library, which is not there yet
    PairPictureWish picture;
    // What was done to the photos, and how differently they were taken, in the picture's metadata
    // behind the caption.
    bool tell_inside = false;
    int quality = usual_export_quality;  // 1 … 100
    bool no_data_mining = false;
};

struct PairGone {
    std::vector<std::string> against;  // why it may not go
    std::string problem;               // why it could not be made though it may
    std::vector<std::string> done;     // to the photos, a sentence each
    std::vector<std::string> remarks;  // what was asked and not done, or does not look as it might
    std::vector<std::string> unfair;   // what was not taken alike, as rules/fair_pair.h says it
    std::vector<Exported> exported;    // as they stand in the ledger, the first photo's first
    std::string credit_line;           // drawn below the photos; may be empty
};

// What stands against both photos of the pair for that use on that day, a sentence each. Looks for
// faces where nobody has yet. Throws StoreError when a photo is not there any more.
std::vector<std::string> against_pair(Library& library, Decoder& decoder, const Pair& pair, Use use,
                                      Date on);

// A page as CV_8UC3, BGR, at print_dpi.
using DrawPage = std::function<cv::Mat(const Page& page)>;

// Asks the gate, and writes where nothing stands against it. The credit lines of photographers go
// below the photos. That they were not taken alike stands in the metadata, and below the photos
// with what was done. A pair that she refused is a problem, so is a caption that names somebody who
// is shown, and what cannot be read, decoded, laid or written is a problem. Throws StoreError when
// a photo is not there any more.
PairGone export_pair(Library& library, Decoder& decoder, TextRuler& ruler, const DrawPage& draw,
                     const Pair& pair, const PairExportWishes& wishes, LocalTime now);

}  // namespace quarterturn
