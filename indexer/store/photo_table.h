#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct StoredFile {
    PhotoId id;
    std::string sha256;
    std::string path;  // relative to the library's folder
    std::int64_t bytes = 0;
};

// Lists are in the order of moments, those of unknown moment last, then of ids. What lies in the
// bin (bin_table.h) is in none of them and is not found, unless it is said here. Tags change only
// through History, so that every change can be undone.
class PhotoTable {
  public:
    explicit PhotoTable(Database& database) : database_(&database) {}

    // photo.id and photo.moment are not looked at: the moment is the file's time with the device's
    // clock shift. Throws StoreError when the checksum is there already.
    PhotoId add(const Photo& photo);
    std::optional<Photo> find(PhotoId id);
    std::optional<PhotoId> with_sha256(std::string_view sha256);  // in the bin, too
    std::vector<Photo> named(std::string_view original_name);     // case folded, with the ending
    std::vector<Photo> sha256_starting(std::string_view hex);

    std::vector<Photo> these(std::span<const PhotoId> ids);  // those of them that are there
    std::optional<Photo> find_also_in_bin(PhotoId id);
    std::vector<Photo> these_also_in_bin(std::span<const PhotoId> ids);

    std::vector<StoredFile> stored_files();  // of all photos and of the bin, by their numbers

    std::vector<Photo> all();
    std::vector<Photo> of_sitting(SittingId sitting);
    // Every photo that may count for the look: tagged with it, or of one of its sittings.
    std::vector<Photo> around_look(const Look& look);
    std::vector<Photo> of_device(DeviceId device);
    std::vector<Photo> in_no_sitting();

    void set_path(PhotoId id, std::string_view path);
    // Where a photo falls by its time: no action of hers, so it stands in no history. Leaves a
    // photo alone that she placed by hand.
    void set_sitting_by_time(PhotoId id, std::optional<SittingId> sitting);
    bool path_taken(std::string_view path);  // case folded, as some disks do
    void set_suggestion(PhotoId id, const Suggestion& suggestion);
    void set_measured(PhotoId id, const Measures& measures, Fingerprint fingerprint,
                      const HeadSigns& signs, const std::vector<Flaw>& flaws);

  private:
    Database* database_;
};

}  // namespace quarterturn
