#pragma once
// A photo file of the library as a picture, however it is stored.

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"

namespace quarterturn {

// Reads and decodes; of a RAW file, its largest embedded picture. orientation and long_edge as in
// DecodeRequest. A file that is missing, cannot be read or cannot be decoded is a result whose
// `refused` says why and what to do next, without the file's name. So is one whose bytes no longer
// have the checksum `sha256`, which is not looked at when empty.
Decoded decode_file(FileSystem& disk, Decoder& decoder, const Path& file, int orientation,
                    int long_edge, std::string_view sha256 = {});

}  // namespace quarterturn
