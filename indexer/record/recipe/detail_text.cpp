#include <cmath>
#include <cstdio>

#include "indexer/record/recipe/joined_words.h"
#include "indexer/record/recipe_text.h"

namespace quarterturn {
namespace {

template <class Word>
std::string_view word_or_none(const std::optional<Word>& value) {
    return value ? word(*value) : std::string_view{};
}

std::string first_upper(std::string_view word) {
    std::string text(word);
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text;
}

std::string backcombing_text(const Backcombing& backcombing) {
    return JoinedWords{}.add("backcombed").add(backcombing.where).add(backcombing.amount).text();
}

std::string step_photos(const Step& step) {
    if (step.photos.empty()) return {};
    return step.photos.size() == 1 ? "1 photo" : std::to_string(step.photos.size()) + " photos";
}

}  // namespace

std::string length_text(double size, std::string_view unit) {
    char text[40];
    const bool whole = size == std::floor(size) && std::abs(size) < 1e15;
    std::snprintf(text, sizeof text, whole ? "%.0f " : "%.1f ", size);
    return std::string(text).append(unit);
}

std::string product_text(const Product& product) {
    return JoinedWords{}.add(product.name).add(product.amount).add(product.where).text();
}

std::string heat_tool_text(const HeatTool& tool) {
    JoinedWords words;
    words.add(tool.kind);
    if (tool.barrel_mm) words.add(length_text(*tool.barrel_mm, "mm"));
    words.add(tool.temperature_c, "", " °C").add(tool.temperature_f, "", " °F");
    return words.text();
}

std::string winding_text(const Winding& winding) {
    JoinedWords words;
    if (winding.section_mm) words.add(length_text(*winding.section_mm, "mm"), "sections of ");
    words.add(word_or_none(winding.direction)).add(winding.root_lift, "root lift: ");
    return words.text();
}

std::string setting_text(const Setting& setting) {
    return JoinedWords{}
        .add(setting.how)
        .add(setting.cooling_minutes, "", " min to cool")
        .add(setting.may_be_left_minutes, "may be left ", " min")
        .text();
}

std::string parting_text(const PartingLine& line) {
    JoinedWords words;
    const bool to_a_side = line.side == PartingSide::left || line.side == PartingSide::right;
    if (to_a_side && line.from_centre_cm) {
        words.add(length_text(*line.from_centre_cm, "cm") + " " + std::string(word(*line.side)) +
                  " of the centre");
        return words.text();
    }
    words.add(word_or_none(line.side));
    if (line.from_centre_cm)
        words.add(length_text(*line.from_centre_cm, "cm") + " from the centre");
    return words.text();
}

std::string pins_text(const Pins& pins) {
    const std::string kind =
        pins.count ? std::to_string(*pins.count) + " × " + pins.kind : pins.kind;
    return JoinedWords{}.add(kind).add(pins.colour).add(pins.crossed ? "crossed" : "").text();
}

std::string step_text(const Step& step) {
    JoinedWords details("; ");
    for (const Product& product : step.products) details.add(product_text(product));
    if (step.heat_tool) details.add(heat_tool_text(*step.heat_tool));
    details.add(winding_text(step.winding)).add(setting_text(step.setting));
    if (step.backcombing) details.add(backcombing_text(*step.backcombing));
    for (const Pins& pins : step.pins) details.add(pins_text(pins));
    details.add(step.minutes, "", " min").add(step.waiting_minutes, "", " min waiting");
    const std::string text = details.add(step_photos(step)).text();
    if (text.empty()) return step.words;
    return step.words.empty() ? text : step.words + " (" + text + ')';
}

std::string piece_text(const Piece& piece) {
    const std::string count = piece.count ? std::to_string(*piece.count) + " × " : std::string();
    const std::string what = JoinedWords{}
                                 .add(piece.what, count)
                                 .add(piece.colour)
                                 .add(piece.where)
                                 .add(piece.brought_by, "brought by ")
                                 .add(piece.at ? "marked on the head plan" : "")
                                 .add(piece.photo.empty() ? "" : "with a photo")
                                 .text();
    return JoinedWords(": ").add(first_upper(word(piece.kind))).add(what).text();
}

std::string sensitivity_text(const Sensitivity& sensitivity) {
    JoinedWords words;
    words.add(sensitivity.to, "sensitive to ");
    if (sensitivity.patch_tested) words.add(iso_text(*sensitivity.patch_tested), "patch test on ");
    return words.add(sensitivity.result).text();
}

}  // namespace quarterturn
