#include "indexer/erasure/empty_bin.h"

#include <algorithm>
#include <iterator>

#include "indexer/erasure/left_locked.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/intake/bin.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {
namespace {

struct ToLetGo {
    std::vector<Photo> photos;
    std::vector<std::string> stay;  // sentences: those of which it cannot be told
};

ToLetGo told_apart(Library& library, const std::vector<PhotoId>& ids, const LeftLocked& locked) {
    ToLetGo found;
    for (Photo& photo : library.photos().these_also_in_bin(ids)) {
        if (const auto file = locked.may_be(photo.file.bytes)) {
            found.stay.push_back(photo.file.name + " stays in the bin: " + file->string() +
                                 " stayed locked when the lock was taken off, and may be this "
                                 "photo. " +
                                 unlock_or_remove);
        } else {
            found.photos.push_back(std::move(photo));
        }
    }
    return found;
}

// `said` when she did it, which undo stops at.
BinEmptied let_go(Library& library, const std::vector<PhotoId>& ids, const std::string& said = {}) {
    if (ids.empty()) return {};
    const MoveLock lock(library);
    refuse_unless_alone(lock);
    LeftLocked locked(library);
    locked.remove_small_pictures();
    ToLetGo what = told_apart(library, ids, locked);
    BinEmptied emptied{static_cast<int>(what.photos.size()), std::move(what.stay)};
    if (emptied.gone == 0) return emptied;
    const FilesToGo found = files_of_photos(library, what.photos, files_without_record(library),
                                            OtherStrays::passed_over);
    std::vector<PhotoId> going;
    for (const Photo& photo : what.photos) going.push_back(photo.id);
    Transaction both(library.database());
    ErasureTable(library.database()).let_go(going, found.files);
    if (!said.empty()) library.history().stop_at(said);
    both.commit();
    std::vector<std::string> undone = finish_alone(library);
    if (!undone.empty()) undone.emplace_back(goes_on_by_itself);
    std::ranges::move(undone, std::back_inserter(emptied.left));
    for (const auto& more : {found.unsure, locked.said()}) {
        for (const SaidOfFile& said : more) emptied.left.push_back(said.words);
    }
    return emptied;
}

std::vector<PhotoId> to_leave(Library& library, Date today) {
    const Date sure = library.bin().note_opening(today);
    return library.bin().since_or_before(Date(std::chrono::local_days(sure) - kept_in_bin));
}

}  // namespace

BinEmptied empty_bin(Library& library) {
    std::vector<PhotoId> ids;
    for (const BinnedPhoto& binned : library.bin().all()) ids.push_back(binned.photo.id);
    return let_go(library, ids, "emptied the bin");
}

bool any_to_leave_bin(Library& library, Date today) {
    const auto ids = to_leave(library, today);
    return !ids.empty() && !told_apart(library, ids, LeftLocked(library)).photos.empty();
}

BinEmptied let_go_of_bin(Library& library, Date today) {
    BinEmptied emptied = let_go(library, to_leave(library, today));
    if (emptied.gone == 0) emptied.left.clear();
    return emptied;
}

}  // namespace quarterturn
