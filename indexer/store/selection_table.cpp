#include "indexer/store/selection_table.h"

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// They come back into it when they are taken out of the bin.
std::vector<PhotoId> photos_in_bin(Database& database, std::string_view name) {
    return Statement(database,
                     "SELECT photo.id FROM selection JOIN selection_photo ON selection = "
                     "selection.id JOIN photo ON photo.id = photo WHERE selection.folded_name = ? "
                     "AND binned IS NOT NULL ORDER BY place")
        .with(folded(name))
        .rows([](const Statement& row) {
            PhotoId id;
            row.read(id);
            return id;
        });
}

}  // namespace

void SelectionTable::keep(const PhotoSelection& selection) {
    refuse_unless_name("the name of the selection", selection.name);
    Transaction transaction(*database_);
    const std::vector<PhotoId> binned = photos_in_bin(*database_, selection.name);
    run(*database_, "DELETE FROM selection WHERE folded_name = ?", folded(selection.name));
    using SelectionId = Id<struct SelectionRow>;
    const auto id =
        insert<SelectionId>(*database_, "INSERT INTO selection (name, folded_name) VALUES (?, ?)",
                            selection.name, folded(selection.name));
    Statement add(*database_,
                  "INSERT INTO selection_photo (selection, place, photo) VALUES (?, ?, ?) "
                  "ON CONFLICT (selection, photo) DO NOTHING");
    int place = 0;
    for (const PhotoId photo : selection.photos) add.with(id, place++, photo).run();
    for (const PhotoId photo : binned) add.with(id, place++, photo).run();
    transaction.commit();
}

std::vector<PhotoSelection> SelectionTable::all() {
    Statement rows(*database_,
                   "SELECT selection.name, photo.id FROM selection "
                   "LEFT JOIN selection_photo ON selection = selection.id "
                   "LEFT JOIN photo ON photo.id = photo AND binned IS NULL "
                   "ORDER BY selection.id, place");
    std::vector<PhotoSelection> selections;
    while (rows.step()) {
        std::string name;
        std::optional<PhotoId> photo;
        rows.read(name, photo);
        if (selections.empty() || selections.back().name != name) selections.push_back({name, {}});
        if (photo) selections.back().photos.push_back(*photo);
    }
    sort_by_name(selections, &PhotoSelection::name);
    return selections;
}

std::optional<PhotoSelection> SelectionTable::find(std::string_view name) {
    for (PhotoSelection& selection : all()) {
        if (folded(selection.name) == folded(name)) return std::move(selection);
    }
    return std::nullopt;
}

void SelectionTable::remove(std::string_view name) {
    update_one(*database_, "selection " + std::string(name),
               "DELETE FROM selection WHERE folded_name = ?", folded(name));
}

}  // namespace quarterturn
