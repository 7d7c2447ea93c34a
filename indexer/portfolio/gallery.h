#pragma once
// A gallery for her website: one page of plain HTML and the pictures beside it. It needs no script
// and fetches nothing from elsewhere. Every picture has passed the gate for the use "website".

#include <span>
#include <string>
#include <vector>

#include "indexer/portfolio/export.h"

namespace quarterturn {

struct GalleryWishes {
    Path folder;       // new or empty
    std::string name;  // the heading
    bool no_data_mining = false;
};

struct Gallery {
    Path page;                      // empty when nothing may go, and then nothing is written
    std::vector<PhotoGone> photos;  // each as export_photos answers it, by its smallest picture
    std::size_t pictures = 0;       // files, of all sizes
};

// Throws StoreError when the folder is not empty or lies in the library, DiskError when it cannot
// be written.
Gallery write_gallery(Library& library, Decoder& decoder, std::span<const Photo> photos,
                      const GalleryWishes& wishes, LocalTime now);

}  // namespace quarterturn
