#pragma once
// A backup as the library knows it: the folder may lie on a drive that is not connected.

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "indexer/record/erasure.h"
#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

using BackupId = Id<struct BackupRow>;

struct Backup {
    BackupId id;
    std::string mark;              // stands in the backup itself: tells it from every other
    std::filesystem::path folder;  // where it lay last
    std::string volume;            // the drive's own label; empty when none is known
    std::string newest_records;    // the newest copy of the records that was begun there
    std::optional<LocalTime> at;   // when it was last whole; nothing: never yet
    std::int64_t photos = 0;       // in it then
    PhotoId last_photo;            // photos up to this one were looked at then
    ErasureId last_erasure;        // whoever was erased later may still be in it

    bool operator==(const Backup&) const = default;
};

// "/media/stick/backup, on the drive BLUE STICK, last made on 2026-11-07"
std::string place_words(const Backup& backup);

}  // namespace quarterturn
