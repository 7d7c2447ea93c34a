#include "indexer/backup/erased_there.h"

#include "indexer/erasure/erase.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {

ErasureId last_finished_erasure(Library& library) {
    ErasureId last{};
    for (const Erasure& erasure : ErasureTable(library.database()).all()) {
        if (!erasure.finished) break;  // what is sought of it stands in the records still
        last = erasure.id;
    }
    return last;
}

std::string erased_there_words(Library& library, const Backup& backup) {
    if (!(backup.last_erasure < last_finished_erasure(library))) return {};
    return std::string(
               "An erasure is not finished there: the next backup to it goes on removing what was "
               "erased.") +
           unless_locked_since(library, backup);
}

}  // namespace quarterturn
