#include "indexer/store/pair_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string select_pairs =
    "SELECT id, look, kind, number, angle, first, second, first_strays, second_strays, worn_on, "
    "chosen_first, chosen_second, pinned, refused FROM pair ";
const std::string that_are_there = "first IS NOT NULL AND second IS NOT NULL ";

Pair pair_in(const Statement& row) {
    Pair pair;
    MadePair& made = pair.made;
    PairChoice& choice = pair.choice;
    std::optional<PhotoId> first, second;
    row.read(pair.id, made.place.look, made.place.kind, made.place.number, made.place.angle, first,
             second, made.first_strays, made.second_strays, made.worn_on, choice.first,
             choice.second, choice.pinned, choice.refused);
    made.first = first.value_or(PhotoId{});
    made.second = second.value_or(PhotoId{});
    return pair;
}

void write_pair(Statement& upsert, const MadePair& pair) {
    upsert
        .with(pair.place.look, pair.place.kind, pair.place.number, pair.place.angle, pair.first,
              pair.second, pair.first_strays, pair.second_strays, pair.worn_on)
        .run();
}

}  // namespace

std::vector<LookId> PairTable::to_make(int at_most) {
    Statement rows(*database_, "SELECT look FROM look_to_pair ORDER BY look LIMIT ?");
    return rows.with(at_most).rows([](const Statement& row) {
        LookId look;
        row.read(look);
        return look;
    });
}

void PairTable::keep_made(LookId look, const std::vector<MadePair>& made) {
    Transaction transaction(*database_);
    run(*database_, "UPDATE pair SET first = NULL, second = NULL WHERE look = ?", look);
    Statement upsert(
        *database_,
        "INSERT INTO pair (look, kind, number, angle, first, second, first_strays, second_strays, "
        "worn_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (look, kind, number, angle) DO UPDATE SET first = excluded.first, "
        "second = excluded.second, first_strays = excluded.first_strays, "
        "second_strays = excluded.second_strays, worn_on = excluded.worn_on");
    for (const MadePair& pair : made) write_pair(upsert, pair);
    run(*database_,
        "DELETE FROM pair WHERE look = ? AND first IS NULL AND chosen_first IS NULL "
        "AND chosen_second IS NULL AND NOT refused",
        look);
    run(*database_, "DELETE FROM look_to_pair WHERE look = ?", look);
    transaction.commit();
}

std::vector<Pair> PairTable::all() {
    Statement rows(*database_,
                   select_pairs + "WHERE " + that_are_there + "ORDER BY worn_on DESC, id DESC");
    return rows.rows(pair_in);
}

std::vector<Pair> PairTable::places_of(std::span<const LookId> looks) {
    Statement rows(*database_,
                   select_pairs + "WHERE look IN (SELECT value FROM json_each(?)) ORDER BY id");
    const std::string ids = json_list(looks);
    return rows.with(ids).rows(pair_in);
}

std::optional<Pair> PairTable::find(PairId id) {
    Statement rows(*database_, select_pairs + "WHERE id = ? AND " + that_are_there);
    return rows.with(id).first(pair_in);
}

void PairTable::choose(PairId id, const PairChoice& choice) {
    if (choice.pinned && !(choice.first && choice.second)) {
        throw StoreError("A pair is pinned with both of its photos: name the two.");
    }
    update_one(*database_, "pair " + std::to_string(id.value),
               "UPDATE pair SET chosen_first = ?, chosen_second = ?, pinned = ?, refused = ? "
               "WHERE id = ?",
               choice.first, choice.second, choice.pinned, choice.refused, id);
}

}  // namespace quarterturn
