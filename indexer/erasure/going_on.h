#pragma once
// What is done of erasures once the records are gone: removing the files, and looking for what is
// left. The move lock must be held.

#include "indexer/erasure/erase.h"
#include "indexer/store/erasure_sought.h"

namespace quarterturn {

struct GoneOn {
    std::vector<Erased> erasures;
    std::vector<std::string> undone;  // sentences: what the disk did not do
};

// Throws StoreError.
GoneOn go_on(Library& library);

// For who did not ask for it now.
std::vector<std::string> words_of(Library& library, const GoneOn& gone);
std::string not_finished(const Erasure& erasure);

// What the library's files hold, or may hold, of what is sought; `going` are passed over.
std::vector<SaidOfFile> said_of_files(Library& library, const ErasureSought& sought,
                                      const std::set<std::string>& going);
std::vector<std::string> words_of(const std::vector<SaidOfFile>& said);

}  // namespace quarterturn
