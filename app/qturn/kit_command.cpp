#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/empty_party.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/sheet/kit_sheet.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct KitOptions {
    std::string wedding;
    std::optional<int> spare;
    Texts tick;
    Texts untick;
    std::string out;
    Text paper;
    bool replace = false;

    bool ticks() const { return !tick.empty() || !untick.empty(); }
    bool change() const { return ticks() || spare; }
};

std::string with_number(const KitList& list, const KitLine& line) {
    return number_text(&line - list.lines.data() + 1) + " " + line.what;
}

const KitLine& find_line(const KitList& list, const std::string& name) {
    const auto found = lines_called(list, name);
    if (found.size() == 1) return *found.front();
    if (found.empty()) {
        throw WrongUse("Nothing in the kit list is called '" + name +
                       "'. Name it by its words, or by its number in the list.");
    }
    std::vector<std::string> names;
    for (const KitLine* line : found) names.push_back(with_number(list, *line));
    throw WrongUse("'" + name + "' can be " + joined(names) + ". Name it by its number.");
}

// All of them are found before any is ticked.
void change_ticks(Library& library, WeddingId wedding, const KitOptions& options) {
    const KitList list = kit_list(library, wedding);
    std::vector<const KitLine*> ticked;
    std::vector<const KitLine*> unticked;
    for (const std::string& name : options.tick) ticked.push_back(&find_line(list, name));
    for (const std::string& name : options.untick) unticked.push_back(&find_line(list, name));
    for (const KitLine* line : ticked) library.kit_ticks().set(wedding, line->item, line->count);
    for (const KitLine* line : unticked) library.kit_ticks().clear(wedding, line->item);
}

json product_json(const KitProduct& product) {
    return {{"name", product.name},
            {"amounts", product.amounts},
            {"uses", product.uses},
            {"looks", product.looks}};
}

json tool_json(const KitTool& tool) {
    return {{"kind", tool.kind},
            {"barrel_mm", tool.barrel_mm ? json(*tool.barrel_mm) : json()},
            {"looks", tool.looks}};
}

json pins_json(const KitPins& pins) {
    return {{"kind", pins.kind},           {"colour", pins.colour},
            {"needed", pins.needed},       {"with_spare", pins.with_spare},
            {"uncounted", pins.uncounted}, {"looks", pins.looks}};
}

json piece_json(const KitPiece& piece) {
    return {{"kind", word(piece.kind)},       {"what", piece.what},   {"colour", piece.colour},
            {"brought_by", piece.brought_by}, {"count", piece.count}, {"looks", piece.looks}};
}

// The things of one group, each with its number in the list and how it is ticked.
template <class Things>
json group_json(const KitList& list, KitGroup group, const Things& things,
                json (*to_json)(const typename Things::value_type&)) {
    json answer = json::array();
    auto line = std::ranges::find(list.lines, group, &KitLine::group);
    for (const auto& thing : things) {
        json each = to_json(thing);
        each["number"] = line - list.lines.begin() + 1;
        each["ticked"] = line->ticked.has_value();
        each["ticked_count"] = line->ticked ? json(*line->ticked) : json();
        answer.push_back(std::move(each));
        ++line;
    }
    return answer;
}

json list_json(const KitList& list) {
    const Kit& kit = list.kit;
    return {{"wedding", kit.wedding.name},
            {"wedding_id", kit.wedding.id.value},
            {"spare_percent", kit.spare_percent},
            {"packed", list.packed()},
            {"lines", list.lines.size()},
            {"without_recipe", kit.without_recipe},
            {"products", group_json(list, KitGroup::products, kit.products, product_json)},
            {"tools", group_json(list, KitGroup::tools, kit.tools, tool_json)},
            {"pins", group_json(list, KitGroup::pins, kit.pins, pins_json)},
            {"pieces", group_json(list, KitGroup::pieces, kit.pieces, piece_json)}};
}

// "  [x]  #9  10 × hair pin, bronze", and below it what it is for.
void add_line(Reply& reply, const KitList& list, const KitLine& line) {
    const std::string number = number_text(&line - list.lines.data() + 1);
    const std::string before = std::string(line.ticked ? "  [x]  " : "  [ ]  ") + number + "  ";
    reply.lines.push_back(before + counted_text(line));
    for (const std::string& more : {grown_text(line), about_text(line)}) {
        if (!more.empty()) reply.lines.push_back(std::string(before.size(), ' ') + more);
    }
}

void add_group(Reply& reply, const KitList& list, KitGroup group) {
    bool begun = false;
    for (const KitLine& line : list.lines) {
        if (line.group != group) continue;
        if (!std::exchange(begun, true)) reply.lines.emplace_back(heading(group));
        add_line(reply, list, line);
    }
}

void write_page(Reply& reply, Library& library, const KitList& list, const KitOptions& options,
                Paper paper) {
    const Drawing drawing;
    const auto decoder = make_quick_decoder();
    const auto ruler = make_text_ruler();
    const Document page = kit_sheet(list, business_words(library.settings()), *ruler, paper);
    write_pdf(page, *decoder, library.disk(), options.out);
    reply.lines.push_back("Written: " + options.out);
    reply.data["file"] = options.out;
}

Reply to_pack(Session& session, const KitOptions& options) {
    if (!options.out.empty()) refuse_bad_pdf(session, options.out, options.replace);
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    if (options.change()) {
        library.history().record(
            options.ticks() ? "changed what is ticked as packed" : "changed the pins to spare",
            [&] {
                if (options.spare) set_spare_percent(library, *options.spare);
                change_ticks(library, wedding, options);
            });
    }
    const KitList list = kit_list(library, wedding);
    Reply reply{{"To pack for " + list.kit.wedding.name + ", " + iso_text(list.kit.wedding.date) +
                     ", with " + std::to_string(list.kit.spare_percent) + " % of pins to spare.",
                 packed_text(list)},
                list_json(list)};
    for (const KitGroup group : all_kit_groups) add_group(reply, list, group);
    if (list.lines.empty()) tell_empty_party(reply, list.kit.wedding);
    if (reply.outcome == Outcome::done) append(reply.lines, kit_notes(list));
    if (!options.out.empty()) write_page(reply, library, list, options, paper);
    if (!list.kit.without_recipe.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace

void add_kit_command(CommandSet& commands) {
    const auto options = std::make_shared<KitOptions>();
    auto command =
        commands.add({"kit", "Adds up what to pack for a wedding from the recipes of its looks.",
                      "qturn kit 'Boathouse' --tick 'hair pin, bronze' --out kit.pdf"},
                     [options](Session& session) { return to_pack(session, *options); });
    command.argument("WEDDING", options->wedding, "Name or number");
    command.option("--spare PERCENT", options->spare,
                   "How many more pins than needed, from now on (20 unless set)");
    command.option("--tick ITEM", options->tick,
                   "Packed, by its words or its number in the list; once for each");
    command.option("--untick ITEM", options->untick, "Not packed after all; once for each");
    command.option("--out FILE", options->out, "Write the list as a PDF with boxes to tick");
    command.option("--paper SIZE", options->paper,
                   "a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.flag("--replace", options->replace, "Write over a file that is there");
}

}  // namespace quarterturn
