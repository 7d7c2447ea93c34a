#include "indexer/store/look_fact_table.h"

#include <algorithm>

#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_facts = "SELECT look, fact, value, said FROM look_fact";

// What she has said of a fact holds, and else what was read.
void leave_what_holds(LookFacts& facts) {
    const LookFacts all = facts;
    std::erase_if(facts, [&](const LookFact& fact) {
        return !fact.said && std::ranges::any_of(all, [&](const LookFact& other) {
            return other.said && other.fact == fact.fact;
        });
    });
}

std::map<LookId, LookFacts> facts_in(Statement& rows) {
    std::map<LookId, LookFacts> facts;
    while (rows.step()) {
        LookId look;
        LookFact fact;
        rows.read(look, fact.fact, fact.value, fact.said);
        facts[look].push_back(std::move(fact));
    }
    for (auto& [look, own] : facts) {
        if (std::ranges::find(own, true, &LookFact::said) != own.end()) leave_what_holds(own);
        std::ranges::sort(own);
    }
    return facts;
}

const char* const add_fact =
    "INSERT OR IGNORE INTO look_fact (look, fact, value, said) VALUES (?, ?, ?, ?)";

void write_facts(Statement& add, LookId look, const LookFacts& facts) {
    for (const LookFact& fact : facts) add.with(look, fact.fact, fact.value, fact.said).run();
}

}  // namespace

void LookFactTable::keep_read(const std::map<LookId, LookFacts>& facts) {
    Transaction transaction(*database_);
    Statement clear(*database_, "DELETE FROM look_fact WHERE look = ? AND NOT said");
    Statement add(*database_, add_fact);
    for (const auto& [look, own] : facts) {
        clear.with(look).run();
        write_facts(add, look, own);
    }
    transaction.commit();
}

void LookFactTable::say(LookId look, Fact fact, std::span<const std::string> values) {
    if (std::ranges::find(facts_of_look, fact) == facts_of_look.end()) {
        throw StoreError("The " + std::string(word(fact)) +
                         " of a look follows from its records: change them there.");
    }
    LookFacts facts;
    for (const std::string& value : values) {
        refuse_unless_name("the " + std::string(word(fact)) + " of the look", value);
        facts.push_back({fact, value, true});
    }
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM look_fact WHERE look = ? AND fact = ? AND said", look, fact);
    Statement add(*database_, add_fact);
    write_facts(add, look, facts);
    transaction.commit();
}

LookFacts LookFactTable::of(LookId look) {
    Statement rows(*database_, select_facts + " WHERE look = ?");
    return facts_in(rows.with(look))[look];
}

std::map<LookId, LookFacts> SomeRecords::facts(std::span<const LookId> looks) {
    Statement rows(*database_, select_facts + " WHERE look IN (SELECT value FROM json_each(?))");
    const std::string list = json_list(looks);
    return facts_in(rows.with(list));
}

std::map<LookId, LookFacts> LookFactTable::all() {
    Statement rows(*database_, select_facts);
    return facts_in(rows);
}

}  // namespace quarterturn
