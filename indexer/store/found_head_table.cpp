#include "indexer/store/found_head_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void FoundHeadTable::keep(const std::map<PhotoId, FoundHead>& heads) {
    if (heads.empty()) return;
    Transaction transaction(*database_);
    // A photo that was erased meanwhile keeps nothing.
    Statement add(*database_,
                  "INSERT OR REPLACE INTO found_head (photo, version, x, y, width, height) "
                  "SELECT id, ?, ?, ?, ?, ? FROM photo WHERE id = ?");
    for (const auto& [photo, head] : heads) {
        const auto share = [&](double HeadBox::* side) {
            return head ? std::optional{*head.*side} : std::nullopt;
        };
        add.with(version_, share(&HeadBox::x), share(&HeadBox::y), share(&HeadBox::width),
                 share(&HeadBox::height), photo)
            .run();
    }
    transaction.commit();
}

std::map<PhotoId, FoundHead> FoundHeadTable::of(std::span<const PhotoId> photos) {
    Statement rows(*database_,
                   "SELECT photo, x, y, width, height FROM found_head WHERE version = ? "
                   "AND photo IN (SELECT value FROM json_each(?))");
    rows.with(version_, json_list(photos));
    std::map<PhotoId, FoundHead> heads;
    while (rows.step()) {
        PhotoId photo;
        std::optional<double> x, y, width, height;
        rows.read(photo, x, y, width, height);
        heads[photo] = x ? FoundHead{{*x, y.value_or(0), width.value_or(0), height.value_or(0)}}
                         : std::nullopt;
    }
    return heads;
}

}  // namespace quarterturn
