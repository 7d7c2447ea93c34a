#include "indexer/looks/kit.h"

#include <algorithm>
#include <tuple>

#include "indexer/store/many_looks.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

void add_once(std::vector<std::string>& list, const std::string& text) {
    if (std::ranges::find(list, text) == list.end()) list.push_back(text);
}

bool is_nothing(const std::string& words) {
    const std::string key = folded(words);
    return key.empty() || key == "none";
}

template <class Map>
auto values_of(Map& map) {
    std::vector<typename Map::mapped_type> values;
    for (auto& [key, value] : map) values.push_back(std::move(value));
    return values;
}

class KitCounter {
  public:
    void add(const std::string& look, const Recipe& recipe) {
        look_ = look;
        for (const Product& product : recipe.prep) add_product(product);
        if (!is_nothing(recipe.heat_protection)) {
            add_use("heat protection", recipe.heat_protection);
        }
        if (recipe.heat_tool) add_tool(*recipe.heat_tool);
        for (const Step& step : recipe.build) add_step(step);
        for (const Piece& piece : recipe.pieces) add_piece(piece);
        add_accessory_in_words(recipe);
        add_finish(recipe.finish_details);
    }

    void finish(Kit& kit) {
        kit.products = values_of(products_);
        sort_by_name(kit.products, &KitProduct::name);
        kit.tools = values_of(tools_);
        sort_by_name(kit.tools, &KitTool::kind);
        kit.pins = values_of(pins_);
        sort_by_name(kit.pins, &KitPins::kind);
        for (KitPins& pins : kit.pins) {
            pins.with_spare = pins.needed + (pins.needed * kit.spare_percent + 99) / 100;
        }
        kit.pieces = values_of(pieces_);
        sort_by_name(kit.pieces, &KitPiece::what);
        std::ranges::stable_sort(kit.pieces, {}, &KitPiece::kind);
    }

  private:
    void add_step(const Step& step) {
        for (const Product& product : step.products) add_product(product);
        if (step.heat_tool) add_tool(*step.heat_tool);
        for (const Pins& pins : step.pins) add_pins(pins);
    }

    // Told in words alone, it is in the list once, so that it is not left at home.
    void add_accessory_in_words(const Recipe& recipe) {
        const auto is_accessory = [](const Piece& piece) {
            return piece.kind == PieceKind::accessory;
        };
        if (is_nothing(recipe.accessory) || std::ranges::any_of(recipe.pieces, is_accessory)) {
            return;
        }
        Piece piece;
        piece.what = recipe.accessory;
        add_piece(piece);
    }

    void add_finish(const FinishDetails& finish) {
        if (finish.spray) add_use("spray, " + std::string(word(*finish.spray)) + " hold", {});
        if (!is_nothing(finish.smoothing)) add_use("smoothing", finish.smoothing);
        if (!is_nothing(finish.shine)) add_use("shine", finish.shine);
    }

    void add_product(const Product& product) {
        if (!is_nothing(product.name)) add_use(product.name, product.amount);
    }

    void add_use(const std::string& name, const std::string& amount) {
        KitProduct& kit = products_[folded(name)];
        kit.name = name;
        ++kit.uses;
        if (!amount.empty()) kit.amounts.push_back(amount);
        add_once(kit.looks, look_);
    }

    void add_tool(const HeatTool& tool) {
        KitTool& kit = tools_[{folded(tool.kind), tool.barrel_mm}];
        kit.kind = tool.kind;
        kit.barrel_mm = tool.barrel_mm;
        add_once(kit.looks, look_);
    }

    void add_pins(const Pins& pins) {
        KitPins& kit = pins_[{folded(pins.kind), folded(pins.colour)}];
        kit.kind = pins.kind;
        kit.colour = pins.colour;
        const int count = std::max(0, pins.count.value_or(0));
        kit.needed += count;
        kit.uncounted = kit.uncounted || count == 0;
        add_once(kit.looks, look_);
    }

    void add_piece(const Piece& piece) {
        KitPiece& kit = pieces_[{piece.kind, folded(piece.what), folded(piece.colour),
                                 folded(piece.brought_by)}];
        kit.kind = piece.kind;
        kit.what = piece.what;
        kit.colour = piece.colour;
        kit.brought_by = piece.brought_by;
        kit.count += std::max(0, piece.count.value_or(1));
        add_once(kit.looks, look_);
    }

    std::string look_;
    std::map<std::string, KitProduct> products_;
    std::map<std::pair<std::string, std::optional<double>>, KitTool> tools_;
    std::map<std::pair<std::string, std::string>, KitPins> pins_;
    std::map<std::tuple<PieceKind, std::string, std::string, std::string>, KitPiece> pieces_;
};

std::vector<Look> looks_of(Library& library, WeddingId wedding) {
    std::vector<Look> looks = library.looks().all();
    std::erase_if(looks, [&](const Look& look) { return look.wedding != wedding; });
    return looks;
}

}  // namespace

void set_spare_percent(Library& library, int percent) {
    const std::string text = std::to_string(percent);
    const std::string against = reason_against(*find_library_setting(spare_setting), text);
    if (!against.empty()) throw StoreError(against);
    library.settings().set(spare_setting, text);
}

Kit kit_of(Library& library, WeddingId id) {
    const auto wedding = library.weddings().find(id);
    if (!wedding) {
        throw StoreError("There is no wedding number " + std::to_string(id.value) +
                         ": look it up in the list of weddings.");
    }
    Kit kit;
    kit.wedding = *wedding;
    kit.spare_percent = spare_percent(library.settings());
    const auto looks = looks_of(library, id);
    std::vector<LookId> ids;
    for (const Look& look : looks) ids.push_back(look.id);
    const auto recipes = ManyLooks(library.database(), ids).recipes();
    KitCounter counter;
    for (const Look& look : looks) {
        const auto recipe = recipes.find(look.id);
        if (recipe == recipes.end()) {
            kit.without_recipe.push_back(look.name);
        } else {
            counter.add(look.name, recipe->second);
        }
    }
    counter.finish(kit);
    return kit;
}

}  // namespace quarterturn
