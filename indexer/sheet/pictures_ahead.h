#pragma once
// Small pictures that are opened, and made as large as they are drawn, while the pages they go onto
// are still being laid out.

#include <map>
#include <thread>

#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

class PicturesAhead {
  public:
    // Begins with the first of them, up to a bound of memory. Of their boxes, the size is known.
    // `decoder` and `disk` must outlive it.
    PicturesAhead(std::vector<PhotoItem> photos, Decoder& decoder, FileSystem& disk);

    // Waits for them and leaves each with the photos whose small picture it is. One that could not
    // be opened is left to whoever draws.
    void give_to(Document& document);

  private:
    void open_all(Decoder& decoder, FileSystem& disk);

    std::vector<PhotoItem> photos_;
    std::map<Path, cv::Mat> pictures_;
    std::jthread opening_;
};

}  // namespace quarterturn
