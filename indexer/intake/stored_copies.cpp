#include "indexer/intake/stored_copies.h"

#include "indexer/disk/checksum.h"

namespace quarterturn {

bool one_file(const Path& one, const Path& other) {
    std::error_code unknown;
    return std::filesystem::equivalent(one, other, unknown);
}

StoredCopies::StoredCopies(Library& library) : library_(library) {
    for (StoredFile& stored : library.photos().stored_files()) {
        std::string sha256 = stored.sha256;
        files_.emplace(std::move(sha256), std::move(stored));
    }
}

bool StoredCopies::known_whole(const std::string& sha256, const Path& source,
                               SeenTable& seen) const {
    const auto copy = as_it_lies(sha256);
    return copy && !one_file(copy->file, source) && seen.recall(copy->file, copy->state) == sha256;
}

std::optional<FoundFile> StoredCopies::whole_copy(const std::string& sha256) const try {
    const auto copy = as_it_lies(sha256);
    if (!copy || !holds(library_.disk(), copy->file, copy->state.bytes, sha256))
        return std::nullopt;
    return copy;
} catch (const DiskError&) {
    return std::nullopt;
}

std::optional<FoundFile> StoredCopies::as_it_lies(const std::string& sha256) const try {
    const auto stored = files_.find(sha256);
    if (stored == files_.end()) return std::nullopt;
    const Path file = library_.folder() / stored->second.path;
    if (!library_.disk().exists(file)) return std::nullopt;
    const FileState state = library_.disk().state(file);
    if (!state.regular || state.bytes != stored->second.bytes) return std::nullopt;
    return FoundFile{file, state};
} catch (const DiskError&) {
    return std::nullopt;
}

}  // namespace quarterturn
