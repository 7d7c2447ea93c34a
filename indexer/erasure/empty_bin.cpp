#include "indexer/erasure/empty_bin.h"

#include "indexer/erasure/left_locked.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/intake/bin.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {
namespace {

// `said` when she did it, which undo stops at.
int let_go(Library& library, const std::vector<PhotoId>& ids, const std::string& said = {}) {
    if (ids.empty()) return 0;
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    const std::vector<Photo> photos = library.photos().these_also_in_bin(ids);
    const FilesToGo found = files_of_photos(library, photos, files_without_record(library));
    Transaction both(library.database());
    ErasureTable(library.database()).let_go(ids, found.files);
    if (!said.empty()) library.history().stop_at(said);
    both.commit();
    finish_alone(library);
    return static_cast<int>(photos.size());
}

std::vector<PhotoId> to_leave(Library& library, Date today) {
    const Date sure = library.bin().note_opening(today);
    if (!left_locked(library).empty()) return {};
    return library.bin().since_or_before(Date(std::chrono::local_days(sure) - kept_in_bin));
}

}  // namespace

int empty_bin(Library& library) {
    refuse_while_left_locked(library);
    std::vector<PhotoId> ids;
    for (const BinnedPhoto& binned : library.bin().all()) ids.push_back(binned.photo.id);
    return let_go(library, ids, "emptied the bin");
}

bool any_to_leave_bin(Library& library, Date today) {
    return !to_leave(library, today).empty();
}

int let_go_of_bin(Library& library, Date today) {
    return let_go(library, to_leave(library, today));
}

}  // namespace quarterturn
