#pragma once
// What to pack for a wedding, added up from the current recipes of its looks.

#include <string>
#include <vector>

#include "indexer/record/recipe/words.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct KitProduct {
    std::string name;
    std::vector<std::string> amounts;  // as the recipes say them, one for each time that says it
    std::int64_t uses = 0;             // how many times the recipes use it
    std::vector<std::string> looks;
};

struct KitTool {
    std::string kind;
    std::optional<double> barrel_mm;
    std::vector<std::string> looks;
};

struct KitPins {
    std::string kind;
    std::string colour;
    std::int64_t needed = 0;
    std::int64_t with_spare = 0;
    bool uncounted = false;  // a recipe asks for some and does not say how many
    std::vector<std::string> looks;
};

struct KitPiece {
    PieceKind kind = PieceKind::accessory;
    std::string what;
    std::string colour;
    std::string brought_by;
    std::int64_t count = 0;
    std::vector<std::string> looks;
};

// Things are the same when their words are, case aside; each list is in the order of names,
// the pieces kind by kind.
struct Kit {
    Wedding wedding;
    int spare_percent = usual_spare_percent;
    std::vector<KitProduct> products;
    std::vector<KitTool> tools;
    std::vector<KitPins> pins;
    std::vector<KitPiece> pieces;
    std::vector<std::string> without_recipe;  // looks of which nothing can be added up
};

void set_spare_percent(Library& library, int percent);  // throws StoreError for what is none

// Throws StoreError when there is no such wedding.
Kit kit_of(Library& library, WeddingId wedding);

}  // namespace quarterturn
