#include "indexer/store/pair_table.h"

#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string select_pairs =
    "SELECT id, look, kind, number, angle, first, second, first_note, second_note, worn_on, "
    "chosen_first, chosen_second, pinned, refused, first_gone, second_gone FROM pair ";
const std::string by_day_worn = "ORDER BY worn_on DESC, id DESC";
const std::string in_bin = "IN (SELECT id FROM photo WHERE binned IS NOT NULL) ";
const std::string that_are_there =
    "first IS NOT NULL AND second IS NOT NULL AND first NOT " + in_bin + "AND second NOT " + in_bin;

Pair pair_in(const Statement& row) {
    Pair pair;
    MadePair& made = pair.made;
    PairChoice& choice = pair.choice;
    std::optional<PhotoId> first, second;
    row.read(pair.id, made.place.look, made.place.kind, made.place.number, made.place.angle, first,
             second, made.first_note, made.second_note, made.worn_on, choice.first, choice.second,
             choice.pinned, choice.refused, choice.first_gone, choice.second_gone);
    made.first = first.value_or(PhotoId{});
    made.second = second.value_or(PhotoId{});
    return pair;
}

// Statements of keep_made(), prepared once for all looks.
class Keeper {
  public:
    explicit Keeper(Database& database)
        : empty_(database, "UPDATE pair SET first = NULL, second = NULL WHERE look = ?"),
          write_(database,
                 "INSERT INTO pair (look, kind, number, angle, first, second, first_note, "
                 "second_note, worn_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) "
                 "ON CONFLICT (look, kind, number, angle) DO UPDATE SET first = excluded.first, "
                 "second = excluded.second, first_note = excluded.first_note, "
                 "second_note = excluded.second_note, worn_on = excluded.worn_on"),
          clear_(database,
                 "DELETE FROM pair WHERE look = ? AND first IS NULL AND chosen_first IS NULL AND "
                 "chosen_second IS NULL AND NOT refused AND NOT first_gone AND NOT second_gone"),
          done_(database, "DELETE FROM look_to_pair WHERE look = ?") {}

    void keep(LookId look, const std::vector<MadePair>& made) {
        empty_.with(look).run();
        for (const MadePair& pair : made) {
            const PairPlace& place = pair.place;
            write_
                .with(place.look, place.kind, place.number, place.angle, pair.first, pair.second,
                      pair.first_note, pair.second_note, pair.worn_on)
                .run();
        }
        clear_.with(look).run();
        done_.with(look).run();
    }

  private:
    Statement empty_, write_, clear_, done_;
};

}  // namespace

std::vector<LookId> PairTable::to_make(int at_most) {
    Statement rows(*database_, "SELECT look FROM look_to_pair ORDER BY look LIMIT ?");
    return rows.with(at_most).rows([](const Statement& row) {
        LookId look;
        row.read(look);
        return look;
    });
}

void PairTable::keep_made(const std::map<LookId, std::vector<MadePair>>& made) {
    Transaction transaction(*database_);
    Keeper keeper(*database_);
    for (const auto& [look, own] : made) keeper.keep(look, own);
    transaction.commit();
}

std::vector<Pair> PairTable::all() {
    Statement rows(*database_, select_pairs + "WHERE " + that_are_there + by_day_worn);
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

std::vector<Pair> PairTable::these(std::span<const PairId> ids) {
    Statement rows(*database_, select_pairs + "WHERE id IN (SELECT value FROM json_each(?)) AND " +
                                   that_are_there);
    const std::string list = json_list(ids);
    std::map<PairId, Pair> found;
    for (Pair& pair : rows.with(list).rows(pair_in)) found.emplace(pair.id, std::move(pair));
    std::vector<Pair> in_order;
    for (const PairId id : ids) {
        if (const auto pair = found.find(id); pair != found.end()) in_order.push_back(pair->second);
    }
    return in_order;
}

std::vector<Pair> PairTable::without_photos() {
    return Statement(*database_, select_pairs +
                                     "WHERE (first IS NULL OR second IS NULL) AND NOT refused AND "
                                     "(pinned OR chosen_first IS NOT NULL OR chosen_second IS NOT "
                                     "NULL OR first_gone OR second_gone) ORDER BY id")
        .rows(pair_in);
}

void PairTable::choose(PairId id, const PairChoice& choice) {
    const bool both = (choice.first || choice.first_gone) && (choice.second || choice.second_gone);
    if (choice.pinned && !both) {
        throw StoreError("A pair is pinned with both of its photos: name the two.");
    }
    update_one(*database_, "pair " + std::to_string(id.value),
               "UPDATE pair SET chosen_first = ?, chosen_second = ?, pinned = ?, refused = ?, "
               "first_gone = ?, second_gone = ? WHERE id = ?",
               choice.first, choice.second, choice.pinned, choice.refused, choice.first_gone,
               choice.second_gone, id);
}

std::vector<Pair> SomeRecords::pairs(std::span<const LookId> looks) {
    Statement rows(*database_, select_pairs +
                                   "WHERE look IN (SELECT value FROM json_each(?)) AND " +
                                   that_are_there + by_day_worn);
    const std::string ids = json_list(looks);
    return rows.with(ids).rows(pair_in);
}

}  // namespace quarterturn
