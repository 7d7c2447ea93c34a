// Erasing what a plan says.

#include <algorithm>
#include <iterator>

#include "indexer/erasure/erase.h"
#include "indexer/erasure/going_on.h"
#include "indexer/erasure/left_locked.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/erasure/named_by_others.h"
#include "indexer/erasure/past_the_lock.h"
#include "indexer/erasure/placed_by_hand.h"
#include "indexer/erasure/recorded_checksums.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {
namespace {

void add_papers_and_inspirations(Library& library, ClientId client,
                                 std::vector<std::string>& files) {
    for (const ConsentEntry& entry : library.consents().of(client)) {
        for (const ConsentPaper& paper : entry.papers) files.push_back(paper.path);
    }
    for (const Inspiration& brought : library.inspirations().of_client(client)) {
        files.push_back(brought.path);
    }
}

void add_files(FilesToGo more, FilesToGo& to) {
    std::ranges::move(more.files, std::back_inserter(to.files));
    std::ranges::move(more.unsure, std::back_inserter(to.unsure));
}

// What is hers goes wherever it lies; what is of others stays, also in her folders of papers.
void tell_apart_by_hand(Library& library, const ErasurePlan& plan, FilesToGo& found) {
    const PlacedByHand by_hand = placed_by_hand(library, checksums_of_what_goes(library, plan));
    std::set<std::string> going{found.files.begin(), found.files.end()};
    std::erase_if(going, [&](const std::string& path) { return by_hand.of_others(path); });
    going.insert(by_hand.of_what_goes.begin(), by_hand.of_what_goes.end());
    std::erase_if(found.unsure, [&](const SaidOfFile& one) {
        return going.contains(one.file.lexically_relative(library.folder()).generic_string());
    });
    found.files.assign(going.begin(), going.end());
}

// Photos of an import that was interrupted: nobody brings any in now, and nobody knows whose they
// are.
void add_what_was_on_its_way(Library& library, std::vector<std::string>& files) {
    for (const Path& file : files_below(library.disk(), library.incoming_folder())) {
        if (file.extension() != ".part") continue;
        files.push_back(file.lexically_relative(library.folder()).generic_string());
    }
}

FilesToGo files_of(Library& library, const ErasurePlan& plan) {
    FilesWithoutRecord strays = files_without_record(library);
    FilesToGo found = files_of_photos(library, plan.photos, strays, OtherStrays::named);
    std::erase_if(strays.files, [&](const std::string& path) {
        return std::ranges::find(found.files, path) != found.files.end();
    });
    if (!plan.only) {
        add_papers_and_inspirations(library, plan.client.id, found.files);
        add_files(papers_left_of(library, strays, plan.client.id), found);
    }
    std::ranges::move(copies_past_the_lock(library, plan), std::back_inserter(found.files));
    add_what_was_on_its_way(library, found.files);
    // Copies of the records from before an update.
    for (const Path& entry : library.disk().list(library.folder())) {
        const std::string name = entry.filename().string();
        if (name.starts_with("records.sqlite.version-")) found.files.push_back(name);
    }
    tell_apart_by_hand(library, plan, found);
    return found;
}

// Nothing where it cannot be told any more.
std::vector<std::optional<std::int64_t>> sizes_of(Library& library, const ErasurePlan& plan) {
    std::vector<std::optional<std::int64_t>> sizes;
    for (const Photo& photo : plan.photos) sizes.emplace_back(photo.file.bytes);
    if (plan.only) return sizes;
    for (const ConsentEntry& entry : library.consents().of(plan.client.id)) {
        for (const ConsentPaper& paper : entry.papers) sizes.emplace_back(paper.bytes);
    }
    for (const Inspiration& brought : library.inspirations().of_client(plan.client.id)) {
        const Path file = library.folder() / brought.path;
        const bool there = library.disk().exists(file);
        sizes.push_back(there ? std::optional(library.disk().state(file).bytes) : std::nullopt);
    }
    return sizes;
}

void refuse_what_may_be_locked(Library& library, const ErasurePlan& plan, const LeftLocked& left) {
    for (const auto& bytes : sizes_of(library, plan)) {
        if (const auto file = left.may_be(bytes)) {
            throw StoreError("Nothing was erased: " + file->string() +
                             " stayed locked when the lock was taken off, and may be of what is to "
                             "go. " +
                             unlock_or_remove);
        }
    }
}

ErasureSought sought_of(Library& library, const ErasurePlan& plan, std::vector<SaidOfFile> unsure) {
    ErasureSought sought;
    if (!plan.only) {
        sought.name = plan.client.name;
        sought.weddings = weddings_of(library, plan.client.id);
    }
    sought.hers_alone = plan.name_is_hers_alone;
    const std::set<std::string> gone = checksums_of_what_goes(library, plan);
    sought.checksums.assign(gone.begin(), gone.end());
    sought.unsure = std::move(unsure);
    return sought;
}

}  // namespace

std::vector<std::string> left_beforehand(Library& library, const ErasurePlan& plan) {
    FilesToGo found = files_of(library, plan);
    std::set<std::string> going{found.files.begin(), found.files.end()};
    going.insert("incoming/unfinished");  // the list is settled by then
    return words_of(
        said_of_files(library, sought_of(library, plan, std::move(found.unsure)), going));
}

Erased erase(Library& library, const ErasurePlan& plan, Date today) {
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    LeftLocked locked(library);
    locked.remove_small_pictures();
    refuse_what_may_be_locked(library, plan, locked);
    ToErase what;
    what.client = plan.client;
    if (plan.only) what.only = plan.only->id;
    FilesToGo found = files_of(library, plan);
    what.files = std::move(found.files);
    what.name_is_hers_alone = plan.name_is_hers_alone;
    what.on = today;
    what.sought = sought_of(library, plan, std::move(found.unsure));
    for (const Photo& photo : plan.photos) what.photos.push_back(photo.id);
    if (!plan.only) forget_intake_saying(library, plan.client.name);
    ErasureTable(library.database()).erase(what);
    GoneOn gone = go_on(library);
    Erased erased = std::move(gone.erasures.back());
    if (gone.undone.empty()) return erased;
    gone.undone.push_back(not_finished(erased.erasure));
    erased.left.insert(erased.left.begin(), gone.undone.begin(), gone.undone.end());
    return erased;
}

}  // namespace quarterturn
