#include "indexer/backup/reminder.h"

#include <algorithm>

namespace quarterturn {
namespace {

std::string counted_photos(std::int64_t count) {
    return std::to_string(count) + (count == 1 ? " photo" : " photos");
}

std::string days_words(std::chrono::days days) {
    return std::to_string(days.count()) + (days.count() == 1 ? " day" : " days");
}

}  // namespace

std::optional<std::string> backup_reminder(Library& library, Date today) {
    std::optional<Backup> last;
    for (const Backup& backup : library.backups().all()) {
        if (backup.at && (!last || *backup.at > *last->at)) last = backup;
    }
    const std::int64_t fresh = library.backups().photos_after(last ? last->last_photo : PhotoId{});
    if (fresh == 0) return std::nullopt;
    if (!last) {
        return "There is no backup yet of " + counted_photos(fresh) +
               (fresh == 1 ? " and its records" : " and their records") +
               ": make one on another drive.";
    }
    if (date_of(*last->at) > today) {
        return "The last backup says that it was made on " + iso_text(date_of(*last->at)) +
               ", which is yet to come: see that the computer's clock is right, and make one now, "
               "since " +
               counted_photos(fresh) + " came after it.";
    }
    const std::chrono::days since =
        std::chrono::local_days(today) - std::chrono::local_days(date_of(*last->at));
    if (since.count() < backup_days(library.settings())) return std::nullopt;
    return "The last backup was made " + days_words(since) + " ago, and " + counted_photos(fresh) +
           " came since: make one now.";
}

}  // namespace quarterturn
