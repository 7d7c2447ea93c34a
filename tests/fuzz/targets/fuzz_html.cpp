// Any bytes as text of an HTML page: nothing in it can end the text and begin something else.

#include "indexer/sheet/html.h"
#include "tests/fuzz/targets/text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text = quarterturn::html_text(quarterturn::as_words(data, size));
    if (text.find_first_of("<>\"'") != std::string::npos) __builtin_trap();
    for (std::size_t at = text.find('&'); at != std::string::npos; at = text.find('&', at + 1)) {
        const std::string_view rest = std::string_view(text).substr(at);
        if (!rest.starts_with("&amp;") && !rest.starts_with("&lt;") && !rest.starts_with("&gt;") &&
            !rest.starts_with("&quot;") && !rest.starts_with("&#39;")) {
            __builtin_trap();
        }
    }
    return 0;
}
