#include "indexer/store/laid_pair_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

std::map<PairId, KeptLaying> LaidPairTable::of(std::span<const PairId> pairs) {
    Statement rows(*database_,
                   "SELECT pair.id, along, across, x, y, sure, first_aspect, second_aspect, top_x, "
                   "top_y, bottom_x, bottom_y, hair_left, hair_right FROM pair "
                   "JOIN pair_alignment ON pair_alignment.pair = pair.id AND "
                   "pair_alignment.first = pair.first AND pair_alignment.second = pair.second "
                   "JOIN pair_window ON pair_window.pair = pair.id "
                   "WHERE pair.id IN (SELECT value FROM json_each(?)) AND version = ?");
    const std::string ids = json_list(pairs);
    rows.with(ids, version_);
    std::map<PairId, KeptLaying> kept;
    while (rows.step()) {
        PairId pair;
        KeptLaying laying;
        PairAlignment& alignment = laying.alignment;
        HeadPoints& points = laying.first_points;
        rows.read(pair, alignment.along, alignment.across, alignment.x, alignment.y, alignment.sure,
                  laying.first_aspect, laying.second_aspect, points.top.x, points.top.y,
                  points.bottom.x, points.bottom.y, laying.hair_left, laying.hair_right);
        kept.emplace(pair, laying);
    }
    return kept;
}

std::vector<PairId> LaidPairTable::to_keep(PhotoId first, PhotoId second) {
    Statement rows(*database_, "SELECT id FROM pair WHERE first = ? AND second = ? ORDER BY id");
    std::vector<PairId> pairs = rows.with(first, second).rows([](const Statement& row) {
        PairId pair;
        row.read(pair);
        return pair;
    });
    const auto kept = of(pairs);
    std::erase_if(pairs, [&](PairId pair) { return kept.contains(pair); });
    return pairs;
}

void LaidPairTable::keep(PairId pair, const KeptLaying& laying) {
    const PairAlignment& alignment = laying.alignment;
    const HeadPoints& points = laying.first_points;
    Transaction both(*database_);
    run(*database_,
        "INSERT OR REPLACE INTO pair_alignment (pair, version, first, second, along, across, x, y, "
        "sure) SELECT id, ?, first, second, ?, ?, ?, ?, ? FROM pair WHERE id = ?",
        version_, alignment.along, alignment.across, alignment.x, alignment.y, alignment.sure,
        pair);
    run(*database_,
        "INSERT OR REPLACE INTO pair_window (pair, first_aspect, second_aspect, top_x, top_y, "
        "bottom_x, bottom_y, hair_left, hair_right) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        pair, laying.first_aspect, laying.second_aspect, points.top.x, points.top.y,
        points.bottom.x, points.bottom.y, laying.hair_left, laying.hair_right);
    both.commit();
}

}  // namespace quarterturn
