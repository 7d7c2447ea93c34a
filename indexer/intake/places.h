#pragma once
// Where a photo's file belongs in the library.

#include <string>
#include <unordered_map>

#include "indexer/rules/sorting.h"
#include "indexer/store/library.h"

namespace quarterturn {

class Places {
  public:
    // Reads the sittings as they are now.
    explicit Places(Library& library);

    // The one sitting whose hours hold the moment; nothing when there is none, or more than one.
    std::optional<SittingId> sitting_at(const std::optional<LocalTime>& moment) const;

    // By the photo's sitting, else its date, else "undated"; relative to the library's folder.
    std::string folder(const Photo& photo) const;

    // A path in `folder` for the photo that no record and no other file has: its own name, else
    // with " (2)", " (3)" … before the ending. A file of the same bytes that no record speaks of is
    // the photo's own, left by a run that was interrupted. Throws DiskError, StoreError.
    std::string free_path(const std::string& folder, const FileFacts& file);

    const std::vector<Sitting>& sittings() const { return sittings_; }

  private:
    bool free_for(const std::string& path, const FileFacts& file);

    Library& library_;
    std::vector<Sitting> sittings_;
    SittingsByTime hours_;
    std::unordered_map<SittingId, std::string> folders_;
};

}  // namespace quarterturn
