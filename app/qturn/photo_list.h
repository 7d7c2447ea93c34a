#pragma once
// What the commands that list photos have in common.

#include <string>
#include <vector>

#include "app/qturn/names.h"

namespace quarterturn {

// Which photos, as typed; what is empty or false was not asked for.
struct SearchOptions {
    std::vector<std::string> words;
    std::string look;
    std::string sitting;
    std::string client;
    std::string stage;
    std::string angle;
    std::string device;
    std::string from;
    std::string to;
    bool unplaced = false;
    bool untagged = false;
    bool flawed = false;

    bool operator==(const SearchOptions&) const = default;
};

// Throws WrongUse.
PhotoSearch search_from(Library& library, const SearchOptions& options);

// "moved and too dark, accepted: the curl shows"; empty for a photo without flaws.
std::string flaws_text(const Photo& photo);

// Number, name, time, tags and flaws.
std::vector<std::string> photo_cells(const Photo& photo, const Names& names);

}  // namespace quarterturn
