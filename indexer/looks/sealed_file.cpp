#include "indexer/looks/sealed_file.h"

#include "indexer/disk/checksum.h"

namespace quarterturn {

Bytes read_unchanged(Library& library, const Photo& photo) {
    Bytes bytes;
    bytes.reserve(static_cast<std::size_t>(photo.file.bytes));
    library.disk().read_back(library.photo_file(photo), [&](std::span<const std::byte> piece) {
        bytes.insert(bytes.end(), piece.begin(), piece.end());
    });
    if (sha256(bytes) != photo.file.sha256) {
        throw StoreError(photo.file.path +
                         " is no longer the picture that was brought in: put the file back from a "
                         "backup, or from the card or phone it came from.");
    }
    return bytes;
}

}  // namespace quarterturn
