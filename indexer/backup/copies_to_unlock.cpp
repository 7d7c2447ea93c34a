#include "indexer/backup/copies_to_unlock.h"

#include "indexer/backup/backups_at_hand.h"

namespace quarterturn {
namespace {

struct CopiesAtHand {
    Path library;
    std::map<std::string, LibraryFile> files;  // by path
    std::vector<BackupSource> sources;

    std::optional<Bytes> of(const Path& file) const {
        const auto known = files.find(file.lexically_relative(library).generic_string());
        if (known == files.end()) return std::nullopt;
        for (const BackupSource& source : sources) {
            if (auto bytes = source.bytes_of(known->second)) return bytes;
        }
        return std::nullopt;
    }
};

CopiesAtHand copies_at_hand(FileSystem& disk, const Path& folder) {
    Library library = Library::open(folder, disk);
    CopiesAtHand copies{library.folder(), {}, {}};
    for (LibraryFile& file : recorded_files(library)) {
        std::string path = file.path;
        copies.files.emplace(std::move(path), std::move(file));
    }
    for (const Backup& backup : library.backups().all()) {
        if (auto source = at_hand(disk, backup)) copies.sources.push_back(std::move(*source));
    }
    return copies;
}

}  // namespace

std::function<std::optional<Bytes>(const Path& file)> copies_to_unlock(FileSystem& disk,
                                                                       const Path& folder) try {
    const auto copies = std::make_shared<const CopiesAtHand>(copies_at_hand(disk, folder));
    return [copies](const Path& file) { return copies->of(file); };
} catch (const std::runtime_error&) {
    return {};
}

}  // namespace quarterturn
