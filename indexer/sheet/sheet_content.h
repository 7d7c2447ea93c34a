#pragma once
// What stands on a sheet, before anybody has thought of where.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/recipe_text.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct SheetPhoto {
    PhotoId id;
    PhotoItem item;            // without its box and part
    Size upright;              // pixels; zero when not known
    bool of_a_head = false;    // a head may be found on it: neither a detail nor untagged
    std::optional<Part> head;  // in shares of the upright picture the right way round
};

struct SheetCell {
    std::optional<SheetPhoto> photo;
    std::string empty;  // what the empty frame says when there is no photo
    std::string title;  // the angle
    std::string time;   // of the clock; empty when unknown, which the note says then
    std::string note;   // flaws, "mirrored, turned"; may be empty
};

struct SheetBand {
    std::string name;  // may be empty
    std::vector<SheetCell> cells;
};

struct SheetDrawing {
    HeadDrawing drawing;
    std::vector<std::string> lines;  // beside it
};

struct SheetRecipe {
    std::string heading;
    std::vector<std::string> cautions;
    std::vector<RecipePart> parts;
    std::optional<SheetDrawing> drawing = {};
};

struct SheetHeader {
    std::string client;
    std::vector<std::string> lines;
    std::optional<Ring> ring;
    std::string state;     // sign-off
    std::string sentence;  // coverage
    std::string again;     // one line for the top of every further page
};

inline constexpr const char* photos_are_private =
    "Photos of a person: show them only as she has allowed.";

struct SheetContent {
    std::string title;
    SheetHeader header;
    std::vector<SheetBand> bands;
    std::optional<SheetRecipe> recipe;  // at the foot, after the bands
    std::vector<SheetBand> more;        // photos to look through, after the recipe
    std::string business_line;
    std::string private_line = photos_are_private;  // at the foot of every page; may be empty
};

}  // namespace quarterturn
