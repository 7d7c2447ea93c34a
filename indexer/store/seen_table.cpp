#include "indexer/store/seen_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void SeenTable::remember(const Path& source, const FileState& state, std::string_view sha256) {
    run(*database_,
        "INSERT OR REPLACE INTO seen_file (source, bytes, modified_ns, sha256) "
        "VALUES (?, ?, ?, ?)",
        source.native(), state.bytes, state.modified_ns, sha256);
}

std::optional<std::string> SeenTable::recall(const Path& source, const FileState& state) {
    return Statement(*database_,
                     "SELECT sha256 FROM seen_file "
                     "WHERE source = ? AND bytes = ? AND modified_ns = ?")
        .with(source.native(), state.bytes, state.modified_ns)
        .value<std::string>();
}

}  // namespace quarterturn
