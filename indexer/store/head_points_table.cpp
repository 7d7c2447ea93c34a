#include "indexer/store/head_points_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void HeadPointsTable::set(PhotoId photo, const HeadPoints& points) {
    run(*database_,
        "INSERT OR REPLACE INTO head_points (photo, top_x, top_y, bottom_x, bottom_y) "
        "VALUES (?, ?, ?, ?, ?)",
        photo, points.top.x, points.top.y, points.bottom.x, points.bottom.y);
}

void HeadPointsTable::clear(PhotoId photo) {
    run(*database_, "DELETE FROM head_points WHERE photo = ?", photo);
}

std::optional<HeadPoints> HeadPointsTable::of(PhotoId photo) {
    Statement rows(*database_,
                   "SELECT top_x, top_y, bottom_x, bottom_y FROM head_points WHERE photo = ?");
    return rows.with(photo).first([](const Statement& row) {
        HeadPoints points;
        row.read(points.top.x, points.top.y, points.bottom.x, points.bottom.y);
        return points;
    });
}

}  // namespace quarterturn
