#include "indexer/backup/copies_to_unlock.h"

#include "indexer/backup/backups_at_hand.h"
#include "indexer/store/recorded_and_missing.h"

namespace quarterturn {
namespace {

class CopiesAtHand {
  public:
    CopiesAtHand(FileSystem& disk, const Path& folder)
        : folder_(folder), checksums_(recorded_checksums(folder)) {
        for (const Backup& backup : recorded_backups(folder)) {
            if (auto source = at_hand(disk, backup)) sources_.push_back(std::move(*source));
        }
    }

    std::optional<Bytes> of(const Path& file) const {
        const std::string path = file.lexically_relative(folder_).generic_string();
        const auto sha256 = checksums_.find(path);
        const bool recorded = sha256 != checksums_.end();
        for (const BackupSource& source : sources_) {
            auto bytes = recorded ? source.bytes_of({path, sha256->second}) : source.bytes_at(path);
            if (bytes) return bytes;
        }
        return std::nullopt;
    }

  private:
    Path folder_;
    std::map<std::string, std::string> checksums_;
    std::vector<BackupSource> sources_;
};

}  // namespace

std::function<std::optional<Bytes>(const Path& file)> copies_to_unlock(FileSystem& disk,
                                                                       const Path& folder) {
    const Path place = std::filesystem::absolute(folder).lexically_normal();
    return [&disk, place, copies = std::shared_ptr<const CopiesAtHand>()](
               const Path& file) mutable {
        if (!copies) copies = std::make_shared<const CopiesAtHand>(disk, place);
        return copies->of(file);
    };
}

}  // namespace quarterturn
