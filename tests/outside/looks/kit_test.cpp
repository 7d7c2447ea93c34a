// The kit's totals against sums that sqlite3 makes over the recipes' JSON by itself.

#include "indexer/looks/kit.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <sstream>

#include "tests/support/command.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

constexpr const char* newest =
    "WITH newest AS (SELECT recipe FROM recipe_revision AS r JOIN look ON look.id = r.look "
    "WHERE look.wedding = 1 AND number = (SELECT max(number) FROM recipe_revision AS later "
    "WHERE later.look = r.look)) ";

std::string asked(Library& library, const std::string& sql) {
    return output_of("sqlite3 " + shell_word(library.folder() / "records.sqlite") + " " +
                     shell_word(newest + sql));
}

std::string pins_by_sql(Library& library) {
    return asked(library,
                 "SELECT lower(p.value ->> 'kind') AS kind, lower(p.value ->> 'colour') AS colour, "
                 "sum(coalesce(p.value ->> 'count', 0)) FROM newest, "
                 "json_each(recipe, '$.build') AS s, json_each(s.value, '$.pins') AS p "
                 "GROUP BY kind, colour ORDER BY kind, colour");
}

std::string pieces_by_sql(Library& library) {
    return asked(library,
                 "SELECT p.value ->> 'kind' AS kind, lower(p.value ->> 'what') AS what, "
                 "sum(coalesce(p.value ->> 'count', 1)) FROM newest, "
                 "json_each(recipe, '$.pieces') AS p GROUP BY kind, what ORDER BY kind, what");
}

// Of every product, how many times the recipes use it.
std::string products_by_sql(Library& library) {
    return asked(library,
                 "SELECT lower(p.value ->> 'name') AS name, count(*) FROM ("
                 "SELECT value FROM newest, json_each(recipe, '$.prep') UNION ALL "
                 "SELECT p.value FROM newest, json_each(recipe, '$.build') AS s, "
                 "json_each(s.value, '$.products') AS p) AS p GROUP BY name");
}

std::string tools_by_sql(Library& library) {
    return asked(library,
                 "SELECT DISTINCT lower(tool ->> 'kind'), tool ->> 'barrel_mm' FROM ("
                 "SELECT recipe -> '$.heat_tool' AS tool FROM newest UNION ALL "
                 "SELECT s.value -> '$.heat_tool' FROM newest, json_each(recipe, '$.build') AS s) "
                 "WHERE tool ->> 'kind' IS NOT NULL");
}

std::string lower_case(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

std::string sorted_lines(std::vector<std::string> lines) {
    std::sort(lines.begin(), lines.end());
    std::string text;
    for (const std::string& line : lines) text += line + '\n';
    return text;
}

std::string pins_by_kit(const Kit& kit) {
    std::vector<std::string> lines;
    for (const KitPins& pins : kit.pins) {
        lines.push_back(lower_case(pins.kind) + '|' + lower_case(pins.colour) + '|' +
                        std::to_string(pins.needed));
    }
    return sorted_lines(lines);
}

std::string pieces_by_kit(const Kit& kit) {
    std::vector<std::string> lines;
    for (const KitPiece& piece : kit.pieces) {
        lines.push_back(std::string(word(piece.kind)) + '|' + lower_case(piece.what) + '|' +
                        std::to_string(piece.count));
    }
    return sorted_lines(lines);
}

std::string products_by_kit(const Kit& kit) {
    std::vector<std::string> lines;
    for (const KitProduct& product : kit.products) {
        lines.push_back(lower_case(product.name) + '|' + std::to_string(product.uses));
    }
    return sorted_lines(lines);
}

std::string tools_by_kit(const Kit& kit) {
    std::vector<std::string> lines;
    for (const KitTool& tool : kit.tools) {
        const std::string barrel =
            tool.barrel_mm ? std::to_string(static_cast<int>(*tool.barrel_mm)) + ".0" : "";
        lines.push_back(lower_case(tool.kind) + '|' + barrel);
    }
    return sorted_lines(lines);
}

Recipe any_recipe() {
    const auto one_of = [](std::initializer_list<const char*> words) {
        return std::string(*rc::gen::elementOf(std::vector<const char*>(words)));
    };
    const auto maybe = [](int least, int most) {
        return *rc::gen::inRange(0, 4) == 0 ? std::nullopt
                                            : std::optional{*rc::gen::inRange(least, most)};
    };
    const auto any_product = [&] {
        return Product{one_of({"mousse", "Mousse", "lotion"}), one_of({"", "one walnut"}), ""};
    };
    const auto any_tool = [&]() -> std::optional<HeatTool> {
        if (*rc::gen::inRange(0, 2) == 0) return std::nullopt;
        return HeatTool{one_of({"tongs", "Tongs", "wand"}), maybe(19, 21), maybe(150, 190)};
    };
    Recipe recipe;
    for (int left = *rc::gen::inRange(0, 3); left > 0; --left) {
        recipe.prep.push_back(any_product());
    }
    recipe.heat_tool = any_tool();
    for (int steps = *rc::gen::inRange(0, 4); steps > 0; --steps) {
        Step& step = recipe.build.emplace_back();
        if (*rc::gen::inRange(0, 2) == 0) step.products = {any_product()};
        step.heat_tool = any_tool();
        for (int pins = *rc::gen::inRange(0, 4); pins > 0; --pins) {
            step.pins.push_back({one_of({"grip", "Grip", "hair pin", "section clip"}),
                                 one_of({"", "brown", "Brown", "bronze"}), maybe(0, 30), false});
        }
    }
    for (int pieces = *rc::gen::inRange(0, 4); pieces > 0; --pieces) {
        Piece& piece = recipe.pieces.emplace_back();
        piece.kind =
            *rc::gen::elementOf(std::vector(all_piece_kinds.begin(), all_piece_kinds.end()));
        piece.what = one_of({"leaf comb", "Leaf comb", "crescent"});
        piece.count = maybe(1, 9);
    }
    return recipe;
}

TEST(Kit, AddsUpAsSqlDoes) {
    EXPECT_TRUE(rc::check([] {
        static int runs = 0;
        if (++runs > 15) return;
        ExampleLibrary example;
        for (int number = *rc::gen::inRange(1, 4); number > 0; --number) {
            Look look;
            look.client = example.mira;
            if (*rc::gen::inRange(0, 4) > 0) look.wedding = example.wedding;
            look.name = "look " + std::to_string(number);
            const LookId id = example.library.looks().add(look);
            for (int revisions = *rc::gen::inRange(0, 3); revisions > 0; --revisions) {
                example.library.recipes().save(id, any_recipe(), at("2026-11-07T12:00"));
            }
        }
        const Kit kit = kit_of(example.library, example.wedding);
        const auto sorted = [](const std::string& text) {
            std::istringstream stream(text);
            std::vector<std::string> lines;
            for (std::string line; std::getline(stream, line);) lines.push_back(line);
            return sorted_lines(lines);
        };
        RC_ASSERT(pins_by_kit(kit) == sorted(pins_by_sql(example.library)));
        RC_ASSERT(products_by_kit(kit) == sorted(products_by_sql(example.library)));
        RC_ASSERT(tools_by_kit(kit) == sorted(tools_by_sql(example.library)));
        RC_ASSERT(pieces_by_kit(kit) == sorted(pieces_by_sql(example.library)));
    }));
}

}  // namespace
}  // namespace quarterturn
