#pragma once
// Small pictures that are opened while the pages they go onto are still being laid out.

#include <map>
#include <thread>

#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

class PicturesAhead {
  public:
    // Begins with the first of them, up to a bound of memory. `decoder` and `disk` must outlive it.
    PicturesAhead(std::vector<Path> small_files, Decoder& decoder, FileSystem& disk);

    // Waits for them and leaves each with the photos whose small picture it is. One that could not
    // be opened is left to whoever draws.
    void give_to(Document& document);

  private:
    void open_all(Decoder& decoder, FileSystem& disk);

    std::vector<Path> files_;
    std::map<Path, cv::Mat> pictures_;
    std::jthread opening_;
};

}  // namespace quarterturn
