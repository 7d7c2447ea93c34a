#include "indexer/record/backup.h"

namespace quarterturn {

std::string place_words(const Backup& backup) {
    std::string words = backup.folder.string();
    if (!backup.volume.empty()) words += ", on the drive " + backup.volume;
    return words + (backup.at ? ", last made on " + iso_text(date_of(*backup.at))
                              : ", which was never whole");
}

}  // namespace quarterturn
