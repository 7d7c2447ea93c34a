#include "indexer/looks/exported_record.h"
#include "indexer/looks/passing_on.h"
#include "indexer/looks/sealed_file.h"
#include "indexer/looks/sign_off.h"
#include "indexer/looks/whole_bag.h"

namespace quarterturn {
namespace {

std::string listed(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences) text += "\n  " + sentence;
    return text;
}

LookState signed_off_state(Library& library, LookId look) {
    LookState state = look_state(library, look);
    if (!state.sign_off) {
        throw StoreError(state.look.name +
                         " is not signed off, so there is no record to export: sign it off first.");
    }
    if (!state.changes_since.empty()) {
        throw StoreError(
            state.look.name +
            " has changed since it was signed off: reopen it with a reason and sign it "
            "off again." +
            listed(state.changes_since));
    }
    return state;
}

BagInfo bag_info(const ExportedRecord& record, LocalTime now) {
    return {{"Source-Organization", record.business_name},
            {"External-Description",
             "Signed-off look \"" + record.state.look.name + "\" of " + record.state.client.name},
            {"Bagging-Date", iso_text(date_of(now))},
            {"Bag-Software-Agent", "Quarterturn"}};
}

void refuse_against_photos(Library& library, const ExportedRecord& record, Date on) {
    std::vector<Photo> photos;
    for (const ExportedPhoto& exported : record.photos) photos.push_back(exported.photo);
    refuse_against_own_work(library, photos, on);
}

void write_bag(Library& library, const ExportedRecord& record, LocalTime now, BagWriter& bag) {
    for (const ExportedPhoto& exported : record.photos) {
        bag.add(exported.file, read_unchanged(library, exported.photo));
    }
    if (record.state.recipe) bag.add("recipe.json", recipe_json(record.state.recipe->recipe));
    bag.add("record.txt", record_text(record));
    bag.add("record.json", record_json(record));
    bag.finish(bag_info(record, now));
}

}  // namespace

void export_record(Library& library, LookId look, const Path& folder, LocalTime now) {
    const ExportedRecord record = exported_record(library, signed_off_state(library, look));
    refuse_against_photos(library, record, date_of(now));
    write_whole_bag(library.disk(), folder,
                    [&](BagWriter& bag) { write_bag(library, record, now, bag); });
}

}  // namespace quarterturn
