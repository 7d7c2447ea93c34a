#include "indexer/erasure/erase.h"

#include <algorithm>

#include "indexer/lock/lock_file.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {
namespace {

// Also one whose name goes on: "Ada Vale" is within "Ada Vale Holm".
bool has_name_of_another(Library& library, const Client& client) {
    const SoughtNames name({client.name});
    return std::ranges::any_of(library.clients().all(), [&](const Client& other) {
        return other.id != client.id && !name.said_in(other.name).empty();
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
        for (Photo& photo : photos_found({.client = plan_.client.id})) {
            if (shared == SharedPhotos::go || is_hers(photo.tags)) {
                add(std::move(photo));
            } else {
                plan_.shared.push_back(std::move(photo));
            }
        }
        add_weddings();
        add_out_there();
        plan_.backups = library_.backups().all();
        return std::move(plan_);
    }

    ErasurePlan plan_only(const Look& look) {
        plan_.only = look;
        plan_.looks = {look};
        plan_.sittings.clear();
        for (Photo& photo : photos_found({.look = look.id})) add(std::move(photo));
        add_out_there();
        plan_.backups = library_.backups().all();
        return std::move(plan_);
    }

  private:
    std::vector<Photo> photos_found(PhotoSearch wanted) {
        std::vector<PhotoId> ids;
        for (const bool binned : {false, true}) {
            wanted.binned = binned;
            for (const FoundPhoto& found : library_.search().find(wanted)) ids.push_back(found.id);
        }
        return library_.photos().these_also_in_bin(ids);
    }
    void add(Photo photo) {
        if (shows_others(photo.tags)) plan_.others_shown.push_back(photo);
        plan_.photos.push_back(std::move(photo));
    }
    void add_weddings() {
        ErasureTable erasures(library_.database());
        for (const WeddingId id : erasures.weddings_of_nobody_else(plan_.client.id)) {
            if (auto wedding = library_.weddings().find(id)) {
                plan_.weddings.push_back(std::move(*wedding));
            }
        }
    }
    void add_out_there() {
        for (Exported& exported : library_.ledger().all()) {
            const bool goes =
                std::ranges::find(plan_.photos, exported.photo, &Photo::id) != plan_.photos.end();
            if (goes && !exported.taken_down) plan_.out_there.push_back(std::move(exported));
        }
    }
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
        if (!plan_.only && tags.sitting && !of_her_sitting(tags)) return true;
        return std::ranges::any_of(tags.shown,
                                   [&](ClientId shown) { return shown != plan_.client.id; });
    }

    Library& library_;
    ErasurePlan plan_;
};

std::string counted(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string weddings_that_go(const std::vector<Wedding>& weddings) {
    if (weddings.empty()) return {};
    std::string words = weddings.size() == 1 ? ", and the wedding " : ", and the weddings ";
    for (const Wedding& wedding : weddings) {
        if (&wedding != &weddings.front()) words += &wedding == &weddings.back() ? " and " : ", ";
        words += wedding.name + " on " + iso_text(wedding.date);
    }
    return words + ", which nobody else is in";
}

std::string what_goes(const ErasurePlan& plan) {
    const std::string photos = counted(plan.photos.size(), "photo", "photos");
    if (plan.only) {
        return "To be erased: the look " + plan.only->name + " of " + plan.client.name + ", with " +
               photos + ", its recipe and sign-offs. All else of hers stays.";
    }
    return "To be erased: " + plan.client.name + ", with " +
           counted(plan.looks.size(), "look", "looks") + ", " +
           counted(plan.sittings.size(), "sitting", "sittings") + ", " + photos +
           ", what she allowed and its papers" + weddings_that_go(plan.weddings) + ".";
}

}  // namespace

ErasurePlan plan_erasure(Library& library, ClientId client, SharedPhotos shared) {
    return Planner(library, client).plan(shared);
}

ErasurePlan plan_look_erasure(Library& library, LookId look) {
    const auto found = library.looks().find(look);
    if (!found) {
        throw StoreError("There is no look number " + std::to_string(look.value) +
                         ": look it up in the list of looks.");
    }
    return Planner(library, found->client).plan_only(*found);
}

const std::string& name_of_what_goes(const ErasurePlan& plan) {
    return plan.only ? plan.only->name : plan.client.name;
}

std::set<std::string> files_out_there(const ErasurePlan& plan) {
    std::set<std::string> files;
    for (const Exported& exported : plan.out_there) files.insert(exported.file);
    return files;
}

std::string unless_locked_since(Library& library, const Backup& backup) {
    const bool locked_there = library.disk().exists(backup.folder / lock_file_name);
    if (!locked_there && !has_had_lock(library)) return {};
    return " Where the library was locked or unlocked for good since that backup was made, it "
           "takes no more: remove it by hand, and make a new one.";
}

std::vector<std::string> erasure_words(Library& library, const ErasurePlan& plan) {
    std::vector<std::string> words{what_goes(plan) + " It cannot be taken back."};
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
        words.push_back(counted(files_out_there(plan).size(), "file with pictures of hers is",
                                "files with pictures of hers are") +
                        " still out there: they stay in the ledger without her name, as tasks to "
                        "take down.");
    }
    for (const Backup& backup : plan.backups) {
        words.push_back("The backup in " + place_words(backup) +
                        " may hold her: the next backup to it removes her files there, and the "
                        "older records that name her." +
                        unless_locked_since(library, backup));
    }
    if (!plan.only && !plan.name_is_hers_alone) {
        words.emplace_back(
            "Another client is called so too, so the name stays where your notes say it: look whom "
            "they mean.");
    }
    return words;
}

}  // namespace quarterturn
