#include "app/qturn/pair_filter_options.h"

#include <algorithm>

#include "app/qturn/parse.h"
#include "app/qturn/reply.h"
#include "app/qturn/say.h"
#include "indexer/record/word_list.h"
#include "indexer/rules/hair_facts.h"
#include "indexer/store/library_settings.h"

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

bool is_among(const std::vector<std::string>& values, const std::string& value) {
    return std::ranges::any_of(
        values, [&](const std::string& each) { return plain_word(each) == plain_word(value); });
}

void refuse_unless_among(const std::vector<std::string>& values, Fact fact,
                         const std::string& value) {
    if (is_among(values, value)) return;
    std::string words = "'" + value + "' is no " + std::string(word(fact)) +
                        " that a look has. Known are: " + joined(values) + ".";
    if (fact == Fact::family) words += " Your own list: qturn settings 'look families'";
    throw WrongUse(words);
}

std::string kind_from(const std::string& text) {
    if (const auto kind = parse_pair_kind(text)) return std::string(word(*kind));
    throw WrongUse("'" + text + "' is no kind of pair. Known are: " + meaning(Fact::kind) + ".");
}

// What a look may have been told or said to be, with what her looks are.
std::vector<std::string> known_values(Library& library, Fact fact) {
    if (fact == Fact::season) return {"spring", "summer", "autumn", "winter"};
    std::vector<std::string> known =
        fact == Fact::family ? look_families(library.settings()) : usual_values(fact);
    for (const auto& [look, facts] : library.look_facts().all()) {
        for (const LookFact& each : facts) {
            if (each.fact == fact && !is_among(known, each.value)) known.push_back(each.value);
        }
    }
    return known;
}

// As the records spell it.
std::string value_from(Library& library, Fact fact, const std::string& text) {
    if (fact == Fact::angle) return std::string(word(angle_from(text)));
    if (fact == Fact::worn) return std::string(word(worn_from(text)));
    if (fact == Fact::kind) return kind_from(text);
    if (fact == Fact::use) return std::string(word(use_from(text)));
    if (fact == Fact::year) return std::to_string(number_from(text, text));
    refuse_unless_among(known_values(library, fact), fact, text);
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

void refuse_unknown_values(Library& library, const std::map<Fact, Texts>& values) {
    for (const auto& [fact, own] : values) {
        std::vector<std::string> known;
        if (fact == Fact::family) known = look_families(library.settings());
        if (fact == Fact::texture || fact == Fact::density) known = usual_values(fact);
        if (fact == Fact::parting) known = usual_values(fact);
        for (const std::string& value : own) {
            if (!known.empty()) refuse_unless_among(known, fact, value);
        }
    }
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
        for (const std::string& value : values) wanted.push_back(value_from(library, fact, value));
    }
    for (const std::string& each : options.words) {
        filter.words += (filter.words.empty() ? "" : " ") + each;
    }
    filter.refused = filter.refused || options.refused;
    return filter;
}

}  // namespace quarterturn
