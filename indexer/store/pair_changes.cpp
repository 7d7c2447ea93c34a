#include "indexer/store/pair_changes.h"

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

LookId changed_look_in(const Statement& row) {
    LookId look;
    row.read(look);
    return look;
}

}  // namespace

std::int64_t PairChanges::last() {
    return Statement(*database_, "SELECT coalesce(max(number), 0) FROM pair_change")
        .value<std::int64_t>()
        .value();
}

std::optional<std::vector<LookId>> PairChanges::since(std::int64_t change, int at_most) {
    const std::vector<LookId> changed =
        Statement(*database_, "SELECT look FROM pair_change WHERE number > ? LIMIT ?")
            .with(change, at_most + 1)
            .rows(changed_look_in);
    if (std::ssize(changed) > at_most) return std::nullopt;
    const std::string list = json_list(std::span<const LookId>(changed));
    return Statement(*database_,
                     "SELECT value FROM json_each(?1) UNION SELECT id FROM look WHERE client IN "
                     "(SELECT client FROM look WHERE id IN (SELECT value FROM json_each(?1)))")
        .with(list)
        .rows(changed_look_in);
}

}  // namespace quarterturn
