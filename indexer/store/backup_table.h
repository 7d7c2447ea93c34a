#pragma once

#include <optional>
#include <set>
#include <span>
#include <string_view>
#include <vector>

#include "indexer/record/backup.h"
#include "indexer/store/database.h"

namespace quarterturn {

// The backups that were made of this library, whether their drives are at hand or not. All
// functions throw StoreError.
class BackupTable {
  public:
    explicit BackupTable(Database& database) : database_(&database) {}

    // `id` is not looked at.
    BackupId add(const Backup& backup);
    std::optional<Backup> marked(std::string_view mark);
    std::vector<Backup> all();  // in the order they were first made
    // Those that may hold somebody who was erased, or would be erased now.
    std::vector<Backup> before_erasure(ErasureId erasure);

    // Before anything is written there: where it lies, and the copy of the records that is to come.
    void begin(const Backup& backup);
    // When all of it is there: replaces what was known of it.
    void finish(const Backup& backup, std::span<const PhotoId> lacks);
    // The drive is lost or was destroyed: nothing is known of it any longer.
    void forget(BackupId id);
    void forget_all();

    // The photos that a whole backup holds, by what was said when it was finished.
    std::set<PhotoId> photos_in(const Backup& backup);
    std::int64_t photos_after(PhotoId photo);  // how many of the library came in later

  private:
    Database* database_;
};

// How far the checking of all files has come. All functions throw StoreError.
struct Verification {
    PhotoId last_photo{};  // photos up to this one were read
    std::optional<LocalTime> finished_at{};
    std::int64_t problems = 0;  // found when it was finished
};

class VerificationTable {
  public:
    explicit VerificationTable(Database& database) : database_(&database) {}

    std::optional<Verification> reached();
    std::vector<PhotoId> problems();  // among the photos that were read
    void begin();                     // from the start
    void reach(PhotoId last, std::span<const PhotoId> problems);
    void finish(LocalTime at, std::int64_t problems);

  private:
    Database* database_;
};

}  // namespace quarterturn
