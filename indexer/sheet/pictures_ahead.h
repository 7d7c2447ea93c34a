#pragma once
// Small pictures that are opened, and made as large as they are drawn, while the pages they go onto
// are still being laid out and drawn.

#include <map>

#include "indexer/image/decode.h"
#include "indexer/sheet/made_ahead.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

class PicturesAhead {
  public:
    // Begins with the first of them, up to a bound of memory. Of their boxes, the size is known.
    // `decoder` and `disk` must outlive it.
    PicturesAhead(std::vector<PhotoItem> photos, Decoder& decoder, FileSystem& disk);

    // Promises each to the photos whose small picture it is. One that cannot be opened is left to
    // whoever draws.
    void give_to(Document& document) const;

  private:
    std::map<Path, std::size_t> places_;  // by small picture
    MadeAhead<cv::Mat> pictures_;
};

}  // namespace quarterturn
