#pragma once
// What went out of the library.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/consent.h"

namespace quarterturn {

using ExportId = Id<struct ExportRow>;

struct TakenDown {
    Date on{};
    std::string note;

    bool operator==(const TakenDown&) const = default;
};

struct Exported {
    ExportId id;
    PhotoId photo;             // which may have gone since
    std::string photo_name;    // its original file name
    std::string photo_sha256;  // of the file in the library
    Use use = Use::own_record;
    LocalTime at{};
    std::string file;    // where it was written to
    std::string sha256;  // of what was written
    std::int64_t bytes = 0;
    std::vector<ConsentId> under;     // what everyone shown had granted
    std::vector<std::string> places;  // where it was put since, in her words
    std::optional<TakenDown> taken_down;
    bool hair_only = false;  // it was a picture that leaves her face out

    bool operator==(const Exported&) const = default;
};

}  // namespace quarterturn
