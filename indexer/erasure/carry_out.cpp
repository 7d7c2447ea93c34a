// Erasing what a plan says, going on with it, and looking for what is left.

#include <algorithm>
#include <iterator>

#include "indexer/erasure/erase.h"
#include "indexer/erasure/files_saying.h"
#include "indexer/erasure/left_locked.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/erasure/named_by_others.h"
#include "indexer/erasure/past_the_lock.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/own_texts.h"

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
    std::ranges::move(copies_elsewhere(library, plan.photos), std::back_inserter(found.files));
    std::ranges::move(copies_past_the_lock(library, plan), std::back_inserter(found.files));
    // Copies of the records from before an update.
    for (const Path& entry : library.disk().list(library.folder())) {
        const std::string name = entry.filename().string();
        if (name.starts_with("records.sqlite.version-")) found.files.push_back(name);
    }
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
    for (const Photo& photo : plan.photos) sought.checksums.push_back(photo.file.sha256);
    sought.unsure = std::move(unsure);
    return sought;
}

SoughtNames names_in(const ErasureSought& sought) {
    std::vector<std::string> names;
    if (!sought.name.empty()) names.push_back(sought.name);
    return SoughtNames(names, sought.hers_alone);
}

void append(const std::vector<std::string>& more, std::vector<std::string>& to) {
    to.insert(to.end(), more.begin(), more.end());
}

// What is known of a file is said in place of that it may be hers.
void say_instead(std::vector<SaidOfFile> more, std::vector<SaidOfFile>& said) {
    for (SaidOfFile& one : more) {
        std::erase_if(said, [&](const SaidOfFile& before) { return before.file == one.file; });
        said.push_back(std::move(one));
    }
}

std::vector<std::string> words_of(const std::vector<SaidOfFile>& said) {
    std::vector<std::string> words;
    for (const SaidOfFile& one : said) words.push_back(one.words);
    return words;
}

void say_left_locked(Library& library, std::vector<SaidOfFile>& said) try {
    say_instead(LeftLocked(library).said(), said);
} catch (const DiskError& error) {
    said.push_back({error.file(), error.what()});
}

std::vector<std::string> words_of_files(Library& library, const ErasureSought& sought,
                                        const std::set<std::string>& going) {
    std::vector<SaidOfFile> said = sought.unsure;
    say_instead(files_saying(library, names_in(sought), sought.checksums, going), said);
    say_left_locked(library, said);
    std::vector<std::string> words = words_of(said);
    append(files_past_the_lock(library, sought.checksums, going), words);
    return words;
}

constexpr const char* not_sought =
    "What it was is not known any more, so nothing else could be looked for: qturn verify names "
    "the "
    "files that are in no record; look whose they are.";

void look_for(Library& library, const std::optional<ErasureSought>& sought, Erased& erased) {
    if (!sought) return erased.left.push_back(not_sought);
    if (!sought->name.empty()) {
        append(words_of_places_left(places_naming(library.database(), names_in(*sought))),
               erased.left);
        erased.alike = named_with_a_part(library, sought->weddings, sought->name);
    }
    append(words_of_files(library, *sought, {}), erased.left);
}

struct GoneOn {
    std::vector<Erased> erasures;
    std::vector<std::string> undone;  // sentences
};

void finish_records(Library& library, GoneOn& gone) try {
    ErasureTable(library.database()).finish();
    for (Erased& erased : gone.erasures) erased.erasure.finished = true;
} catch (const StoreError& error) {
    gone.undone.emplace_back(error.what());
}

// The move lock must be held. Searched for what is left once the files are gone.
GoneOn go_on(Library& library) {
    GoneOn gone{{}, remove_listed(library)};
    for (const UnfinishedErasure& one : ErasureTable(library.database()).unfinished()) {
        Erased erased{one.erasure, {}, {}};
        if (gone.undone.empty()) look_for(library, one.sought, erased);
        gone.erasures.push_back(std::move(erased));
    }
    if (gone.undone.empty()) finish_records(library, gone);
    return gone;
}

std::string not_finished(const Erasure& erasure) {
    return "What was erased on " + iso_text(erasure.on) +
           " is gone from the records, but the erasure is not finished. " + goes_on_by_itself +
           " What else to look for is said when it is finished.";
}

void add_finished(Library& library, const Erased& erased, std::vector<std::string>& words) {
    words.push_back("The erasure of " + iso_text(erased.erasure.on) +
                    " was interrupted, and is finished now.");
    append(erased.left, words);
    append(erased.alike, words);
    for (const Backup& backup : library.backups().before_erasure(erased.erasure.id)) {
        words.push_back("The backup in " + place_words(backup) +
                        " may hold what is erased: the next backup to it removes it there.");
    }
    words.emplace_back(erasure_caution);
}

}  // namespace

std::vector<std::string> left_beforehand(Library& library, const ErasurePlan& plan) {
    FilesToGo found = files_of(library, plan);
    std::set<std::string> going{found.files.begin(), found.files.end()};
    return words_of_files(library, sought_of(library, plan, std::move(found.unsure)), going);
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
    ErasureTable(library.database()).erase(what);
    GoneOn gone = go_on(library);
    Erased erased = std::move(gone.erasures.back());
    if (gone.undone.empty()) return erased;
    gone.undone.push_back(not_finished(erased.erasure));
    erased.left.insert(erased.left.begin(), gone.undone.begin(), gone.undone.end());
    return erased;
}

std::vector<std::string> finish_erasures(Library& library) {
    if (!ErasureTable(library.database()).any_unfinished()) return {};
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    const GoneOn gone = go_on(library);
    std::vector<std::string> words = gone.undone;
    for (const Erased& erased : gone.erasures) {
        if (erased.erasure.finished) {
            add_finished(library, erased, words);
        } else {
            append(erased.left, words);
            words.push_back(not_finished(erased.erasure));
        }
    }
    if (gone.erasures.empty() && !words.empty()) words.emplace_back(goes_on_by_itself);
    return words;
}

}  // namespace quarterturn
