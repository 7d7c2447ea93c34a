#include "indexer/rules/shorthand.h"

#include "indexer/rules/shorthand/readers.h"

namespace quarterturn {
namespace {

using shorthand::Phrase;

// Products come first: "root lift spray" is one, and no root lift. A tool takes the size beside it
// before a size is looked at alone.
void read_phrase(Phrase& phrase, Step& step) {
    using namespace shorthand;
    for (const auto read : {read_products, read_root_lift, read_backcombing, read_pins, read_tool,
                            read_wind, read_sizes, read_times, read_setting}) {
        read(phrase, step);
    }
    use_joining_words(phrase);
}

void add_words(const Phrase& phrase, Shorthand& result) {
    std::string left;
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        const auto& token = phrase[at];
        result.parts.push_back({token.text, token.used});
        if (token.used) continue;
        const bool joined = token.glued && !phrase[at - 1].used;
        left += (left.empty() || joined ? "" : " ") + token.text;
    }
    if (left.empty()) return;
    std::string& words = result.step.words;
    words += (words.empty() ? "" : ", ") + left;
}

}  // namespace

Shorthand parse_shorthand(std::string_view line) {
    Shorthand result;
    for (Phrase& phrase : shorthand::phrases_of(line)) {
        read_phrase(phrase, result.step);
        add_words(phrase, result);
    }
    return result;
}

}  // namespace quarterturn
