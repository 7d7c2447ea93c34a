#include "indexer/store/hair_only_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void HairOnlyTable::keep(const HairOnly& kept) {
    run(*database_,
        "INSERT OR REPLACE INTO hair_only "
        "(photo, way, x, y, width, height, mirrored, sha256, confirmed_at) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        kept.photo, kept.way, kept.x, kept.y, kept.width, kept.height, kept.mirrored, kept.sha256,
        kept.confirmed_at);
}

void HairOnlyTable::forget(PhotoId photo) {
    run(*database_, "DELETE FROM hair_only WHERE photo = ?", photo);
}

std::optional<HairOnly> HairOnlyTable::of(PhotoId photo) {
    return Statement(*database_,
                     "SELECT photo, way, x, y, width, height, mirrored, sha256, confirmed_at "
                     "FROM hair_only WHERE photo = ?")
        .with(photo)
        .first([](const Statement& row) {
            HairOnly kept;
            std::string way;
            row.read(kept.photo, way, kept.x, kept.y, kept.width, kept.height, kept.mirrored,
                     kept.sha256, kept.confirmed_at);
            if (parse_hair_only_way(way) == HairOnlyWay::cover) kept.way = HairOnlyWay::cover;
            return kept;
        });
}

}  // namespace quarterturn
