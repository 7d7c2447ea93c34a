#include "ui/recipe/record_fields.h"

#include "ui/recipe/choice_field.h"
#include "ui/recipe/day_field.h"
#include "ui/recipe/number_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/temperature_field.h"
#include "ui/recipe/tick_field.h"

namespace quarterturn {
namespace {

// In steps of space().
constexpr int wide = 52;
constexpr int middling = 36;

struct DegreesOf {
    HeatTool& tool;

    operator Degrees() const { return {tool.temperature_c, tool.temperature_f}; }
    void operator=(const Degrees& degrees) const {
        tool.temperature_c = degrees.celsius;
        tool.temperature_f = degrees.fahrenheit;
    }
};

}  // namespace

ProductFields::ProductFields(RecipeAids& aids) {
    const auto add_line = [&](const QString& word, WordsFor what, const QString& example, int width,
                              std::string Product::*member) {
        auto* field = add(word, new TextField(aids, what, example), width);
        fields().tie(
            field, [member](Product & product) -> auto& { return product.*member; });
    };
    add_line({}, WordsFor::product, tr("setting foam"), wide, &Product::name);
    add_line(tr("how much"), WordsFor::amount, tr("two pumps"), middling, &Product::amount);
    add_line(tr("where"), WordsFor::place, tr("roots"), middling, &Product::where);
}

HeatToolFields::HeatToolFields(RecipeAids& aids) {
    fields().tie(
        add({}, new TextField(aids, WordsFor::tool, tr("curling tongs")), wide),
        [](HeatTool & tool) -> auto& { return tool.kind; });
    fields().tie(
        add(tr("barrel"), new SizeField(tr("mm"))),
        [](HeatTool & tool) -> auto& { return tool.barrel_mm; });
    fields().tie(add(tr("heat"), new TemperatureField),
                 [](HeatTool& tool) { return DegreesOf{tool}; });
}

WindingFields::WindingFields() {
    fields().tie(
        add(tr("sections"), new SizeField(tr("mm"))),
        [](Winding & winding) -> auto& { return winding.section_mm; });
    fields().tie(
        add(tr("wound"),
            new WordChoice<Wind>({Wind::away, Wind::towards, Wind::alternating}, tr("not said"))),
        [](Winding & winding) -> auto& { return winding.direction; });
    fields().tie(
        add(tr("root lift"), new TextField(tr("at the crown")), middling),
        [](Winding & winding) -> auto& { return winding.root_lift; });
}

SettingFields::SettingFields() {
    fields().tie(
        add({}, new TextField(tr("pinned, clipped, on rollers")), wide),
        [](Setting & setting) -> auto& { return setting.how; });
    fields().tie(
        add(tr("cools"), new WholeNumberField(tr("minutes"))),
        [](Setting & setting) -> auto& { return setting.cooling_minutes; });
    fields().tie(
        add(tr("may be left"), new WholeNumberField(tr("minutes"))),
        [](Setting & setting) -> auto& { return setting.may_be_left_minutes; });
}

PinsFields::PinsFields(RecipeAids& aids) {
    fields().tie(
        add(tr("how many"), new WholeNumberField({})),
        [](Pins & pins) -> auto& { return pins.count; });
    fields().tie(
        add(tr("of"), new TextField(aids, WordsFor::pins, tr("hairpins")), middling),
        [](Pins & pins) -> auto& { return pins.kind; });
    fields().tie(
        add(tr("in"), new TextField(aids, WordsFor::colour, tr("bronze")), middling),
        [](Pins & pins) -> auto& { return pins.colour; });
    fields().tie(
        add({}, new TickField(tr("crossed"))), [](Pins & pins) -> auto& { return pins.crossed; });
}

BackcombingFields::BackcombingFields(RecipeAids& aids) {
    fields().tie(
        add({}, new TextField(aids, WordsFor::place, tr("at the crown")), middling),
        [](Backcombing & combing) -> auto& { return combing.where; });
    fields().tie(
        add(tr("how much"), new TextField(tr("lightly, three rows")), middling),
        [](Backcombing & combing) -> auto& { return combing.amount; });
}

SensitivityFields::SensitivityFields(Date today) {
    fields().tie(
        add({}, new TextField(tr("latex, nickel, a colour …")), wide),
        [](Sensitivity & each) -> auto& { return each.to; });
    fields().tie(
        add(tr("patch test"), new DayField(today)),
        [](Sensitivity & each) -> auto& { return each.patch_tested; });
    fields().tie(
        add(tr("result"), new TextField(tr("no reaction")), wide),
        [](Sensitivity & each) -> auto& { return each.result; });
}

ProductList* make_product_list(RecipeAids& aids) {
    return new ProductList(
        {ProductFields::tr("Add a product"), ProductFields::tr("product %1"),
         ProductFields::tr("Remove this product"), ProductFields::tr("removed a product")},
        [&aids] { return new ProductFields(aids); });
}

PinsList* make_pins_list(RecipeAids& aids) {
    return new PinsList({PinsFields::tr("Add pins"), PinsFields::tr("pins %1"),
                         PinsFields::tr("Remove these pins"), PinsFields::tr("removed pins")},
                        [&aids] { return new PinsFields(aids); });
}

}  // namespace quarterturn
