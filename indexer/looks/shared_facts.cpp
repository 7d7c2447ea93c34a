#include "indexer/looks/shared_facts.h"

#include <algorithm>
#include <array>

#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

constexpr std::array facts_of_hair{Fact::length, Fact::texture, Fact::density, Fact::colour};

using AllFacts = std::map<LookId, LookFacts>;

bool tells(const AllFacts& facts, LookId look, Fact fact) {
    const auto own = facts.find(look);
    return own != facts.end() &&
           std::ranges::find(own->second, fact, &LookFact::fact) != own->second.end();
}

LookFacts told_of(const AllFacts& facts, LookId look, Fact fact) {
    LookFacts told;
    const auto own = facts.find(look);
    if (own == facts.end()) return told;
    std::ranges::copy_if(own->second, std::back_inserter(told),
                         [&](const LookFact& each) { return each.fact == fact; });
    return told;
}

bool share_a_sitting(const Look& one, const Look& other) {
    return std::ranges::find_first_of(one.sittings, other.sittings) != one.sittings.end();
}

// By all of them, each value once.
LookFacts told_beside(const AllFacts& facts, const std::vector<const Look*>& hers, const Look& look,
                      Fact fact) {
    LookFacts told;
    for (const Look* other : hers) {
        if (other->id == look.id || !share_a_sitting(look, *other)) continue;
        for (const LookFact& each : told_of(facts, other->id, fact)) {
            const bool known = std::ranges::find(told, each.value, &LookFact::value) != told.end();
            if (!known) told.push_back(each);
        }
    }
    return told;
}

AllFacts shared(const AllFacts& told, const std::vector<Look>& all_looks) {
    std::map<ClientId, std::vector<const Look*>> looks;
    for (const Look& look : all_looks) looks[look.client].push_back(&look);
    AllFacts facts = told;
    for (const auto& [client, hers] : looks) {
        for (const Look* look : hers) {
            for (const Fact fact : facts_of_hair) {
                if (tells(told, look->id, fact)) continue;
                std::ranges::copy(told_beside(told, hers, *look, fact),
                                  std::back_inserter(facts[look->id]));
            }
        }
    }
    for (auto& [look, own] : facts) std::ranges::sort(own);
    return facts;
}

}  // namespace

AllFacts facts_of_looks(Library& library) {
    return facts_of_looks(library, library.looks().all());
}

AllFacts facts_of_looks(Library& library, const std::vector<Look>& all_looks) {
    return shared(library.look_facts().all(), all_looks);
}

AllFacts facts_of_these_looks(Library& library, const std::vector<Look>& looks) {
    std::vector<LookId> ids;
    for (const Look& look : looks) ids.push_back(look.id);
    return shared(SomeRecords(library.database()).facts(ids), looks);
}

}  // namespace quarterturn
