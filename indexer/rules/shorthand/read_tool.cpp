#include "indexer/rules/shorthand/readers.h"

namespace quarterturn::shorthand {
namespace {

// Below these a number of degrees is an angle, or "4c" a kind of hair.
constexpr double least_celsius = 60;
constexpr double least_fahrenheit = 180;
// Degrees of no scale: no tool stands at more degrees Celsius.
constexpr double most_celsius = 240;

std::optional<double> in_millimetres(const Phrase& phrase, std::size_t at) {
    const auto size = phrase.number(at);
    if (!size) return std::nullopt;
    if (phrase.is(at + 1, {"mm", "mil"})) return size;
    if (phrase.is(at + 1, {"cm"})) return *size * 10;
    if (phrase.is(at + 1, {"inch", "inches", "in", "\""})) return *size * 25.4;
    return std::nullopt;
}

bool tool_kind_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"curling", "conical", "flat", "hot", "heated", "ceramic", "straight",
                          "triple", "waving", "air", "styling"});
}

bool tool_noun_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"tongs", "tong", "iron", "irons", "wand", "straightener", "straighteners", "crimper",
             "crimpers", "waver", "dryer", "hairdryer", "diffuser", "barrel"});
}

// Where the tool ends that is named from `from` on, or `from`.
std::size_t tool_end(const Phrase& phrase, std::size_t from) {
    std::size_t at = from;
    bool hot = false;
    while (tool_kind_at(phrase, at)) {
        hot = hot || phrase.is(at, {"hot", "heated"});
        ++at;
    }
    if (tool_noun_at(phrase, at)) return at + 1;
    if (hot && phrase.is(at, {"brush", "rollers", "roller"})) return at + 1;
    return from;
}

HeatTool& tool_of(Step& step) {
    return step.heat_tool ? *step.heat_tool : step.heat_tool.emplace();
}

void set_barrel(Phrase& phrase, Step& step, std::size_t at) {
    const auto size = in_millimetres(phrase, at);
    if (!size || tool_of(step).barrel_mm) return;
    step.heat_tool->barrel_mm = size;
    phrase.use(at, at + 2);
}

bool sections_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"sections", "section", "pieces", "strands", "subsections"});
}

bool read_section(Phrase& phrase, Step& step, std::size_t at) {
    if (step.winding.section_mm) return false;
    const std::size_t named = sections_at(phrase, at) ? 1 : 0;
    const std::size_t of = named && phrase.is(at + 1, {"of"}) ? 1 : 0;
    const auto size = in_millimetres(phrase, at + named + of);
    if (!size) return false;
    std::size_t end = at + named + of + 2;
    if (phrase.is(end, {"wide", "thick"})) ++end;
    if (!named) {
        if (!sections_at(phrase, end)) return false;
        ++end;
    }
    step.winding.section_mm = size;
    phrase.use(at, end);
    return true;
}

bool read_degrees(Phrase& phrase, Step& step, std::size_t at) {
    const auto degrees = phrase.count(at);
    if (!degrees) return false;
    std::size_t unit = at + 1;
    const bool sign = phrase.is(unit, {"\u00b0", "degrees", "degree", "deg"});
    if (sign) ++unit;
    const bool celsius = phrase.is(unit, {"c", "\u00b0c", "celsius"});
    const bool fahrenheit = phrase.is(unit, {"f", "\u00b0f", "fahrenheit"});
    if (!sign && !celsius && !fahrenheit) return false;
    const bool is_fahrenheit = fahrenheit || (!celsius && *degrees > most_celsius);
    if (*degrees < (is_fahrenheit ? least_fahrenheit : least_celsius)) return false;
    HeatTool& tool = tool_of(step);
    if (tool.temperature_c || tool.temperature_f) return false;
    (is_fahrenheit ? tool.temperature_f : tool.temperature_c) = degrees;
    phrase.use(at, unit + (celsius || fahrenheit ? 1 : 0));
    return true;
}

}  // namespace

void read_tool(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        const std::size_t end = tool_end(phrase, at);
        if (end == at || (step.heat_tool && !step.heat_tool->kind.empty())) continue;
        tool_of(step).kind = phrase.words(at, end);
        phrase.use(at, end);
        if (at >= 2) set_barrel(phrase, step, at - 2);
        set_barrel(phrase, step, end);
    }
}

void read_sizes(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        if (read_section(phrase, step, at) || read_degrees(phrase, step, at)) continue;
        // "20 mm pin curls" is no barrel.
        if (phrase.number(at) && phrase.is(at + 1, {"mm"}) && !phrase.free(at + 2)) {
            set_barrel(phrase, step, at);
        }
    }
}

}  // namespace quarterturn::shorthand
