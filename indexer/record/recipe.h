#pragma once
// How a look is made, in working order. Every part may be left empty; `rules/recipe_check.h` says
// what must be there before sign-off. Where a part has words and details, either may stand alone.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/recipe/build.h"
#include "indexer/record/recipe/hair.h"
#include "indexer/record/recipe/head_drawing.h"
#include "indexer/record/recipe/pieces.h"
#include "indexer/record/recipe/prep.h"
#include "indexer/record/recipe/second_look.h"

namespace quarterturn {

struct Recipe {
    std::string hair;
    HairOnTheDay hair_on_the_day;
    std::string cautions;  // "none known" when there are none
    CautionDetails caution_details;
    std::vector<Product> prep;
    std::string heat_protection;
    std::string drying;
    std::optional<HeatTool> heat_tool;
    Winding winding;
    Setting setting;
    std::string sections;
    std::vector<std::string> panels;  // and side sections
    std::string parting;
    PartingLine parting_line;
    HeadDrawing head_plan;
    std::vector<Step> build;
    std::vector<Piece> pieces;
    std::string accessory;  // "none" when there is none
    std::string finish;
    FinishDetails finish_details;
    std::optional<SecondLook> second_look;
    std::string feedback;  // the client's words
    FeedbackDetails feedback_details;
    std::optional<int> hands_on_minutes;
    std::optional<int> waiting_minutes;

    bool operator==(const Recipe&) const = default;
};

}  // namespace quarterturn
