#include "indexer/store/draft_changes.h"

#include "indexer/rules/put_back.h"

namespace quarterturn {
namespace {

// Columns of recipe_draft.
constexpr std::size_t look_column = 0;
constexpr std::size_t kept_at_column = 1;
constexpr std::size_t recipe_column = 2;

Recipe saved_recipe(RecipeTable recipes, LookId look) {
    const auto current = recipes.current(look);
    return current ? current->recipe : Recipe{};
}

}  // namespace

void DraftChanges::add(const RowChange& change) {
    const Row& row = change.comes() ? change.after : change.before;
    if (!row[recipe_column]) return;  // only when it was kept
    RecipeTable recipes(*database_);
    Draft draft;
    draft.look = LookId{whole_number(row[look_column])};
    draft.kept_at = LocalTime{std::chrono::nanoseconds{whole_number(row[kept_at_column])}};
    if (const auto written = recipes.draft(draft.look)) draft.kept_at = written->kept_at;
    draft.now = recipes.begun(draft.look);
    draft.before = change.comes() ? saved_recipe(recipes, draft.look)
                                  : parse_recipe_json(text_of(change.before[recipe_column]));
    if (!change.goes()) draft.after = parse_recipe_json(text_of(change.after[recipe_column]));
    drafts_.push_back(std::move(draft));
}

void DraftChanges::write() {
    RecipeTable recipes(*database_);
    for (const Draft& draft : drafts_) {
        const Recipe after = draft.after.value_or(saved_recipe(recipes, draft.look));
        recipes.keep_draft(draft.look, put_back(draft.now, after, draft.before), draft.kept_at);
    }
}

}  // namespace quarterturn
