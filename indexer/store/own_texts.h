#pragma once
// Every text of the records that she wrote or that came with a file, and which of them say a
// client's name. tests/indexer/store/own_texts_test.cpp refuses a column of text that is not
// reckoned with.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/erasure.h"
#include "indexer/store/database.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {

// What stands in the place of an erased name.
inline constexpr std::string_view erased_name = "(erased)";
// In what a sign-off has sealed: it differs, so that the look shows as changed since.
inline constexpr std::string_view erased_from_seal = "(erased since)";

struct OwnText {
    enum class Kind {
        words,
        name,         // with folded_name beside it
        recipe,       // JSON
        past,         // words that cannot be edited any more
        past_recipe,  // likewise
        seal,         // what a sign-off has sealed
        hers,         // that she alone can tell what to make of
        file,         // the name of a file, as it came
        trace         // of a file that was brought in, and needed for nothing else
    };
    std::string table;
    std::string column;
    Kind kind = Kind::words;
    // SQL about a row: where she finds it, as "the note of the client Bea Holm"; NULL where the row
    // is none of these.
    std::string place;
    std::string signed_off = "0";  // SQL: whether it is of a look that is
};

const std::vector<OwnText>& own_texts();

// Each place once, in the order of own_texts(). What she can change nothing of, and the program
// neither, is left out.
std::vector<NamedPlace> places_naming(Database& database, const SoughtNames& names);

// The same of recipes, templates and drafts alone, as they are now.
std::vector<NamedPlace> recipes_naming(Database& database, const SoughtNames& names);

// Takes out the names where they surely stand (sought_names.h). Within an erasure.
void take_names_out(Database& database, const SoughtNames& names);

}  // namespace quarterturn
