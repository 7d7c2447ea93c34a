#include "indexer/looks/pairs.h"

#include <algorithm>
#include <set>

#include "indexer/looks/pair_gate.h"
#include "indexer/looks/shared_facts.h"
#include "indexer/rules/hair_facts.h"
#include "indexer/rules/pair_facts.h"
#include "indexer/rules/pairing.h"
#include "indexer/store/many_looks.h"
#include "indexer/store/photos_with_words.h"

namespace quarterturn {
namespace {

constexpr int looks_at_once = 256;

template <class Row, class Record>
std::map<Row, Record> by_id(const std::vector<Record>& records) {
    std::map<Row, Record> result;
    for (const Record& record : records) result.emplace(record.id, record);
    return result;
}

// What all looks have in common, read once.
struct Calendar {
    explicit Calendar(Library& library)
        : looks(by_id<LookId>(library.looks().all())),
          weddings(by_id<WeddingId>(library.weddings().all())),
          sittings(by_id<SittingId>(library.sittings().all())),
          families(look_families(library.settings())) {}

    std::map<LookId, Look> looks;
    std::map<WeddingId, Wedding> weddings;
    std::map<SittingId, Sitting> sittings;
    std::vector<std::string> families;
};

// Of some looks, as their pairs are made from it.
using LooksToPair = std::map<LookId, LookToPair>;

void add_sittings(LookToPair& look, const Calendar& calendar) {
    std::set<SittingId> ids(look.look.sittings.begin(), look.look.sittings.end());
    for (const Photo& photo : look.photos) {
        if (photo.tags.sitting) ids.insert(*photo.tags.sitting);
    }
    for (const SittingId id : ids) {
        const auto sitting = calendar.sittings.find(id);
        if (sitting != calendar.sittings.end()) look.sittings.push_back(sitting->second);
    }
}

// To each look that it may count for.
void hand_out(LooksToPair& looks, const std::vector<Photo>& photos) {
    std::map<SittingId, std::vector<LookId>> of_sitting;
    for (const auto& [id, look] : looks) {
        for (const SittingId sitting : look.look.sittings) of_sitting[sitting].push_back(id);
    }
    for (const Photo& photo : photos) {
        std::set<LookId> own;
        if (photo.tags.look && looks.contains(*photo.tags.look)) own.insert(*photo.tags.look);
        if (photo.tags.sitting) {
            const auto& more = of_sitting[*photo.tags.sitting];
            own.insert(more.begin(), more.end());
        }
        for (const LookId id : own) looks.at(id).photos.push_back(photo);
    }
}

LooksToPair gather(Library& library, const Calendar& calendar, const std::vector<LookId>& ids) {
    LooksToPair looks;
    for (const LookId id : ids) {
        LookToPair& own = looks[id];
        own.look = calendar.looks.at(id);
        if (own.look.wedding) own.wedding_date = calendar.weddings.at(*own.look.wedding).date;
    }
    hand_out(looks, ManyLooks(library.database(), ids).photos());
    for (Pair& pair : library.pairs().places_of(ids)) {
        looks.at(pair.made.place.look).places.push_back(std::move(pair));
    }
    for (auto& [id, look] : looks) add_sittings(look, calendar);
    return looks;
}

void make_anew(Library& library, const Calendar& calendar, const std::vector<LookId>& ids) {
    const auto recipes = ManyLooks(library.database(), ids).recipes();
    std::map<LookId, LookFacts> facts;
    std::map<LookId, std::vector<MadePair>> pairs;
    for (const auto& [id, look] : gather(library, calendar, ids)) {
        const auto recipe = recipes.find(id);
        facts[id] = read_facts(look.look.name, recipe == recipes.end() ? Recipe{} : recipe->second,
                               calendar.families);
        pairs[id] = make_pairs(look);
    }
    library.look_facts().keep_read(facts);
    library.pairs().keep_made(pairs);
}

// Answers of the search, for either photo of a pair.
std::vector<bool> with_words(Library& library, const std::vector<Pair>& pairs,
                             const std::string& words) {
    const auto found = photos_with_words(library.database(), words);
    if (!found) return std::vector<bool>(pairs.size(), true);
    std::vector<bool> result;
    result.reserve(pairs.size());
    for (const Pair& pair : pairs) {
        result.push_back(std::ranges::binary_search(*found, pair.made.first) ||
                         std::ranges::binary_search(*found, pair.made.second));
    }
    return result;
}

bool blank(const std::string& words) {
    return words.find_first_not_of(" \t\n") == std::string::npos;
}

Pair pair_there(Library& library, PairId id) {
    bring_pairs_up_to_date(library);
    const auto pair = library.pairs().find(id);
    if (!pair) {
        throw StoreError("There is no pair " + std::to_string(id.value) +
                         " any more: list the pairs again.");
    }
    return *pair;
}

// What she said holds only together with the pair that comes of it.
Pair choose(Library& library, const Pair& pair, const PairChoice& choice) {
    Transaction transaction(library.database());
    library.pairs().choose(pair.id, choice);
    const Pair now = pair_there(library, pair.id);
    transaction.commit();
    return now;
}

}  // namespace

void bring_pairs_up_to_date(Library& library) {
    if (library.only_to_look()) return;
    std::vector<LookId> changed = library.pairs().to_make(looks_at_once);
    if (changed.empty()) return;
    Transaction transaction(library.database());
    const Calendar calendar(library);
    for (; !changed.empty(); changed = library.pairs().to_make(looks_at_once)) {
        make_anew(library, calendar, changed);
    }
    transaction.commit();
}

PairWall::PairWall(Library& library, Date on) {
    bring_pairs_up_to_date(library);
    pairs_ = library.pairs().all();
    const std::vector<Look> all_looks = library.looks().all();
    const auto looks = by_id<LookId>(all_looks);
    const auto facts = facts_of_looks(library, all_looks);
    const auto uses = allowed_uses(library, pairs_, on);
    const LookFacts none;
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        const MadePair& made = pairs_[i].made;
        const auto own = facts.find(made.place.look);
        auto values = facts_of_pair(made, looks.at(made.place.look).worn,
                                    own == facts.end() ? none : own->second);
        for (const Use use : uses[i]) values.emplace_back(Fact::use, word(use));
        index_.add(values);
    }
}

