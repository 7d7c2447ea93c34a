#pragma once
// The record of a signed-off look as it leaves the library: in words and as JSON.

#include <string>
#include <vector>

#include "indexer/looks/look_state.h"

namespace quarterturn {

struct ExportedPhoto {
    Photo photo;
    std::string file;  // its path in the record: "photos/IMG_0412.JPG", UTF-8, no two alike
    std::vector<std::string> also_shown;  // names of clients besides the look's own
};

struct ExportedRecord {
    LookState state;   // signed off
    std::string role;  // in the wedding's party; empty when there is none
    std::vector<Sitting> sittings;
    std::string business_name;
    std::string business_line;
    std::vector<ExportedPhoto> photos;
};

// Throws StoreError.
ExportedRecord exported_record(Library& library, LookState state);

std::string record_text(const ExportedRecord& record);
std::string record_json(const ExportedRecord& record);

// A file name that every common disk can hold and every tool reads alike: no control characters,
// none of / \ : * ? " < > | %, UTF-8, and not empty.
std::string portable_name(const std::string& name);

}  // namespace quarterturn
