#pragma once
// What trips each rule of the recipe check and what does not. All of it is common practice.

#include <functional>
#include <vector>

#include "indexer/rules/recipe_check.h"

namespace quarterturn {

using Change = std::function<void(Recipe&)>;

struct RuleCase {
    RecipeRule rule;
    const char* in_trade_terms;
    bool trips;
    Change change;
};

inline Step step(const char* words) {
    return {words, 5, {}};
}

inline Piece piece(PieceKind kind, const char* what, const char* where = "") {
    Piece result;
    result.kind = kind;
    result.what = what;
    result.where = where;
    return result;
}

inline Recipe evening_look_of_its_own() {
    Recipe recipe;
    recipe.cautions = "none known";
    recipe.prep = {{"light setting lotion", "two walnuts", "damp lengths"}};
    recipe.heat_protection = "spray, section by section";
    recipe.heat_tool = HeatTool{"tongs", 25, 170};
    recipe.winding = {20, Wind::away, ""};
    recipe.setting = {"pinned", 15, 90};
    recipe.sections = "two side sections and a front panel apart from crown and back";
    recipe.parting_line = {PartingSide::left, 4};
    recipe.build = {{"curl crown and back", 20, {{"section clip", "steel", 22, false}}},
                    {"twist into a low bun", 20, {{"hair pin", "dark brown", 14, true}}}};
    recipe.accessory = "none";
    recipe.finish_details.spray = Hold::regular;
    recipe.second_look = SecondLook{"",
                                    "the pins",
                                    "the side sections",
                                    "a bridesmaid",
                                    "18:30",
                                    {"take out every pin", "shake out"}};
    recipe.feedback = "loves it";
    recipe.feedback_details.yes_on = parse_date("2026-05-09");
    recipe.feedback_details.yes_how = "in the chair";
    recipe.feedback_details.seen_in = SeenIn::mirror;
    recipe.hands_on_minutes = 60;
    return recipe;
}

inline const std::vector<RuleCase>& rule_cases() {
    using R = Recipe;
    static const std::vector<RuleCase> all{
        {RecipeRule::cautions, "nothing said", true, [](R& r) { r.cautions.clear(); }},
        {RecipeRule::cautions, "a tender spot noted", false,
         [](R& r) {
             r.cautions.clear();
             r.caution_details.tender = "behind the left ear";
         }},
        {RecipeRule::patch_test, "sensitive, no date", true,
         [](R& r) {
             r.caution_details.sensitivities = {{"setting lotion", {}, ""}};
         }},
        {RecipeRule::patch_test, "one of two has no date", true,
         [](R& r) {
             r.caution_details.sensitivities = {{"lotion", parse_date("2026-05-02"), "fine"},
                                                {"latex", {}, ""}};
         }},
        {RecipeRule::patch_test, "tested and dated", false,
         [](R& r) {
             r.cautions = "lotion";
             r.caution_details.sensitivities = {{"lotion", parse_date("2026-05-02"), "fine"}};
         }},
        {RecipeRule::prep, "no product", true, [](R& r) { r.prep.clear(); }},
        {RecipeRule::prep, "none used", false,
         [](R& r) {
             r.prep = {{"none", "", ""}};
         }},
        {RecipeRule::heat_tool, "tongs in the words, no tool described", true,
         [](R& r) {
             r.heat_tool.reset();
             r.build[0].words = "25 mm tongs, away from the face";
         }},
        {RecipeRule::heat_tool, "no temperature", true,
         [](R& r) { r.heat_tool->temperature_c.reset(); }},
        {RecipeRule::heat_tool, "Fahrenheit will do", false,
         [](R& r) {
             *r.heat_tool = {"tongs", 25, std::nullopt, 340};
         }},
        {RecipeRule::heat_tool, "pin curls need no heat", false,
         [](R& r) {
             r.heat_tool.reset();
             r.build[0].words = "wet set, 30 mm pin curls";
         }},
        {RecipeRule::heat_protection, "tongs on bare hair", true,
         [](R& r) { r.heat_protection.clear(); }},
        {RecipeRule::heat_protection, "protection after the tongs", true,
         [](R& r) {
             r.heat_protection.clear();
             r.build[0].heat_tool = r.heat_tool;
             r.build[1].products = {{"heat protection spray", "", ""}};
         }},
        {RecipeRule::heat_protection, "protection before the tongs", false,
         [](R& r) {
             r.heat_protection.clear();
             r.build.insert(r.build.begin(), step("mist the lengths"));
             r.build[0].products = {{"heat protection spray", "", ""}};
             r.build[1].heat_tool = r.heat_tool;
         }},
        {RecipeRule::heat_protection, "protection among the prep", false,
         [](R& r) {
             r.heat_protection.clear();
             r.prep.push_back({"heat protection cream", "", "lengths"});
         }},
        {RecipeRule::curl_size, "curls on tongs of no size", true,
         [](R& r) { r.heat_tool->barrel_mm.reset(); }},
        {RecipeRule::curl_size, "the step has its own barrel", false,
         [](R& r) {
             r.heat_tool->barrel_mm.reset();
             r.build[0].heat_tool = HeatTool{"tongs", 19, 170};
         }},
        {RecipeRule::curl_size, "curls on rollers", false,
         [](R& r) {
             r.heat_tool.reset();
             r.build[0].setting.how = "rollers, 40 mm";
         }},
        {RecipeRule::barrel, "a bend with tongs of no size", true,
         [](R& r) {
             r.heat_tool->barrel_mm.reset();
             r.build[0].words = "bend the ends under";
         }},
        {RecipeRule::barrel, "a flat iron has no barrel", false,
         [](R& r) {
             *r.heat_tool = {"flat iron", std::nullopt, 170};
             r.build[0].words = "smooth the lengths";
         }},
        {RecipeRule::barrel, "nor has a diffuser", false,
         [](R& r) {
             *r.heat_tool = {"diffuser", std::nullopt, 80};
             r.build[0].words = "scrunch her natural curls";
         }},
        {RecipeRule::section_size, "curls in sections of no size", true,
         [](R& r) { r.winding.section_mm.reset(); }},
        {RecipeRule::section_size, "sections of two fingers", false,
         [](R& r) {
             r.winding.section_mm.reset();
             r.build[0].words = "curl crown and back in sections of two fingers";
         }},
        {RecipeRule::section_size, "nothing is curled", false,
         [](R& r) {
             r.winding.section_mm.reset();
             r.build[0].words = "brush smooth";
         }},
        {RecipeRule::temperature, "too hot", true, [](R& r) { r.heat_tool->temperature_c = 220; }},
        {RecipeRule::temperature, "too hot in Fahrenheit: 400 is 204 °C", true,
         [](R& r) {
             *r.heat_tool = {"tongs", 25, std::nullopt, 400};
         }},
        {RecipeRule::temperature, "390 °F is 199 °C", false,
         [](R& r) {
             *r.heat_tool = {"tongs", 25, std::nullopt, 390};
         }},
        {RecipeRule::setting, "opened warm", true, [](R& r) { r.setting.cooling_minutes = 5; }},
        {RecipeRule::setting, "left all morning", true,
         [](R& r) { r.build[0].setting.may_be_left_minutes = 200; }},
        {RecipeRule::setting, "left two hours", false,
         [](R& r) {
             r.setting = {"on rollers", 10, 120};
         }},
        {RecipeRule::sections, "no sections", true, [](R& r) { r.sections.clear(); }},
        {RecipeRule::sections, "drawn on the head plan", false,
         [](R& r) {
             r.sections.clear();
             r.head_plan.strokes = {{StrokeKind::section, {{-1, 0}, {1, 0}}}};
         }},
        {RecipeRule::parting, "no parting", true, [](R& r) { r.parting_line = {}; }},
        {RecipeRule::parting, "in words", false,
         [](R& r) {
             r.parting_line = {};
             r.parting = "zigzag";
         }},
        {RecipeRule::build, "no steps", true,
         [](R& r) {
             r.build = {{" ", 5, {}}};
         }},
        {RecipeRule::build, "fields without words", false,
         [](R& r) {
             r.build = {{"", 5, {{"grip", "brown", 4, true}}}};
         }},
        {RecipeRule::build, "one step", false, [](R& r) { r.build = {step("brush out")}; }},
        {RecipeRule::crimping, "the front panel crimped", true,
         [](R& r) { r.build.push_back(step("crimp the roots of the front panel")); }},
        {RecipeRule::crimping, "with a crimper", true,
         [](R& r) {
             r.build.push_back(step("lift at the crown"));
             r.build.back().heat_tool = HeatTool{"crimper", std::nullopt, 150};
         }},
        {RecipeRule::crimping, "hidden", false,
         [](R& r) { r.build.push_back(step("crimp the roots underneath the top layer")); }},
        {RecipeRule::pins, "some grips", true,
         [](R& r) {
             r.build[1].pins.push_back({"grip", "brown", std::nullopt, true});
         }},
        {RecipeRule::pins, "no pins at all", false, [](R& r) { r.build[1].pins.clear(); }},
        {RecipeRule::accessory, "no word of one", true, [](R& r) { r.accessory.clear(); }},
        {RecipeRule::accessory, "padding is no accessory", true,
         [](R& r) {
             r.accessory.clear();
             r.pieces = {piece(PieceKind::padding, "crescent")};
         }},
        {RecipeRule::accessory, "a comb", false,
         [](R& r) {
             r.accessory.clear();
             r.pieces = {piece(PieceKind::accessory, "leaf comb")};
         }},
        {RecipeRule::comes_down_again, "backcombed in words", true,
         [](R& r) { r.build[0].words += ", backcomb the crown lightly"; }},
        {RecipeRule::comes_down_again, "backcombed in its field", true,
         [](R& r) {
             r.build[0].backcombing = Backcombing{"crown", "light"};
         }},
        {RecipeRule::comes_down_again, "texturising powder", true,
         [](R& r) {
             r.prep.push_back({"texturising powder", "a pinch", "crown"});
         }},
        {RecipeRule::comes_down_again, "texture spray within a step", true,
         [](R& r) {
             r.build[1].products = {{"texture spray", "", "lengths"}};
         }},
        {RecipeRule::comes_down_again, "strong hold", true,
         [](R& r) { r.finish_details.spray = Hold::strong; }},
        {RecipeRule::comes_down_again, "strong hold in words", true,
         [](R& r) {
             r.finish_details = {};
             r.finish = "strong hold spray";
         }},
        {RecipeRule::comes_down_again, "an elastic under the padding", true,
         [](R& r) {
             r.pieces = {piece(PieceKind::padding, "crescent"),
                         piece(PieceKind::band, "elastic", "under the padding")};
         }},
        {RecipeRule::comes_down_again, "padding on grips alone", false,
         [](R& r) { r.pieces = {piece(PieceKind::padding, "crescent, light brown")}; }},
        {RecipeRule::comes_down_again, "said not to be backcombed", false,
         [](R& r) { r.build[0].words += ": no backcombing, so that it comes down clean"; }},
        {RecipeRule::comes_down_again, "backcombed, and stays up", false,
         [](R& r) {
             r.second_look.reset();
             r.build[0].words += ", backcomb the crown";
             r.finish_details.spray = Hold::strong;
         }},
        {RecipeRule::clients_words, "nothing said", true,
         [](R& r) {
             r.feedback.clear();
             r.feedback_details = {};
         }},
        {RecipeRule::clients_words, "her yes is enough", false, [](R& r) { r.feedback.clear(); }},
        {RecipeRule::clients_yes, "no date", true, [](R& r) { r.feedback_details.yes_on.reset(); }},
        {RecipeRule::clients_yes, "not how", true,
         [](R& r) { r.feedback_details.yes_how.clear(); }},
        {RecipeRule::clients_yes, "by message", false,
         [](R& r) { r.feedback_details.yes_how = "by message"; }},
        {RecipeRule::mirror, "photos only", true,
         [](R& r) { r.feedback_details.seen_in = SeenIn::photos; }},
        {RecipeRule::mirror, "mirror and photos", false,
         [](R& r) { r.feedback_details.seen_in = SeenIn::mirror_and_photos; }},
        {RecipeRule::minutes, "no minutes", true,
         [](R& r) {
             r.hands_on_minutes.reset();
             r.build[0].minutes.reset();
         }},
        {RecipeRule::minutes, "minutes at each step", false,
         [](R& r) { r.hands_on_minutes.reset(); }},
        {RecipeRule::sum_of_minutes, "longer than the whole", true,
         [](R& r) { r.hands_on_minutes = 30; }},
        {RecipeRule::sum_of_minutes, "waiting does not count", false,
         [](R& r) { r.build[0].waiting_minutes = 90; }},
    };
    return all;
}

}  // namespace quarterturn
