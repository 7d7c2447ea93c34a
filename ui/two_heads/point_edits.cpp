#include "ui/two_heads/point_edits.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

void put_points(Library& library, const std::vector<PointsOfPhoto>& changes) {
    Transaction transaction{library.database()};
    for (const auto& [photo, points] : changes) {
        points ? library.head_points().set(photo, *points) : library.head_points().clear(photo);
    }
    transaction.commit();
}

}  // namespace

Edit change_points(Library& library, const std::vector<PointsOfPhoto>& changes) {
    std::vector<PointsOfPhoto> before;
    for (const PointsOfPhoto& change : changes) {
        before.push_back({change.photo, library.head_points().of(change.photo)});
    }
    return {to_utf8(QCoreApplication::translate("point_edits", "changed where the heads stand")),
            [changes](Library& records) { put_points(records, changes); },
            [before](Library& records) { put_points(records, before); }};
}

}  // namespace quarterturn
