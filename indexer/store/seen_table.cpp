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
    if (!recalled_) {
        recalled_ = std::make_shared<Statement>(
            *database_,
            "SELECT sha256 FROM seen_file WHERE source = ? AND bytes = ? AND modified_ns = ?");
    }
    auto sha256 =
        recalled_->with(source.native(), state.bytes, state.modified_ns).value<std::string>();
    if (sha256) recalled_->run();  // to its end, where it lets go of the records
    return sha256;
}

}  // namespace quarterturn
