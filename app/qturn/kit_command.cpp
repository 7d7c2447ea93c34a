#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/say.h"
#include "indexer/looks/kit.h"
#include "indexer/record/recipe_text.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct KitOptions {
    std::string wedding;
    std::optional<int> spare;
};

using Rows = std::vector<std::vector<std::string>>;

void add_rows(Reply& reply, const char* heading, const Rows& rows) {
    if (rows.empty()) return;
    reply.lines.emplace_back(heading);
    for (const std::string& line : columns(rows)) reply.lines.push_back("  " + line);
}

void add_products(Reply& reply, const Kit& kit) {
    Rows rows;
    reply.data["products"] = json::array();
    for (const KitProduct& product : kit.products) {
        rows.push_back({product.name, joined(product.amounts), joined(product.looks)});
        reply.data["products"].push_back(
            {{"name", product.name}, {"amounts", product.amounts}, {"looks", product.looks}});
    }
    add_rows(reply, "Products", rows);
}

void add_tools(Reply& reply, const Kit& kit) {
    Rows rows;
    reply.data["tools"] = json::array();
    for (const KitTool& tool : kit.tools) {
        rows.push_back(
            {heat_tool_text({tool.kind, tool.barrel_mm, std::nullopt}), joined(tool.looks)});
        reply.data["tools"].push_back(
            {{"kind", tool.kind},
             {"barrel_mm", tool.barrel_mm ? json(*tool.barrel_mm) : json()},
             {"looks", tool.looks}});
    }
    add_rows(reply, "Tools", rows);
}

void add_pins(Reply& reply, const Kit& kit) {
    Rows rows;
    reply.data["pins"] = json::array();
    for (const KitPins& pins : kit.pins) {
        rows.push_back({std::to_string(pins.with_spare), pins.kind, pins.colour,
                        "needed: " + std::to_string(pins.needed) +
                            (pins.uncounted ? ", and some that no recipe counts" : "")});
        reply.data["pins"].push_back({{"kind", pins.kind},
                                      {"colour", pins.colour},
                                      {"needed", pins.needed},
                                      {"with_spare", pins.with_spare},
                                      {"uncounted", pins.uncounted},
                                      {"looks", pins.looks}});
    }
    add_rows(reply, "Pins", rows);
}

void add_pieces(Reply& reply, const Kit& kit) {
    Rows rows;
    reply.data["pieces"] = json::array();
    for (const KitPiece& piece : kit.pieces) {
        rows.push_back({std::to_string(piece.count), std::string(word(piece.kind)), piece.what,
                        piece.colour,
                        piece.brought_by.empty() ? "" : "brought by " + piece.brought_by});
        reply.data["pieces"].push_back({{"kind", word(piece.kind)},
                                        {"what", piece.what},
                                        {"colour", piece.colour},
                                        {"brought_by", piece.brought_by},
                                        {"count", piece.count},
                                        {"looks", piece.looks}});
    }
    add_rows(reply, "Padding, bands, extensions and accessories", rows);
}

Reply to_pack(Session& session, const KitOptions& options) {
    Library& library = session.library();
    const Wedding wedding = find_wedding(library, options.wedding);
    if (options.spare) set_spare_percent(library, *options.spare);
    const Kit kit = kit_of(library, wedding.id);
    Reply reply{{"To pack for " + wedding.name + ", " + iso_text(wedding.date) + ", with " +
                 std::to_string(kit.spare_percent) + " % of pins to spare."},
                {{"wedding", wedding.name},
                 {"wedding_id", wedding.id.value},
                 {"spare_percent", kit.spare_percent},
                 {"without_recipe", kit.without_recipe}}};
    add_products(reply, kit);
    add_tools(reply, kit);
    add_pins(reply, kit);
    add_pieces(reply, kit);
    for (const std::string& look : kit.without_recipe) {
        reply.lines.push_back(look + " has no recipe yet, so nothing of it is in the list.");
    }
    if (!kit.without_recipe.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace

void add_kit_command(CommandSet& commands) {
    const auto options = std::make_shared<KitOptions>();
    auto command =
        commands.add({"kit", "Adds up what to pack for a wedding from the recipes of its looks.",
                      "qturn kit 'Boathouse' --spare 25"},
                     [options](Session& session) { return to_pack(session, *options); });
    command.argument("WEDDING", options->wedding, "Name or number");
    command.option("--spare PERCENT", options->spare,
                   "How many more pins than needed, from now on (20 unless set)");
}

}  // namespace quarterturn
