#pragma once
// The kit as a list to tick off while packing. A tick is kept in the library; it stays with its
// item while the recipes change how many of it are needed, and the line then says so.

#include <optional>
#include <string>
#include <vector>

#include "indexer/looks/kit.h"

namespace quarterturn {

enum class KitGroup { products, tools, pins, pieces };

inline constexpr std::array all_kit_groups{KitGroup::products, KitGroup::tools, KitGroup::pins,
                                           KitGroup::pieces};

std::string_view heading(KitGroup group);  // "Products"

struct KitLine {
    KitGroup group = KitGroup::products;
    std::string item;        // tells it by its words, however many there are to be; never shown
    std::string what;        // "hair pin, dark brown"
    std::string about;       // "12 needed, 3 to spare"; may be empty
    std::int64_t count = 1;  // to pack; of a product, how many times the recipes use it
    std::vector<std::string> looks;
    std::optional<std::int64_t> ticked;  // the count when she ticked it

    bool operator==(const KitLine&) const = default;
};

struct KitList {
    Kit kit;
    std::vector<KitLine> lines;  // group by group; each group in the order of the kit's list

    std::size_t packed() const;  // lines that are ticked
    std::size_t grown() const;   // of those, lines with more to pack since
};

// Throws StoreError when there is no such wedding.
KitList kit_list(Library& library, WeddingId wedding);

// "15 × hair pin, dark brown" where the count says how many to take along; else what it is.
std::string counted_text(const KitLine& line);

// "12 needed, 3 to spare · for Low bun and Evening look".
std::string about_text(const KitLine& line);

// "3 more than when it was ticked." Empty when it is not ticked, or not more.
std::string grown_text(const KitLine& line);

// "12 of 31 packed, 2 of them need more."
std::string packed_text(const KitList& list);

// What the list cannot know: the looks without a recipe, a sentence for each.
std::vector<std::string> kit_notes(const KitList& list);

// The lines she may mean: the one that counts so from 1 ("3", "#3"), else those that are called so,
// else those that have it in their words. Case is not looked at.
std::vector<const KitLine*> lines_called(const KitList& list, const std::string& name);

// The wedding that is next first, then those after it, then those that are past, the newest first.
std::vector<Wedding> next_wedding_first(Library& library, Date today);

}  // namespace quarterturn
