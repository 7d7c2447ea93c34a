#include "app/qturn/pair_filter_options.h"

#include <algorithm>

#include "app/qturn/parse.h"
#include "app/qturn/reply.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

std::string meaning(Fact fact) {
    switch (fact) {
        case Fact::length:
            return "How long the hair is";
        case Fact::texture:
            return "fine, medium, coarse, straight, wavy, curly, coily";
        case Fact::density:
            return "thin, medium, thick";
        case Fact::colour:
            return "Of the hair";
        case Fact::family:
            return "Of your own list: qturn settings 'look families'";
        case Fact::parting:
            return "left, middle, right, none";
        case Fact::accessory:
            return "comb, pins, flowers, veil, none, and so on";
        case Fact::worn:
            return "ceremony, evening, other";
        case Fact::season:
            return "spring, summer, autumn, winter";
        case Fact::year:
            return "When it was worn";
        case Fact::angle:
            return "Where the camera stood, as for qturn tag";
        case Fact::use:
            return "That both photos may go for today: website, print, and so on";
        case Fact::kind:
            return "'before and after', 'trial and wedding day', 'trial and trial'";
    }
    return {};
}

std::string kind_from(const std::string& text) {
    if (const auto kind = parse_pair_kind(text)) return std::string(word(*kind));
    throw WrongUse("'" + text + "' is no kind of pair. Known are: " + meaning(Fact::kind) + ".");
}

// As the records spell it.
std::string value_from(Fact fact, const std::string& text) {
    if (fact == Fact::angle) return std::string(word(angle_from(text)));
    if (fact == Fact::worn) return std::string(word(worn_from(text)));
    if (fact == Fact::kind) return kind_from(text);
    if (fact == Fact::use) return std::string(word(use_from(text)));
    if (fact == Fact::year) return std::to_string(number_from(text, text));
    return text;
}

}  // namespace

void add_fact_options(Command& command, std::map<Fact, Texts>& values,
                      const std::vector<Fact>& facts) {
    for (const Fact fact : facts) {
        command.option("--" + std::string(word(fact)) + " VALUE", values[fact],
                       meaning(fact) + "; once for each");
    }
}

void add_filter_options(Command& command, PairFilterOptions& options) {
    command.optional_argument("WORDS", options.words,
                              "Each must stand in a note, or with the client, wedding, sitting, "
                              "look or recipe of either photo; beginnings will do");
    add_fact_options(command, options.values, {all_facts.begin(), all_facts.end()});
    command.option("--filter NAME", options.kept, "A filter that you kept, and all else besides");
    command.flag("--refused", options.refused, "Those that you refused, and only those");
}

PairFilter filter_from(Library& library, const PairFilterOptions& options) {
    PairFilter filter;
    if (options.kept) {
        const auto kept = library.pair_filters().find(*options.kept);
        if (!kept) {
            throw WrongUse("There is no filter '" + *options.kept + "'. See: qturn pairs filters");
        }
        filter = *kept;
    }
    for (const auto& [fact, values] : options.values) {
        if (values.empty()) continue;
        std::vector<std::string>& wanted = filter.values[fact];
        wanted.clear();
        for (const std::string& value : values) wanted.push_back(value_from(fact, value));
    }
    for (const std::string& each : options.words) {
        filter.words += (filter.words.empty() ? "" : " ") + each;
    }
    filter.refused = filter.refused || options.refused;
    return filter;
}

}  // namespace quarterturn
