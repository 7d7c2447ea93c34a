#include "indexer/store/recipe_table.h"

#include "indexer/store/search_words.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string select_revisions =
    "SELECT id, number, saved_at, recipe, sitting FROM recipe_revision WHERE look = ? ORDER BY "
    "number ";

RecipeRevision revision_in(const Statement& row) {
    RecipeRevision revision;
    std::string json;
    row.read(revision.id, revision.number, revision.saved_at, json, revision.sitting);
    revision.recipe = parse_recipe_json(json);
    return revision;
}

}  // namespace

RevisionId RecipeTable::save(LookId look, const Recipe& recipe, LocalTime now,
                             std::optional<SittingId> sitting) {
    const std::string json = recipe_json(recipe);
    Transaction transaction(*database_);
    const auto newest = current(look);
    drop_draft(look);
    if (newest && newest->recipe == recipe) {
        transaction.commit();
        return newest->id;
    }
    const auto id =
        insert<RevisionId>(*database_,
                           "INSERT INTO recipe_revision (look, number, saved_at, recipe, sitting) "
                           "VALUES (?, ?, ?, ?, ?)",
                           look, newest ? newest->number + 1 : 1, now, json, sitting);
    index_words(*database_, WordsOf::recipe, look);
    transaction.commit();
    return id;
}

std::optional<RecipeRevision> RecipeTable::current(LookId look) {
    return Statement(*database_, select_revisions + "DESC LIMIT 1").with(look).first(revision_in);
}

std::vector<RecipeRevision> RecipeTable::revisions(LookId look) {
    return Statement(*database_, select_revisions).with(look).rows(revision_in);
}

void RecipeTable::keep_draft(LookId look, const Recipe& recipe, LocalTime now) {
    const std::string json = recipe_json(recipe);
    Transaction transaction(*database_);
    drop_draft(look);
    const auto newest = current(look);
    if (!newest || newest->recipe != recipe) {
        run(*database_, "INSERT INTO recipe_draft (look, kept_at, recipe) VALUES (?, ?, ?)", look,
            now, json);
    }
    transaction.commit();
}

void RecipeTable::drop_draft(LookId look) {
    run(*database_, "DELETE FROM recipe_draft WHERE look = ?", look);
}

std::optional<RecipeDraft> RecipeTable::draft(LookId look) {
    return Statement(*database_, "SELECT kept_at, recipe FROM recipe_draft WHERE look = ?")
        .with(look)
        .first([](const Statement& row) {
            RecipeDraft draft;
            std::string json;
            row.read(draft.kept_at, json);
            draft.recipe = parse_recipe_json(json);
            return draft;
        });
}

Recipe RecipeTable::begun(LookId look) {
    if (const auto written = draft(look)) return written->recipe;
    const auto saved = current(look);
    return saved ? saved->recipe : Recipe{};
}

}  // namespace quarterturn
