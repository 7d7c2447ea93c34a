#include "indexer/store/selection_table.h"

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {

void SelectionTable::keep(const PhotoSelection& selection) {
    refuse_unless_name("the name of the selection", selection.name);
    Transaction transaction(*database_);
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
    transaction.commit();
}

std::vector<PhotoSelection> SelectionTable::all() {
    Statement rows(*database_,
                   "SELECT name, photo FROM selection LEFT JOIN selection_photo ON selection = id "
                   "ORDER BY id, place");
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
