#include "ui/two_heads/point_edits.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

void put_points(Library& library, const std::vector<PointsOfPhoto>& changes) {
    for (const auto& [photo, points] : changes) {
        points ? library.head_points().set(photo, *points) : library.head_points().clear(photo);
    }
}

}  // namespace

Edit change_points(const std::vector<PointsOfPhoto>& changes) {
    return {to_utf8(QCoreApplication::translate("point_edits", "changed where the heads stand")),
            [changes](Library& library) { put_points(library, changes); }};
}

}  // namespace quarterturn
