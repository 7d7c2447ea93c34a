#include "indexer/looks/pairs.h"

#include <algorithm>
#include <set>

#include "indexer/rules/hair_facts.h"
#include "indexer/rules/pairing.h"
#include "indexer/store/many_looks.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

constexpr int looks_at_once = 256;

template <class Row, class Record>
std::map<Row, Record> by_id(const std::vector<Record>& records) {
    std::map<Row, Record> result;
    for (const Record& record : records) result.emplace(record.id, record);
    return result;
}

// Of some looks, as their pairs are made from it.
using LooksToPair = std::map<LookId, LookToPair>;

std::set<SittingId> sittings_of(const LookToPair& look) {
    std::set<SittingId> ids(look.look.sittings.begin(), look.look.sittings.end());
    for (const Photo& photo : look.photos) {
        if (photo.tags.sitting) ids.insert(*photo.tags.sitting);
    }
    return ids;
}

void add_sittings(Library& library, LooksToPair& looks) {
    std::set<SittingId> ids;
    for (const auto& [id, look] : looks) ids.merge(sittings_of(look));
    const std::vector<SittingId> all(ids.begin(), ids.end());
    const auto sittings = by_id<SittingId>(SomeRecords(library.database()).sittings(all));
    for (auto& [id, look] : looks) {
        for (const SittingId sitting : sittings_of(look)) {
            const auto found = sittings.find(sitting);
            if (found != sittings.end()) look.sittings.push_back(found->second);
        }
    }
}

void add_wedding_dates(Library& library, LooksToPair& looks) {
    std::set<WeddingId> ids;
    for (const auto& [id, look] : looks) {
        if (look.look.wedding) ids.insert(*look.look.wedding);
    }
    const std::vector<WeddingId> all(ids.begin(), ids.end());
    const auto weddings = by_id<WeddingId>(SomeRecords(library.database()).weddings(all));
    for (auto& [id, look] : looks) {
        if (look.look.wedding) look.wedding_date = weddings.at(*look.look.wedding).date;
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

LooksToPair gather(Library& library, const std::vector<LookId>& ids) {
    LooksToPair looks;
    for (Look& look : SomeRecords(library.database()).looks(ids)) {
        const LookId id = look.id;
        looks[id].look = std::move(look);
    }
    hand_out(looks, ManyLooks(library.database(), ids).photos());
    for (Pair& pair : library.pairs().places_of(ids)) {
        looks.at(pair.made.place.look).places.push_back(std::move(pair));
    }
    add_wedding_dates(library, looks);
    add_sittings(library, looks);
    return looks;
}

void make_anew(Library& library, const std::vector<std::string>& families,
               const std::vector<LookId>& ids) {
    const auto recipes = ManyLooks(library.database(), ids).recipes();
    std::map<LookId, LookFacts> facts;
    std::map<LookId, std::vector<MadePair>> pairs;
    for (const auto& [id, look] : gather(library, ids)) {
        const auto recipe = recipes.find(id);
        facts[id] = read_facts(look.look.name, recipe == recipes.end() ? Recipe{} : recipe->second,
                               families);
        pairs[id] = make_pairs(look);
    }
    library.look_facts().keep_read(facts);
    library.pairs().keep_made(pairs);
}

Pair pair_there(Library& library, PairId id) {
    bring_pairs_up_to_date(library);
    const auto pair = library.pairs().find(id);
    if (!pair) {
        if (const std::string why = why_pairs_are_old(library); !why.empty()) throw StoreError(why);
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
    const std::vector<std::string> families = look_families(library.settings());
    for (; !changed.empty(); changed = library.pairs().to_make(looks_at_once)) {
        make_anew(library, families, changed);
    }
    transaction.commit();
}

std::string why_pairs_are_old(Library& library) {
    if (!library.only_to_look() || library.pairs().to_make(1).empty()) return {};
    return "Some pairs are not among these, or stand as they were before: they are made when they "
           "are first listed, and here nothing can be written. Open the library where it can be "
           "changed, and list them there.";
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
