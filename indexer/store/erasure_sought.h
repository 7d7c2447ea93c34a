#pragma once
// What the library is searched for once the files of an erasure are gone, kept until then so that
// an interrupted one can still say what is left.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/record/erasure.h"
#include "indexer/record/people.h"

namespace quarterturn {

struct SaidOfFile {
    Path file;
    std::string words;  // a sentence that names it
};

struct ErasureSought {
    std::string name;  // the client's, who goes as a whole; empty where one look alone does
    bool hers_alone = true;
    std::vector<std::string> checksums{};  // of what goes, and nobody else has
    std::vector<WeddingId> weddings{};     // she was of
    std::vector<SaidOfFile> unsure{};      // what may be hers, and stays
};

// Something that an erasure left to be looked at.
struct ErasureLeft {
    std::int64_t id = 0;
    Date erased_on{};
    SaidOfFile said;  // the file as it would stand on the list of those to remove; or empty
    bool told = false;
};

std::string sought_text(const ErasureSought& sought);  // JSON
// Of a text that is no such JSON: what can be read of it.
ErasureSought sought_from(std::string_view text);

}  // namespace quarterturn
