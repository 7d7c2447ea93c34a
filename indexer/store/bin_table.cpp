#include "indexer/store/bin_table.h"

#include "indexer/store/photo_rows.h"

namespace quarterturn {

std::vector<BinnedPhoto> BinTable::all() {
    std::map<PhotoId, Photo> photos;
    for (Photo& photo : select_all_photos(*database_, "photo.binned IS NOT NULL")) {
        photos.emplace(photo.id, std::move(photo));
    }
    return Statement(*database_,
                     "SELECT id, binned FROM photo WHERE binned IS NOT NULL ORDER BY binned, id")
        .rows([&](const Statement& row) {
            BinnedPhoto binned;
            row.read(binned.photo.id, binned.since);
            binned.photo = std::move(photos.at(binned.photo.id));
            return binned;
        });
}

std::vector<PhotoId> BinTable::since_or_before(Date day) {
    return Statement(*database_, "SELECT id FROM photo WHERE binned <= ? ORDER BY id")
        .with(day)
        .rows([](const Statement& row) {
            PhotoId id;
            row.read(id);
            return id;
        });
}

std::set<std::string> BinTable::checksums() {
    Statement rows(*database_, "SELECT sha256 FROM photo WHERE binned IS NOT NULL");
    std::set<std::string> sums;
    while (rows.step()) {
        std::string sum;
        rows.read(sum);
        sums.insert(std::move(sum));
    }
    return sums;
}

}  // namespace quarterturn
