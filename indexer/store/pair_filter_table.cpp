#include "indexer/store/pair_filter_table.h"

#include <algorithm>

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using FilterId = Id<struct FilterRow>;

void write_values(Database& database, FilterId id, const FactValues& values) {
    Statement add(database,
                  "INSERT INTO pair_filter_value (filter, fact, place, value) VALUES (?, ?, ?, ?)");
    for (const auto& [fact, each] : values) {
        int place = 0;
        for (const std::string& value : each) add.with(id, fact, place++, value).run();
    }
}

}  // namespace

void PairFilterTable::keep(const KeptPairFilter& kept) {
    refuse_unless_name("the filter's name", kept.name);
    refuse_unless_text("the words of the filter", kept.filter.words);
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM pair_filter WHERE folded_name = ?", folded(kept.name));
    const auto id = insert<FilterId>(
        *database_,
        "INSERT INTO pair_filter (name, folded_name, words, refused) VALUES (?, ?, ?, ?)",
        kept.name, folded(kept.name), kept.filter.words, kept.filter.refused);
    write_values(*database_, id, kept.filter.values);
    transaction.commit();
}

std::vector<KeptPairFilter> PairFilterTable::all() {
    Statement rows(*database_,
                   "SELECT id, name, words, refused, fact, value FROM pair_filter LEFT JOIN "
                   "pair_filter_value ON filter = id ORDER BY id, fact, place");
    std::vector<KeptPairFilter> filters;
    FilterId last;
    while (rows.step()) {
        FilterId id;
        KeptPairFilter kept;
        std::optional<Fact> fact;
        std::optional<std::string> value;
        rows.read(id, kept.name, kept.filter.words, kept.filter.refused, fact, value);
        if (id != last) filters.push_back(kept);
        if (fact && value) filters.back().filter.values[*fact].push_back(*value);
        last = id;
    }
    sort_by_name(filters, &KeptPairFilter::name);
    return filters;
}

std::optional<PairFilter> PairFilterTable::find(std::string_view name) {
    for (const KeptPairFilter& kept : all()) {
        if (folded(kept.name) == folded(name)) return kept.filter;
    }
    return std::nullopt;
}

void PairFilterTable::remove(std::string_view name) {
    update_one(*database_, "filter " + std::string(name),
               "DELETE FROM pair_filter WHERE folded_name = ?", folded(name));
}

}  // namespace quarterturn
