#include "ui/recipe/recipe_edits.h"

#include <QCoreApplication>

#include "indexer/looks/write_recipe.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string said_of(const char* text, const std::string& name) {
    return to_utf8(QCoreApplication::translate("recipe_edits", text).arg(from_utf8(name)));
}

}  // namespace

Edit saving_recipe(const Look& look, const Recipe& recipe, LocalTime now) {
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "saved the recipe of %1"), look.name),
            [=](Library& l) { save_recipe(l, look, recipe, now); }};
}

Edit writing_anew(LookId look, std::string said, const Recipe& after, LocalTime now) {
    return {std::move(said), [=](Library& l) { l.recipes().keep_draft(look, after, now); }};
}

Edit going_back_to_saved(LookId look) {
    return {to_utf8(QCoreApplication::translate("recipe_edits",
                                                "went back to the recipe that was saved")),
            [=](Library& l) { l.recipes().drop_draft(look); }};
}

Edit saving_template(const std::string& name, const Recipe& recipe) {
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "saved the template %1"), name),
            [=](Library& l) { l.recipe_templates().save(name, recipe); }};
}

Edit removing_template(const std::string& name) {
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "removed the template %1"), name),
            [=](Library& l) { l.recipe_templates().remove(name); }};
}

}  // namespace quarterturn
