#include "indexer/store/bin_table.h"

#include "indexer/store/photo_rows.h"
#include "indexer/store/settings_table.h"

namespace quarterturn {
namespace {

constexpr std::string_view opened_setting = "opened on";
constexpr std::string_view opened_before_setting = "opened before on";

std::optional<Date> day_in(SettingsTable settings, std::string_view name) {
    return parse_date(settings.get(name).value_or(""));
}

}  // namespace

Date BinTable::note_opening(Date today) {
    SettingsTable settings(*database_);
    const Date last = day_in(settings, opened_setting).value_or(today);
    Date before = day_in(settings, opened_before_setting).value_or(last);
    if (last != today) before = last;
    if (day_in(settings, opened_setting) != today) {
        Transaction both(*database_);
        settings.set(opened_before_setting, iso_text(before));
        settings.set(opened_setting, iso_text(today));
        both.commit();
    }
    return std::min(before, today);
}

Date BinTable::not_before(Date today) {
    SettingsTable settings(*database_);
    return std::max({today, day_in(settings, opened_setting).value_or(today),
                     day_in(settings, opened_before_setting).value_or(today)});
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
