#include "indexer/looks/bag.h"
#include "indexer/looks/exported_record.h"
#include "indexer/looks/sealed_file.h"
#include "indexer/looks/sign_off.h"

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

// "record/" and "record" are the same folder.
Path without_slash_at_end(const Path& folder) {
    const Path whole = std::filesystem::absolute(folder).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

void refuse_if_there(FileSystem& disk, const Path& folder, const std::string& next_step) {
    if (disk.exists(folder)) throw StoreError(folder.string() + " is there already: " + next_step);
}

BagInfo bag_info(const ExportedRecord& record, LocalTime now) {
    return {{"Source-Organization", record.business_name},
            {"External-Description",
             "Signed-off look \"" + record.state.look.name + "\" of " + record.state.client.name},
            {"Bagging-Date", iso_text(date_of(now))},
            {"Bag-Software-Agent", "Quarterturn"}};
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

void export_record(Library& library, LookId look, const Path& wanted, LocalTime now) {
    const ExportedRecord record = exported_record(library, signed_off_state(library, look));
    const Path folder = without_slash_at_end(wanted);
    const Path unfinished =
        folder.parent_path() / ("." + folder.filename().string() + ".unfinished");
    FileSystem& disk = library.disk();
    refuse_if_there(disk, folder, "choose a new folder.");
    refuse_if_there(disk, unfinished,
                    "an earlier export was interrupted. Delete that folder, and export again.");
    BagWriter bag(disk, unfinished);
    try {
        write_bag(library, record, now, bag);
        disk.rename_new(unfinished, folder);
    } catch (...) {
        bag.abandon();
        throw;
    }
    disk.sync_folder(folder.parent_path());
}

}  // namespace quarterturn