PairWall::Found PairWall::find(Library& library, const PairFilter& filter) const {
    std::vector<bool> among = blank(filter.words) ? std::vector<bool>(pairs_.size(), true)
                                                  : with_words(library, pairs_, filter.words);
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        if (pairs_[i].choice.refused != filter.refused) among[i] = false;
    }
    FoundPairs found = index_.find(filter.values, among);
    Found result;
    result.counts = std::move(found.counts);
    for (const std::size_t place : found.places) result.pairs.push_back(pairs_[place]);
    return result;
}

void choose_frames(Library& library, PairId id, std::optional<PhotoId> first,
                   std::optional<PhotoId> second) {
    Transaction all_or_nothing(library.database());
    const Pair pair = pair_there(library, id);
    PairChoice said = pair.choice;
    said.pinned = false;
    said.first_gone = said.first_gone && first == said.first;  // a new word on a side settles it
    said.second_gone = said.second_gone && second == said.second;
    said.first = first;
    said.second = second;
    const Pair now = choose(library, pair, said);
    const auto stands = [](std::optional<PhotoId> chosen, PhotoId shown) {
        return !chosen || *chosen == shown;
    };
    if (!stands(first, now.made.first) || !stands(second, now.made.second)) {
        throw StoreError(
            "This photo does not stand on that side of the pair: its look, stage and angle must be "
            "those of the photo it replaces. Tag it first.");
    }
    all_or_nothing.commit();
}

void pin(Library& library, PairId id, bool pinned) {
    const Pair pair = pair_there(library, id);
    PairChoice choice{.pinned = pinned, .refused = pair.choice.refused};
    if (pinned) {
        choice.first = pair.made.first;
        choice.second = pair.made.second;
    }
    choose(library, pair, choice);
}

void refuse(Library& library, PairId id, bool refused) {
    const Pair pair = pair_there(library, id);
    PairChoice choice = pair.choice;
    choice.refused = refused;
    choose(library, pair, choice);
}

}  // namespace quarterturn
