#include "indexer/looks/look_state.h"

#include <algorithm>
#include <map>
#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/looks/recipe_findings.h"
#include "indexer/rules/sign_off.h"

namespace quarterturn {
namespace {

Look existing_look(Library& library, LookId id) {
    auto look = library.looks().find(id);
    if (!look) {
        throw StoreError("There is no look number " + std::to_string(id.value) +
                         ": look it up in the list of looks.");
    }
    return *look;
}

std::vector<Photo> photos_that_count(Library& library, const Look& look) {
    auto photos = library.photos().around_look(look);
    std::erase_if(photos, [&](const Photo& photo) { return !counts_for(photo, look); });
    return photos;
}

std::optional<Recipe> recipe_to_judge(const LookState& state) {
    if (state.draft) return state.draft->recipe;
    return state.recipe ? std::optional{state.recipe->recipe} : std::nullopt;
}

// As it was made on the day: what was not sealed then changes nothing of what was agreed.
Seal without_the_day(Library& library, const LookState& state, Seal seal) {
    std::map<SittingId, bool> of_the_day;
    std::set<PhotoId> made_then;
    for (const Photo& photo : state.photos) {
        if (!photo.tags.sitting) continue;
        const auto [known, is_new] = of_the_day.try_emplace(*photo.tags.sitting, false);
        if (is_new) {
            const auto sitting = library.sittings().find(known->first);
            known->second = sitting && sitting->kind == SittingKind::wedding_day;
        }
        if (known->second) made_then.insert(photo.id);
    }
    for (const SealedPhoto& sealed : state.sign_off->seal.photos) made_then.erase(sealed.photo);
    std::erase_if(seal.photos,
                  [&](const SealedPhoto& photo) { return made_then.contains(photo.photo); });
    return seal;
}

}  // namespace

LookState look_state(Library& library, LookId id) {
    LookState state;
    state.look = existing_look(library, id);
    state.client = library.clients().find(state.look.client).value_or(Client{});
    if (state.look.wedding) state.wedding = library.weddings().find(*state.look.wedding);
    state.photos = photos_that_count(library, state.look);
    state.waivers = library.looks().waivers(id);
    state.coverage =
        judge_coverage(state.look, library.looks().shot_list(id), state.photos, state.waivers);
    state.recipe = library.recipes().current(id);
    state.draft = library.recipes().draft(id);
    state.recipe_findings = RecipeJudge(library).findings(state.look, recipe_to_judge(state));
    state.sign_off = library.sign_offs().standing(id);
    if (state.sign_off) {
        state.changes_since =
            changes_since(state.sign_off->seal, without_the_day(library, state, seal_of(state)));
    }
    return state;
}

Seal seal_of(const LookState& state) {
    Seal seal;
    for (const Photo& photo : state.photos) {
        seal.photos.push_back(
            {photo.id, photo.file.name, photo.file.sha256, sealed_tags(photo.tags)});
    }
    if (state.recipe) seal.recipe_sha256 = sha256(recipe_json(state.recipe->recipe));
    seal.waivers = state.waivers;
    return seal;
}

}  // namespace quarterturn
