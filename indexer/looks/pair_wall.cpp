#include <algorithm>
#include <set>

#include "indexer/looks/pair_gate.h"
#include "indexer/looks/pairs.h"
#include "indexer/looks/shared_facts.h"
#include "indexer/rules/pair_facts.h"
#include "indexer/store/pair_changes.h"
#include "indexer/store/photos_with_words.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

constexpr int most_looks_read_again = 256;  // more are read sooner together with all others

// What each of the pairs is found by.
std::vector<std::vector<std::pair<Fact, std::string>>> values_of(
    const std::vector<Pair>& pairs, const std::vector<Look>& all_looks,
    const std::map<LookId, LookFacts>& facts, const std::vector<std::vector<Use>>& uses) {
    std::map<LookId, Worn> worn;
    for (const Look& look : all_looks) worn.emplace(look.id, look.worn);
    const LookFacts none;
    std::vector<std::vector<std::pair<Fact, std::string>>> result;
    result.reserve(pairs.size());
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const MadePair& made = pairs[i].made;
        const auto own = facts.find(made.place.look);
        result.push_back(
            facts_of_pair(made, worn.at(made.place.look), own == facts.end() ? none : own->second));
        for (const Use use : uses[i]) result.back().emplace_back(Fact::use, word(use));
    }
    return result;
}

// As PairTable::all() has them.
bool stands_before(const Pair& one, const Pair& other) {
    return std::pair(one.made.worn_on, one.id) > std::pair(other.made.worn_on, other.id);
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

}  // namespace

PairWall::PairWall(Library& library, Date on) : on_(on) {
    bring_pairs_up_to_date(library);
    read_at_ = PairChanges(library.database()).last();
    pairs_ = library.pairs().all();
    note_refused();
    const std::vector<Look> looks = library.looks().all();
    const auto values =
        values_of(pairs_, looks, facts_of_looks(library, looks), allowed_uses(library, pairs_, on));
    for (const Values& each : values) {
        places_.push_back(index_.size());
        index_.add(each);
    }
}

void PairWall::bring_up_to_date(Library& library) {
    bring_pairs_up_to_date(library);
    const std::int64_t now = PairChanges(library.database()).last();
    if (now == read_at_) return;
    const auto changed = PairChanges(library.database()).since(read_at_, most_looks_read_again);
    if (!changed) {
        *this = PairWall(library, on_);
        return;
    }
    Read fresh = read_again(library, *changed);
    forget(*changed);
    take_in(std::move(fresh));
    read_at_ = now;
}

PairWall::Read PairWall::read_again(Library& library, const std::vector<LookId>& ids) const {
    SomeRecords records(library.database());
    std::vector<Pair> pairs = records.pairs(ids);
    const std::vector<Look> looks = records.looks(ids);
    auto values = values_of(pairs, looks, facts_of_these_looks(library, looks),
                            allowed_uses_of_few(library, pairs, on_));
    return {std::move(pairs), std::move(values)};
}

void PairWall::forget(const std::vector<LookId>& looks) {
    const std::set<LookId> gone(looks.begin(), looks.end());
    std::size_t kept = 0;
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        if (gone.contains(pairs_[i].made.place.look)) {
            index_.take_out(places_[i]);
            free_.push_back(places_[i]);
            continue;
        }
        pairs_[kept] = pairs_[i];
        places_[kept++] = places_[i];
    }
    pairs_.resize(kept);
    places_.resize(kept);
}

void PairWall::take_in(Read fresh) {
    std::vector<Pair> pairs;
    std::vector<std::size_t> places;
    pairs.reserve(pairs_.size() + fresh.pairs.size());
    places.reserve(pairs.capacity());
    std::size_t old = 0;
    const auto keep_until = [&](auto stop) {
        for (; old < pairs_.size() && !stop(pairs_[old]); ++old) {
            pairs.push_back(pairs_[old]);
            places.push_back(places_[old]);
        }
    };
    for (std::size_t i = 0; i < fresh.pairs.size(); ++i) {
        keep_until([&](const Pair& next) { return stands_before(fresh.pairs[i], next); });
        pairs.push_back(fresh.pairs[i]);
        places.push_back(free_.empty() ? index_.size() : free_.back());
        if (free_.empty()) {
            index_.add(fresh.values[i]);
        } else {
            index_.put(free_.back(), fresh.values[i]);
            free_.pop_back();
        }
    }
    keep_until([](const Pair&) { return false; });
    pairs_ = std::move(pairs);
    places_ = std::move(places);
    note_refused();
}

void PairWall::note_refused() {
    refused_.clear();
    for (const Pair& pair : pairs_) refused_.push_back(pair.choice.refused);
}

PairWall::Found PairWall::find(Library& library, const PairFilter& filter) const {
    const std::vector<bool> worded = blank(filter.words)
                                         ? std::vector<bool>(pairs_.size(), true)
                                         : with_words(library, pairs_, filter.words);
    std::vector<bool> among(index_.size());
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        among[places_[i]] = worded[i] && refused_[i] == filter.refused;
    }
    FoundPairs found = index_.find(filter.values, among);
    std::vector<bool> is_found(index_.size());
    for (const std::size_t place : found.places) is_found[place] = true;
    Found result;
    result.counts = std::move(found.counts);
    result.pairs.reserve(found.places.size());
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        if (is_found[places_[i]]) result.pairs.push_back(pairs_[i]);
    }
    return result;
}

}  // namespace quarterturn
