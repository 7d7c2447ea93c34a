#pragma once
// What lies in the library without a record and is of photos that go: moved or copied by hand, or
// found changed and set aside (intake/set_aside.h), wherever the photo was placed since.

#include "indexer/erasure/files_without_record.h"
#include "indexer/store/erasure_sought.h"

namespace quarterturn {

struct FilesToGo {
    std::vector<std::string> files;  // relative to the library's folder
    std::vector<SaidOfFile> unsure;  // what may be among them, and stays
};

// Those among the photos that are of none of them by any sign.
enum class OtherStrays { passed_over, named };

// Reads what has the size of one of them. Throws StoreError.
FilesToGo strays_of(Library& library, const std::vector<Photo>& photos,
                    const FilesWithoutRecord& strays, OtherStrays others);

// Whether the program named it by a photo's checksum.
bool is_named_by_checksum(const Path& file);

// What lies in the client's own folders of papers and pictures, left by an attempt that was
// interrupted; of what lies in those of others it cannot be told.
FilesToGo papers_left_of(const Library& library, const FilesWithoutRecord& strays, ClientId client);

}  // namespace quarterturn
