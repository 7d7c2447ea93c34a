#include "indexer/rules/shorthand/readers.h"

namespace quarterturn::shorthand {
namespace {

// "dark brown": how many words at `at` name a colour.
std::size_t colour_at(const Phrase& phrase, std::size_t at) {
    const auto colour = [&](std::size_t place) {
        return phrase.is(place,
                         {"black", "brown", "blonde", "blond", "bronze", "gold", "golden", "silver",
                          "copper", "steel", "grey", "white", "auburn", "red", "chestnut"});
    };
    if (colour(at)) return 1;
    const bool shade = phrase.is(at, {"dark", "light", "mid", "matt", "matte", "ash", "pale"});
    return shade && colour(at + 1) ? 2 : 0;
}

bool crossed_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"crossed", "crossing", "cross", "criss-cross", "criss-crossed"});
}

bool which_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"fine", "long", "short", "small", "strong", "pearl", "section", "sectioning", "hair",
             "bobby", "u", "flat", "curl", "big", "large", "thin", "wavy", "waved", "mini"});
}

bool noun_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"pins", "pin", "grips", "grip", "clips", "clip", "hairpins", "hairpin",
                          "hairgrips", "hairgrip", "u-pins", "u-pin"});
}

std::string kind_of(const Phrase& phrase, std::string which, std::size_t noun) {
    std::string word = phrase[noun].plain;
    if (word.back() == 's') word.pop_back();
    if (word.starts_with("hair")) word.insert(4, " ");
    if (!which.empty()) which += ' ';
    return which + word;
}

// The pins named from `from` on, without their count; answers where they end, or `from`.
std::size_t read_named(const Phrase& phrase, std::size_t from, Pins& pins) {
    std::string which;
    std::size_t at = from;
    for (; !noun_at(phrase, at) || which_at(phrase, at); ++at) {
        if (const std::size_t length = colour_at(phrase, at)) {
            pins.colour = phrase.words(at, at + length);
            at += length - 1;
        } else if (which_at(phrase, at)) {
            which += (which.empty() ? "" : " ") + phrase[at].plain;
        } else if (crossed_at(phrase, at)) {
            pins.crossed = true;
        } else {
            return from;
        }
    }
    pins.kind = kind_of(phrase, which, at);
    return at + 1;
}

// What is said of them afterwards: "crossed", "in dark brown".
std::size_t read_after(const Phrase& phrase, std::size_t at, Pins& pins) {
    while (true) {
        const std::size_t in = phrase.is(at, {"in"}) ? 1 : 0;
        if (crossed_at(phrase, at)) {
            pins.crossed = true;
            ++at;
        } else if (const std::size_t length = colour_at(phrase, at + in)) {
            if (!pins.colour.empty()) return at;
            pins.colour = phrase.words(at + in, at + in + length);
            at += in + length;
        } else {
            return at;
        }
    }
}

bool times_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"x", "\u00d7", "*"});
}

// "4 x brown grips crossed", "cross 4 pins".
std::size_t read_counted(const Phrase& phrase, std::size_t from, Pins& pins) {
    std::size_t at = from;
    if (crossed_at(phrase, at)) {
        pins.crossed = true;
        ++at;
    }
    pins.count = phrase.count(at);
    if (!pins.count || *pins.count == 0) return from;
    if (times_at(phrase, ++at)) ++at;
    const std::size_t end = read_named(phrase, at, pins);
    return end == at ? from : read_after(phrase, end, pins);
}

// "brown grips x4".
std::size_t read_count_last(const Phrase& phrase, std::size_t from, Pins& pins) {
    std::size_t at = read_named(phrase, from, pins);
    if (at == from || !times_at(phrase, at)) return from;
    pins.count = phrase.count(at + 1);
    if (!pins.count || *pins.count == 0) return from;
    return read_after(phrase, at + 2, pins);
}

}  // namespace

void read_pins(Phrase& phrase, Step& step) {
    if (phrase.size() == 1 && crossed_at(phrase, 0) && !step.pins.empty()) {
        step.pins.back().crossed = true;
        phrase.use(0, 1);
    }
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        for (const auto read : {read_counted, read_count_last}) {
            Pins pins;
            const std::size_t end = read(phrase, at, pins);
            if (end == at) continue;
            phrase.use(at, end);
            step.pins.push_back(pins);
            break;
        }
    }
}

}  // namespace quarterturn::shorthand
