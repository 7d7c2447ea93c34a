#include "indexer/portfolio/candidates.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "indexer/intake/heads.h"
#include "indexer/looks/pairs.h"
#include "indexer/rules/coverage.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

std::vector<std::string> families_of(Library& library, LookId look) {
    std::vector<std::string> families;
    for (const LookFact& fact : library.look_facts().of(look)) {
        if (fact.fact == Fact::family) families.push_back(fact.value);
    }
    return families;
}

std::vector<Photo> finished_photos(Library& library) {
    std::vector<Photo> photos = library.photos().all();
    std::erase_if(photos, [](const Photo& photo) {
        return photo.tags.stage != Stage::after || !photo.tags.look || !usable(photo);
    });
    return photos;
}

std::string next_step(PhotoGate& gate, const Photo& photo, const Against& against, Use use) {
    const auto people = gate.to_show(photo).people;
    const auto about = std::ranges::find_if(
        people, [&](const ShownPerson& person) { return against.client == person.client; });
    return next_step(against, about == people.end() ? std::string() : about->name, use);
}

auto order_of(const Candidate& candidate) {
    return std::tuple(!candidate.lacks.empty(), !candidate.signed_off,
                      -candidate.photo.measures.focus);
}

}  // namespace

std::vector<Candidate> candidates(Library& library, Decoder& decoder, Use use, Date on) {
    bring_pairs_up_to_date(library);
    look_for_heads_in(library, decoder, finished_photos(library));
    PhotoGate gate(library);
    std::vector<Candidate> all;
    for (const Photo& photo : finished_photos(library)) {
        const auto look = library.looks().find(*photo.tags.look);
        if (!look) continue;
        Candidate candidate{photo,
                            *look,
                            families_of(library, look->id),
                            library.sign_offs().standing(look->id).has_value(),
                            {},
                            {}};
        const Verdict verdict = gate.way_out(photo, use, on).verdict;
        for (const Against& against : verdict.against) candidate.lacks.push_back(against.words);
        if (!verdict.may()) candidate.next = next_step(gate, photo, verdict.against.front(), use);
        all.push_back(std::move(candidate));
    }
    std::ranges::stable_sort(all, {}, order_of);
    return all;
}

std::vector<Photo> photos_in(Library& library, const PhotoSelection& selection) {
    std::vector<Photo> photos;
    for (const PhotoId id : selection.photos) {
        if (auto photo = library.photos().find(id)) photos.push_back(std::move(*photo));
    }
    return photos;
}

std::vector<FamilyCount> balance(Library& library, const std::vector<Candidate>& all) {
    std::vector<FamilyCount> counts;
    for (const std::string& family : look_families(library.settings())) {
        counts.push_back({family, 0});
    }
    for (const Candidate& candidate : all) {
        if (!candidate.lacks.empty()) continue;
        for (const std::string& family : candidate.families) {
            const auto found = std::ranges::find(counts, family, &FamilyCount::family);
            if (found == counts.end()) {
                counts.push_back({family, 1});
            } else {
                ++found->photos;
            }
        }
    }
    std::ranges::stable_sort(counts, std::greater<>(), &FamilyCount::photos);
    return counts;
}

std::vector<FactCount> balance_of(Library& library, std::span<const PhotoId> photos, Fact fact) {
    std::map<LookId, std::vector<std::string>> values;
    std::map<std::string, int> counts;
    if (fact == Fact::family) {
        for (const std::string& family : look_families(library.settings())) counts[family] = 0;
    }
    for (const auto& [look, facts] : library.look_facts().all()) {
        for (const LookFact& each : facts) {
            if (each.fact != fact) continue;
            values[look].push_back(each.value);
            counts[each.value] += 0;
        }
    }
    for (const PhotoId id : photos) {
        const auto photo = library.photos().find(id);
        if (!photo || !photo->tags.look) continue;
        for (const std::string& value : values[*photo->tags.look]) ++counts[value];
    }
    std::vector<FactCount> sorted;
    for (const auto& [value, count] : counts) sorted.push_back({value, count});
    std::ranges::stable_sort(sorted, std::greater<>(), &FactCount::photos);
    return sorted;
}

}  // namespace quarterturn
