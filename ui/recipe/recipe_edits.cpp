#include "ui/recipe/recipe_edits.h"

#include <QCoreApplication>

#include "indexer/looks/write_recipe.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string said_of(const char* text, const std::string& name) {
    return to_utf8(QCoreApplication::translate("recipe_edits", text).arg(from_utf8(name)));
}

std::function<void(Library&)> putting_draft_back(Library& library, LookId look) {
    return [look, before = library.recipes().draft(look)](Library& l) {
        if (before) {
            l.recipes().keep_draft(look, before->recipe, before->kept_at);
        } else {
            l.recipes().drop_draft(look);
        }
    };
}

std::function<void(Library&)> putting_template_back(Library& library, const std::string& name) {
    return [name, before = library.recipe_templates().find(name)](Library& l) {
        if (before) {
            l.recipe_templates().save(before->name, before->recipe);
        } else {
            l.recipe_templates().remove(name);
        }
    };
}

}  // namespace

Edit saving_recipe(const Look& look, const Recipe& recipe, LocalTime now) {
    const auto revision = std::make_shared<RevisionId>();
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "saved the recipe of %1"), look.name),
            [=](Library& l) { *revision = save_recipe(l, look, recipe, now); },
            [=, id = look.id](Library& l) { l.recipes().take_back(id, *revision); }};
}

Edit writing_anew(Library& library, LookId look, std::string said, const Recipe& after,
                  LocalTime now) {
    return {std::move(said), [=](Library& l) { l.recipes().keep_draft(look, after, now); },
            putting_draft_back(library, look)};
}

Edit going_back_to_saved(Library& library, LookId look) {
    return {to_utf8(QCoreApplication::translate("recipe_edits",
                                                "went back to the recipe that was saved")),
            [=](Library& l) { l.recipes().drop_draft(look); }, putting_draft_back(library, look)};
}

Edit taking_out(LookId look, std::string said, const Recipe& with, const Recipe& without,
                LocalTime now) {
    return {std::move(said),
            [=](Library& l) {
                l.recipes().keep_draft(look, put_back(begun_recipe(l, look), without, with), now);
            },
            [=](Library& l) {
                l.recipes().keep_draft(look, put_back(begun_recipe(l, look), with, without), now);
            }};
}

Edit saving_template(Library& library, const std::string& name, const Recipe& recipe) {
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "saved the template %1"), name),
            [=](Library& l) { l.recipe_templates().save(name, recipe); },
            putting_template_back(library, name)};
}

Edit removing_template(Library& library, const std::string& name) {
    return {said_of(QT_TRANSLATE_NOOP("recipe_edits", "removed the template %1"), name),
            [=](Library& l) { l.recipe_templates().remove(name); },
            putting_template_back(library, name)};
}

}  // namespace quarterturn
