#include "indexer/erasure/erase.h"

#include <algorithm>
#include <set>

#include "indexer/disk/empty_folders.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/sort_steps.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

bool has_name_of_another(Library& library, const Client& client) {
    return std::ranges::any_of(library.clients().all(), [&](const Client& other) {
        return other.id != client.id && folded(other.name) == folded(client.name);
    });
}

class Planner {
  public:
    Planner(Library& library, ClientId client) : library_(library) {
        const auto found = library.clients().find(client);
        if (!found) {
            throw StoreError("There is no client number " + std::to_string(client.value) +
                             ": look her up in the list of clients.");
        }
        plan_.client = *found;
        plan_.looks = library.looks().of_client(client);
        plan_.sittings = library.sittings().of_client(client);
        plan_.name_is_hers_alone = !has_name_of_another(library, *found);
    }

    ErasurePlan plan(SharedPhotos shared) {
        std::vector<PhotoId> ids;
        for (const FoundPhoto& found : library_.search().find({.client = plan_.client.id})) {
            ids.push_back(found.id);
        }
        for (Photo& photo : library_.photos().these(ids)) {
            const bool goes = shared == SharedPhotos::go || is_hers(photo.tags);
            if (goes && shows_others(photo.tags)) plan_.others_shown.push_back(photo);
            (goes ? plan_.photos : plan_.shared).push_back(std::move(photo));
        }
        for (Exported& exported : library_.ledger().all()) {
            const bool hers =
                std::ranges::find(plan_.photos, exported.photo, &Photo::id) != plan_.photos.end();
            if (hers && !exported.taken_down) plan_.out_there.push_back(std::move(exported));
        }
        plan_.backups = library_.backups().all();
        return std::move(plan_);
    }

  private:
    bool of_her_look(const Tags& tags) const {
        return std::ranges::find(plan_.looks, *tags.look, &Look::id) != plan_.looks.end();
    }
    bool of_her_sitting(const Tags& tags) const {
        return std::ranges::find(plan_.sittings, *tags.sitting, &Sitting::id) !=
               plan_.sittings.end();
    }
    bool is_hers(const Tags& tags) const {
        if (tags.look) return of_her_look(tags);
        return tags.sitting && of_her_sitting(tags);
    }
    bool shows_others(const Tags& tags) const {
        if (tags.look && !of_her_look(tags)) return true;
        if (tags.sitting && !of_her_sitting(tags)) return true;
        return std::ranges::any_of(tags.shown,
                                   [&](ClientId shown) { return shown != plan_.client.id; });
    }

    Library& library_;
    ErasurePlan plan_;
};

std::string counted(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

// All files below the folder, relative to the library.
std::vector<Path> files_below(Library& library, const Path& folder) {
    std::vector<Path> files;
    if (!library.disk().exists(library.folder() / folder)) return files;
    for (const auto& entry :
         std::filesystem::recursive_directory_iterator(library.folder() / folder)) {
        if (!entry.is_directory()) {
            files.push_back(entry.path().lexically_relative(library.folder()));
        }
    }
    return files;
}

std::vector<std::string> files_of(Library& library, const ErasurePlan& plan) {
    std::vector<std::string> files;
    std::set<std::string> sums;
    for (const Photo& photo : plan.photos) {
        files.push_back(photo.file.path);
        sums.insert(photo.file.sha256);
    }
    for (const ConsentEntry& entry : library.consents().of(plan.client.id)) {
        for (const ConsentPaper& paper : entry.papers) files.push_back(paper.path);
    }
    for (const Inspiration& brought : library.inspirations().of_client(plan.client.id)) {
        files.push_back(brought.path);
    }
    constexpr std::size_t sum_digits = 64;
    for (const char* folder : {"cache", "incoming"}) {
        for (const Path& file : files_below(library, folder)) {
            if (sums.contains(file.filename().string().substr(0, sum_digits))) {
                files.push_back(file.generic_string());
            }
        }
    }
    // Copies of the records from before an update.
    for (const Path& entry : library.disk().list(library.folder())) {
        const std::string name = entry.filename().string();
        if (name.starts_with("records.sqlite.version-")) files.push_back(name);
    }
    return files;
}

void remove_files(Library& library) {
    ErasureTable erasures(library.database());
    for (const std::string& path : erasures.files_left()) {
        const Path file = library.folder() / path;
        if (library.disk().exists(file)) {
            library.disk().remove(file);
            library.disk().sync_folder(file.parent_path());
        }
        drop_empty_folders(library.disk(), library.folder(), Path(path).parent_path());
        erasures.file_is_gone(path);
    }
}

void refuse_unless_alone(const MoveLock& lock) {
    if (lock.held()) return;
    throw StoreError(
        "Another program is moving photos of this library: wait until it has ended, and run the "
        "command again.");
}

}  // namespace

ErasurePlan plan_erasure(Library& library, ClientId client, SharedPhotos shared) {
    return Planner(library, client).plan(shared);
}

std::vector<std::string> erasure_words(const ErasurePlan& plan) {
    std::vector<std::string> words{"To be erased: " + plan.client.name + ", with " +
                                   counted(plan.looks.size(), "look", "looks") + ", " +
                                   counted(plan.sittings.size(), "sitting", "sittings") + ", " +
                                   counted(plan.photos.size(), "photo", "photos") +
                                   ", what she allowed and its papers. It cannot be taken back."};
    if (!plan.others_shown.empty()) {
        words.push_back(
            counted(plan.others_shown.size(), "of the photos shows", "of the photos show") +
            " other clients too, and will be gone for them as well.");
    }
    if (!plan.shared.empty()) {
        const bool one = plan.shared.size() == 1;
        words.push_back(counted(plan.shared.size(), "photo", "photos") +
                        " of other clients' looks or sittings " +
                        (one ? "shows her as well, and stays" : "show her as well, and stay") +
                        " as part of their records: her name goes, and what shows her is never "
                        "passed on.");
    }
    if (!plan.out_there.empty()) {
        words.push_back(
            counted(plan.out_there.size(), "picture of hers is", "pictures of hers are") +
            " still out there: they stay in the ledger without her name, as tasks to "
            "take down.");
    }
    for (const Backup& backup : plan.backups) {
        words.push_back("The backup in " + place_words(backup) +
                        " may hold her: the next backup to it removes her files there, and the "
                        "older records that name her.");
    }
    if (!plan.name_is_hers_alone) {
        words.emplace_back(
            "Another client has the same name, so it stays where your notes name it: look through "
            "them yourself.");
    }
    return words;
}

Erased erase_client(Library& library, const ErasurePlan& plan, Date today) {
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    ToErase what;
    what.client = plan.client;
    what.files = files_of(library, plan);
    what.name_is_hers_alone = plan.name_is_hers_alone;
    what.on = today;
    std::vector<std::string> texts;
    for (const Photo& photo : plan.photos) {
        what.photos.push_back(photo.id);
        texts.push_back(photo.file.sha256);
    }
    if (plan.name_is_hers_alone) texts.push_back(plan.client.name);
    ErasureTable erasures(library.database());
    erasures.erase(what);
    remove_files(library);
    move_to_folders(library);
    erasures.finish();
    return {erasures.all().back(), where_found(library, texts)};
}

void finish_erasures(Library& library) {
    ErasureTable erasures(library.database());
    if (!erasures.any_unfinished()) return;
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    remove_files(library);
    move_to_folders(library);
    erasures.finish();
}

}  // namespace quarterturn
