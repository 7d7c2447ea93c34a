#pragma once
// The fields of each part of a recipe and their names, once for whoever walks through them.
// A visitor has `always(name, value)` and `if_any(name, value)`; the second is for fields that came
// later than the first recipes: their text must not appear in recipes that say nothing of them.

#include <concepts>
#include <type_traits>

#include "indexer/record/recipe.h"

namespace quarterturn {

template <class Given, class Record>
concept Like = std::same_as<std::remove_const_t<Given>, Record>;

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Product> auto& product) {
    visitor.always("name", product.name);
    visitor.always("amount", product.amount);
    visitor.always("where", product.where);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<HeatTool> auto& tool) {
    visitor.always("kind", tool.kind);
    visitor.always("barrel_mm", tool.barrel_mm);
    visitor.always("temperature_c", tool.temperature_c);
    visitor.if_any("temperature_f", tool.temperature_f);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Winding> auto& winding) {
    visitor.if_any("section_mm", winding.section_mm);
    visitor.if_any("direction", winding.direction);
    visitor.if_any("root_lift", winding.root_lift);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Setting> auto& setting) {
    visitor.if_any("how", setting.how);
    visitor.if_any("cooling_minutes", setting.cooling_minutes);
    visitor.if_any("may_be_left_minutes", setting.may_be_left_minutes);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<HairOnTheDay> auto& hair) {
    visitor.if_any("washed", hair.washed);
    visitor.if_any("damp", hair.damp);
    visitor.if_any("length", hair.length);
    visitor.if_any("texture", hair.texture);
    visitor.if_any("density", hair.density);
    visitor.if_any("colour", hair.colour);
    visitor.if_any("layers", hair.layers);
    visitor.if_any("extensions", hair.extensions);
    visitor.if_any("changed", hair.changed);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Sensitivity> auto& sensitivity) {
    visitor.if_any("to", sensitivity.to);
    visitor.if_any("patch_tested", sensitivity.patch_tested);
    visitor.if_any("result", sensitivity.result);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<CautionDetails> auto& cautions) {
    visitor.if_any("sensitivities", cautions.sensitivities);
    visitor.if_any("scalp", cautions.scalp);
    visitor.if_any("tender", cautions.tender);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<PartingLine> auto& parting) {
    visitor.if_any("side", parting.side);
    visitor.if_any("from_centre_cm", parting.from_centre_cm);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<PlanPoint> auto& point) {
    visitor.always("x", point.x);
    visitor.always("y", point.y);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Stroke> auto& stroke) {
    visitor.always("kind", stroke.kind);
    visitor.always("points", stroke.points);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<PlanMark> auto& mark) {
    visitor.always("number", mark.number);
    visitor.always("at", mark.at);
    visitor.if_any("words", mark.words);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<HeadDrawing> auto& plan) {
    visitor.if_any("strokes", plan.strokes);
    visitor.if_any("marks", plan.marks);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Pins> auto& pins) {
    visitor.always("kind", pins.kind);
    visitor.always("colour", pins.colour);
    visitor.always("count", pins.count);
    visitor.always("crossed", pins.crossed);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Backcombing> auto& backcombing) {
    visitor.if_any("where", backcombing.where);
    visitor.if_any("amount", backcombing.amount);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Step> auto& step) {
    visitor.always("words", step.words);
    visitor.always("minutes", step.minutes);
    visitor.always("pins", step.pins);
    visitor.if_any("waiting_minutes", step.waiting_minutes);
    visitor.if_any("products", step.products);
    visitor.if_any("heat_tool", step.heat_tool);
    visitor.if_any("winding", step.winding);
    visitor.if_any("setting", step.setting);
    visitor.if_any("backcombing", step.backcombing);
    visitor.if_any("photos", step.photos);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<Piece> auto& piece) {
    visitor.always("kind", piece.kind);
    visitor.if_any("what", piece.what);
    visitor.if_any("colour", piece.colour);
    visitor.if_any("count", piece.count);
    visitor.if_any("brought_by", piece.brought_by);
    visitor.if_any("where", piece.where);
    visitor.if_any("at", piece.at);
    visitor.if_any("photo", piece.photo);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<FinishDetails> auto& finish) {
    visitor.if_any("spray", finish.spray);
    visitor.if_any("smoothing", finish.smoothing);
    visitor.if_any("shine", finish.shine);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<SecondLook> auto& look) {
    visitor.if_any("from", look.from);
    visitor.if_any("taken_out", look.taken_out);
    visitor.if_any("stays", look.stays);
    visitor.if_any("done_by", look.done_by);
    visitor.if_any("at", look.at);
    visitor.if_any("steps", look.steps);
}

template <class Visitor>
void visit_fields(Visitor& visitor, Like<FeedbackDetails> auto& feedback) {
    visitor.if_any("front", feedback.front);
    visitor.if_any("to_change", feedback.to_change);
    visitor.if_any("yes_on", feedback.yes_on);
    visitor.if_any("yes_how", feedback.yes_how);
    visitor.if_any("seen_in", feedback.seen_in);
}

// In working order.
template <class Visitor>
void visit_fields(Visitor& visitor, Like<Recipe> auto& recipe) {
    visitor.always("hair", recipe.hair);
    visitor.if_any("hair_on_the_day", recipe.hair_on_the_day);
    visitor.always("cautions", recipe.cautions);
    visitor.if_any("caution_details", recipe.caution_details);
    visitor.always("prep", recipe.prep);
    visitor.always("heat_protection", recipe.heat_protection);
    visitor.if_any("drying", recipe.drying);
    visitor.always("heat_tool", recipe.heat_tool);
    visitor.if_any("winding", recipe.winding);
    visitor.if_any("setting", recipe.setting);
    visitor.always("sections", recipe.sections);
    visitor.if_any("panels", recipe.panels);
    visitor.always("parting", recipe.parting);
    visitor.if_any("parting_line", recipe.parting_line);
    visitor.if_any("head_plan", recipe.head_plan);
    visitor.always("build", recipe.build);
    visitor.if_any("pieces", recipe.pieces);
    visitor.always("accessory", recipe.accessory);
    visitor.always("finish", recipe.finish);
    visitor.if_any("finish_details", recipe.finish_details);
    visitor.if_any("second_look", recipe.second_look);
    visitor.always("feedback", recipe.feedback);
    visitor.if_any("feedback_details", recipe.feedback_details);
    visitor.always("hands_on_minutes", recipe.hands_on_minutes);
    visitor.always("waiting_minutes", recipe.waiting_minutes);
}

}  // namespace quarterturn
