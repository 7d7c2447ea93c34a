// A step as she types it: every word of the line comes back, understood or not.

#include "indexer/rules/shorthand.h"
#include "tests/fuzz/targets/text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace quarterturn;
    const std::string_view line = as_words(data, size);
    std::size_t told = 0;
    for (const ShorthandPart& part : parse_shorthand(line).parts) told += part.text.size();
    if (told > line.size()) __builtin_trap();
    return 0;
}
