#include "indexer/backup/recovery_key_place.h"

#include "indexer/disk/lies_in.h"

namespace quarterturn {

std::string reason_against_recovery_key_in(Library& library, const Path& file) {
    for (const Backup& backup : library.backups().all()) {
        if (!lies_in(file, backup.folder)) continue;
        return file.string() + " lies in the backup in " + backup.folder.string() +
               ", which the recovery key opens: name a place apart from that drive.";
    }
    return {};
}

}  // namespace quarterturn
