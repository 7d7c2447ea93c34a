#pragma once
// What bringing these files in would do, told before anything is copied. Files are only read, and
// no further than needed: the front, for the time and the device; the whole where the front does
// not say, or where a photo of the library or another of these files has just as many bytes and
// the same front, so that it may be the same.

#include "indexer/intake/by_sitting.h"
#include "indexer/intake/import.h"

namespace quarterturn {

struct PhotosOfDevice {
    Device device;  // as its files name it; nameless for all that do not say
    int photos = 0;
};

struct ImportPreview {
    int fresh = 0;           // photos that would be brought in
    std::int64_t bytes = 0;  // of those
    // The first and last moment of those, by the devices' clocks as they are set in the library.
    std::optional<LocalTime> first{};
    std::optional<LocalTime> last{};
    std::vector<PhotosOfDevice> devices{};    // most photos first
    std::vector<PhotosOfSitting> sittings{};  // they seem to belong to, in the order of starts
    int in_no_sitting = 0;                    // taken when there was none
    int in_several = 0;                       // taken when there were two or more
    int undated = 0;
    std::vector<Path> already_here{};
    int in_bin = 0;  // of those, that lie in the bin
    std::vector<Path> left_alone{};
    // A photo that is damaged inside only shows when it is brought in, and is refused then.
    std::vector<RefusedFile> refused{};
    bool stopped = false;
};

// Writes nothing. Throws StoreError, and NoWorker when nothing can open photos (indexer/worker).
ImportPreview preview_import(Library& library, const ImportWishes& wishes);

}  // namespace quarterturn
