#include "indexer/looks/look_standing.h"

#include "indexer/looks/recipe_findings.h"
#include "indexer/rules/coverage.h"
#include "indexer/rules/ring.h"
#include "indexer/store/many_looks.h"

namespace quarterturn {
namespace {

template <class Key, class Value>
Value found_or(const std::map<Key, Value>& map, Key key, const Value& otherwise) {
    const auto found = map.find(key);
    return found == map.end() ? otherwise : found->second;
}

// The photos of each look and of its sittings; a photo may be in several lists.
class PhotosOfLooks {
  public:
    PhotosOfLooks(std::vector<Photo> photos, const std::vector<Look>& looks) {
        std::map<SittingId, std::vector<LookId>> by_sitting;
        for (const Look& look : looks) {
            for (const SittingId sitting : look.sittings) by_sitting[sitting].push_back(look.id);
        }
        for (const Photo& photo : photos) {
            if (photo.tags.look) photos_[*photo.tags.look].push_back(photo);
            if (photo.tags.look || !photo.tags.sitting) continue;
            for (const LookId look : by_sitting[*photo.tags.sitting])
                photos_[look].push_back(photo);
        }
    }

    const std::vector<Photo>& of(LookId look) { return photos_[look]; }

  private:
    std::map<LookId, std::vector<Photo>> photos_;
};

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text + ".";
}

void add_photo_lacks(const CoverageReport& coverage, LookStanding& standing) {
    if (standing.photos == 0 && standing.waiting == 0) {
        standing.lacks.push_back({"No photos yet.", NextStep::bring_photos_in, std::nullopt});
        return;
    }
    for (const CoverageLine& line : coverage.lines) {
        if (!open_gap(line)) continue;
        standing.lacks.push_back(
            {sentence(gap_text(line)), NextStep::go_round_the_head, line.wanted.shot});
    }
}

void add_recipe_lacks(const Look& look, const std::optional<Recipe>& recipe, RecipeJudge& judge,
                      LookStanding& standing) {
    if (!recipe) {
        standing.lacks.push_back({"No recipe yet.", NextStep::write_recipe, std::nullopt});
        return;
    }
    for (const RecipeFinding& finding : judge.findings(look, recipe)) {
        if (finding.weight != Weight::bars_sign_off) continue;
        standing.lacks.push_back({finding.sentence, NextStep::write_recipe, std::nullopt});
    }
}

NextStep next_step(const LookStanding& standing) {
    if (standing.signed_at) return NextStep::nothing;
    return standing.lacks.empty() ? NextStep::sign_off : standing.lacks.front().mended_by;
}

LookStanding stand(const Look& look, const std::vector<Photo>& photos, const ShotList& list,
                   const std::vector<Waiver>& waivers, const std::optional<Recipe>& recipe,
                   const std::optional<LocalTime>& signed_at, RecipeJudge& judge) {
    const CoverageReport coverage = judge_coverage(look, list, photos, waivers);
    LookStanding standing;
    standing.ring = ring_of(coverage);
    standing.signed_at = signed_at;
    for (const Photo& photo : photos) {
        if (counts_for(photo, look)) ++standing.photos;
        if (waits_for_its_place(photo)) ++standing.waiting;
    }
    if (!signed_at) {
        add_photo_lacks(coverage, standing);
        add_recipe_lacks(look, recipe, judge, standing);
    }
    standing.next = next_step(standing);
    return standing;
}

template <class Value>
std::optional<Value> find(const std::map<LookId, Value>& map, LookId look) {
    const auto found = map.find(look);
    return found == map.end() ? std::nullopt : std::optional{found->second};
}

}  // namespace

std::map<LookId, LookStanding> look_standings(Library& library, const std::vector<Look>& looks) {
    std::vector<LookId> ids;
    for (const Look& look : looks) ids.push_back(look.id);
    ManyLooks many(library.database(), ids);
    const ShotList own_default = library.looks().own_default_shot_list();
    const auto lists = many.shot_lists();
    const auto waivers = many.waivers();
    auto recipes = many.drafts();
    recipes.merge(many.recipes());
    const auto signed_at = many.signed_at();
    PhotosOfLooks photos(many.photos(), looks);
    RecipeJudge judge(library);

    std::map<LookId, LookStanding> standings;
    for (const Look& look : looks) {
        standings[look.id] = stand(look, photos.of(look.id), found_or(lists, look.id, own_default),
                                   found_or(waivers, look.id, {}), find(recipes, look.id),
                                   find(signed_at, look.id), judge);
    }
    return standings;
}

}  // namespace quarterturn
