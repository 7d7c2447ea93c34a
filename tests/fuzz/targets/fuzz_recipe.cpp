// A recipe's JSON: refused with a sentence, or read so that it is written as it was read.

#include "indexer/store/database.h"
#include "indexer/store/recipe_table.h"
#include "tests/fuzz/targets/text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace quarterturn;
    try {
        const Recipe recipe = parse_recipe_json(as_words(data, size));
        if (!(parse_recipe_json(recipe_json(recipe)) == recipe)) __builtin_trap();
    } catch (const StoreError&) {
        return 0;
    }
    return 0;
}
