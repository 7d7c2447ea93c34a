#include "indexer/looks/kit_list.h"

#include <algorithm>
#include <charconv>
#include <nlohmann/json.hpp>

#include "indexer/record/recipe/joined_words.h"
#include "indexer/record/recipe_text.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// The item's words as they are compared, in a text that no word can run over the end of.
template <class... Words>
std::string item_of(KitGroup group, const Words&... words) {
    return nlohmann::json::array({heading(group), words...}).dump();
}

// "two walnuts; one walnut"; whole sentences stand one after the other.
std::string in_a_row(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& each : words) {
        if (!text.empty()) text += text.ends_with('.') ? " " : "; ";
        text += each;
    }
    return text;
}

KitLine line_of(const KitProduct& product) {
    KitLine line;
    line.item = item_of(KitGroup::products, folded(product.name));
    line.what = product.name;
    line.about = in_a_row(product.amounts);
    line.count = product.uses;
    line.looks = product.looks;
    return line;
}

KitLine line_of(const KitTool& tool) {
    KitLine line;
    line.group = KitGroup::tools;
    line.item = item_of(line.group, folded(tool.kind), tool.barrel_mm.value_or(0));
    line.what = heat_tool_text({tool.kind, tool.barrel_mm, std::nullopt});
    line.looks = tool.looks;
    return line;
}

KitLine line_of(const KitPins& pins) {
    KitLine line;
    line.group = KitGroup::pins;
    line.item = item_of(line.group, folded(pins.kind), folded(pins.colour));
    line.what = JoinedWords().add(pins.kind).add(pins.colour).text();
    JoinedWords about;
    const std::int64_t spare = pins.with_spare - pins.needed;
    if (pins.needed > 0) about.add(std::to_string(pins.needed), "", " needed");
    if (spare > 0) about.add(std::to_string(spare), "", " to spare");
    if (pins.uncounted) about.add("some that no recipe counts");
    line.about = about.text();
    line.count = pins.with_spare;
    line.looks = pins.looks;
    return line;
}

KitLine line_of(const KitPiece& piece) {
    KitLine line;
    line.group = KitGroup::pieces;
    line.item = item_of(line.group, word(piece.kind), folded(piece.what), folded(piece.colour),
                        folded(piece.brought_by));
    line.what = JoinedWords(": ")
                    .add(word(piece.kind))
                    .add(JoinedWords().add(piece.what).add(piece.colour).text())
                    .text();
    line.about = piece.brought_by.empty() ? "" : "brought by " + piece.brought_by;
    line.count = piece.count;
    line.looks = piece.looks;
    return line;
}

template <class Things>
void add_lines(std::vector<KitLine>& lines, const Things& things) {
    for (const auto& thing : things) lines.push_back(line_of(thing));
}

std::optional<std::size_t> number_in(std::string_view text) {
    if (text.starts_with('#')) text.remove_prefix(1);
    std::size_t number = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (problem != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
}

template <class Meant>
std::vector<const KitLine*> lines_where(const KitList& list, Meant meant) {
    std::vector<const KitLine*> found;
    for (const KitLine& line : list.lines) {
        if (meant(folded(line.what))) found.push_back(&line);
    }
    return found;
}

bool has_more(const KitLine& line) {
    return line.ticked && line.count > *line.ticked;
}

std::size_t number_of(const KitList& list, bool (*wanted)(const KitLine&)) {
    return static_cast<std::size_t>(std::ranges::count_if(list.lines, wanted));
}

}  // namespace

std::string_view heading(KitGroup group) {
    switch (group) {
        case KitGroup::products:
            return "Products";
        case KitGroup::tools:
            return "Tools";
        case KitGroup::pins:
            return "Pins";
        case KitGroup::pieces:
            return "Padding, bands, extensions and accessories";
    }
    return {};
}

std::size_t KitList::packed() const {
    return number_of(*this, [](const KitLine& line) { return line.ticked.has_value(); });
}

std::size_t KitList::grown() const {
    return number_of(*this, has_more);
}

KitList kit_list(Library& library, WeddingId wedding) {
    KitList list{kit_of(library, wedding), {}};
    add_lines(list.lines, list.kit.products);
    add_lines(list.lines, list.kit.tools);
    add_lines(list.lines, list.kit.pins);
    add_lines(list.lines, list.kit.pieces);
    const auto ticks = library.kit_ticks().of_wedding(wedding);
    for (KitLine& line : list.lines) {
        const auto tick = ticks.find(line.item);
        if (tick != ticks.end()) line.ticked = tick->second;
    }
    return list;
}

std::string counted_text(const KitLine& line) {
    const bool one_of_it = line.count == 1 && line.group != KitGroup::pins;
    if (line.group == KitGroup::products || one_of_it || line.count == 0) return line.what;
    return std::to_string(line.count) + " × " + line.what;
}

std::string about_text(const KitLine& line) {
    JoinedWords looks(", ");
    for (std::size_t i = 0; i + 1 < line.looks.size(); ++i) looks.add(line.looks[i]);
    JoinedWords all(" and ");
    all.add(looks.text());
    if (!line.looks.empty()) all.add(line.looks.back());
    return JoinedWords(" · ").add(line.about).add(all.text(), "for ").text();
}

std::string grown_text(const KitLine& line) {
    if (!has_more(line)) return {};
    const std::string more = std::to_string(line.count - *line.ticked);
    if (line.group != KitGroup::products) return more + " more than when it was ticked.";
    return "Used " + more + (more == "1" ? " time" : " times") + " more than when it was ticked.";
}

std::string packed_text(const KitList& list) {
    std::string text =
        std::to_string(list.packed()) + " of " + std::to_string(list.lines.size()) + " packed";
    const std::size_t grown = list.grown();
    if (grown > 0) {
        text += ", " + std::to_string(grown) + (grown == 1 ? " of them needs" : " of them need") +
                " more";
    }
    return text + '.';
}

std::vector<std::string> kit_notes(const KitList& list) {
    std::vector<std::string> notes;
    for (const std::string& look : list.kit.without_recipe) {
        notes.push_back(look + " has no recipe yet, so nothing of it is in the list.");
    }
    if (list.lines.empty() && notes.empty()) {
        notes.emplace_back("No look is planned for this wedding yet, so there is nothing to pack.");
    }
    return notes;
}

std::vector<const KitLine*> lines_called(const KitList& list, const std::string& name) {
    const auto number = number_in(name);
    if (number && *number >= 1 && *number <= list.lines.size()) return {&list.lines[*number - 1]};
    const std::string wanted = folded(name);
    auto found = lines_where(list, [&](const std::string& what) { return what == wanted; });
    if (!found.empty()) return found;
    return lines_where(
        list, [&](const std::string& what) { return what.find(wanted) != std::string::npos; });
}

std::vector<Wedding> next_wedding_first(Library& library, Date today) {
    std::vector<Wedding> weddings = library.weddings().all();
    const auto ahead = std::ranges::stable_partition(
        weddings, [&](const Wedding& wedding) { return wedding.date >= today; });
    std::ranges::reverse(ahead);
    return weddings;
}

}  // namespace quarterturn
