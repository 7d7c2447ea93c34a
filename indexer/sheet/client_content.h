#pragma once
// A client's record in words, the same on screen and on paper.

#include "indexer/looks/client_record.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

struct TextSection {
    std::string heading;
    std::vector<std::string> lines;
};

struct LookSection {
    TextSection look;                   // where it was worked on, and its sign-offs
    std::optional<SheetRecipe> recipe;  // the newest revision; none where none is saved
    // What is written since and not saved, then what each revision changed, the newest first.
    std::vector<TextSection> changes;
};

struct PhotoSection {
    std::string heading;  // the sitting
    std::vector<Photo> photos;
};

struct ClientContent {
    std::vector<TextSection> facts;  // weddings, sittings, consents; never without a line
    std::vector<LookSection> looks;
    std::vector<PhotoSection> photos;  // by her sittings, then those of none; only with photos
};

ClientContent client_content(const ClientRecord& record);

}  // namespace quarterturn
