#include "indexer/store/bin_table.h"

#include "indexer/store/days_opened.h"
#include "indexer/store/photo_rows.h"

namespace quarterturn {
Date BinTable::note_opening(Date today) {
    note_day_opened(*database_, today);
    return sure_day(*database_).value_or(today);
}

Date BinTable::not_before(Date today) {
    return std::max(today, last_day_opened(*database_).value_or(today));
}

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
    // The sign has them found by the index of the bin: in the order of their numbers SQLite would
    // read all photos.
    return Statement(*database_, "SELECT id FROM photo WHERE binned <= ? ORDER BY +id")
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
