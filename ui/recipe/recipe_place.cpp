#include "ui/recipe/recipe_place.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "indexer/record/recipe_text.h"
#include "indexer/rules/recipe/recipe_rules.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString place_words(const char* text) {
    return QCoreApplication::translate("recipe_places", text);
}

RecipePlace place_of(RecipeRule rule) {
    switch (rule) {
        case RecipeRule::cautions:
        case RecipeRule::patch_test:
            return RecipePlace::cautions;
        case RecipeRule::prep:
        case RecipeRule::heat_tool:
        case RecipeRule::heat_protection:
        case RecipeRule::curl_size:
        case RecipeRule::barrel:
        case RecipeRule::section_size:
        case RecipeRule::temperature:
        case RecipeRule::setting:
            return RecipePlace::prep;
        case RecipeRule::sections:
        case RecipeRule::parting:
            return RecipePlace::parting;
        case RecipeRule::build:
        case RecipeRule::crimping:
        case RecipeRule::pins:
            return RecipePlace::build;
        case RecipeRule::accessory:
            return RecipePlace::pieces;
        case RecipeRule::comes_down_again:
            return RecipePlace::second_look;
        case RecipeRule::clients_words:
        case RecipeRule::clients_yes:
        case RecipeRule::mirror:
            return RecipePlace::feedback;
        case RecipeRule::minutes:
        case RecipeRule::sum_of_minutes:
            return RecipePlace::minutes;
    }
    return RecipePlace::build;
}

// By the headings of recipe_parts().
RecipePlace place_of_heading(const std::string& heading) {
    static const std::map<std::string, RecipePlace> places{
        {"Cautions", RecipePlace::cautions},
        {"Hair on the day", RecipePlace::hair},
        {"Prep", RecipePlace::prep},
        {"Heat protection", RecipePlace::prep},
        {"Drying", RecipePlace::prep},
        {"Heat tool", RecipePlace::prep},
        {"Winding", RecipePlace::prep},
        {"Setting", RecipePlace::prep},
        {"Sections", RecipePlace::parting},
        {"Parting", RecipePlace::parting},
        {"Head plan", RecipePlace::parting},
        {"Build", RecipePlace::build},
        {"Padding and pieces", RecipePlace::pieces},
        {"Accessory", RecipePlace::pieces},
        {"Finish", RecipePlace::finish},
        {"Second look", RecipePlace::second_look},
        {"Feedback", RecipePlace::feedback},
        {"Time", RecipePlace::minutes}};
    return places.at(heading);
}

// The first words of a place are what it is called; others say what they are.
bool needs_its_heading(const std::string& heading) {
    return heading == "Heat protection" || heading == "Drying" || heading == "Heat tool" ||
           heading == "Winding" || heading == "Setting" || heading == "Parting" ||
           heading == "Accessory";
}

}  // namespace

QString shown(RecipePlace place) {
    switch (place) {
        case RecipePlace::cautions:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Cautions"));
        case RecipePlace::hair:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Hair on the day"));
        case RecipePlace::prep:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Prep and heat"));
        case RecipePlace::parting:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Sections and parting"));
        case RecipePlace::build:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Build"));
        case RecipePlace::pieces:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Padding and accessory"));
        case RecipePlace::finish:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Finish"));
        case RecipePlace::second_look:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Second look"));
        case RecipePlace::feedback:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Feedback"));
        case RecipePlace::minutes:
            return place_words(QT_TRANSLATE_NOOP("recipe_places", "Minutes"));
    }
    return {};
}

std::optional<RecipePlace> place_of_rule(std::string_view rule) {
    const auto found = parse_recipe_rule(rule);
    return found ? std::optional(place_of(*found)) : std::nullopt;
}

QStringList lines_at(RecipePlace place, const Recipe& recipe) {
    QStringList lines;
    for (const RecipePart& part : recipe_parts(recipe)) {
        if (place_of_heading(part.heading) != place) continue;
        for (const std::string& line : part.lines) {
            const QString words = from_utf8(line);
            lines << (needs_its_heading(part.heading)
                          ? QStringLiteral("%1: %2").arg(from_utf8(part.heading), words)
                          : words);
        }
    }
    return lines;
}

}  // namespace quarterturn
