#include "indexer/sheet/photo_file.h"

#include "indexer/disk/checksum.h"

namespace quarterturn {
namespace {

// No camera's photo is larger; reading stops there.
constexpr std::int64_t most_photo_bytes = std::int64_t{1} << 30;

Decoded refusal(std::string why) {
    Decoded result;
    result.refused = std::move(why);
    return result;
}

}  // namespace

Decoded decode_file(FileSystem& disk, Decoder& decoder, const Path& file, int orientation,
                    int long_edge, std::string_view checksum) {
    try {
        if (!disk.exists(file))
            return refusal("The file is no longer there. Put it back from a backup.");
        const Bytes bytes = disk.read(file, most_photo_bytes);
        if (!checksum.empty() && sha256(bytes) != checksum) {
            return refusal(
                "The file no longer holds the picture that was brought in. Put it back from a "
                "backup, or from the card or phone it came from.");
        }
        return decoder.decode({bytes, orientation, long_edge});
    } catch (const DiskError&) {
        return refusal("The file could not be read. Check the disk, or put it back from a backup.");
    }
}

}  // namespace quarterturn
