#include "indexer/store/records_unwritable.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>

namespace quarterturn {

std::string reason_against_writing(const Path& records) {
    for (const Path& place : {records, records.parent_path()}) {
        if (::faccessat(AT_FDCWD, place.c_str(), W_OK, AT_EACCESS) == 0) continue;
        if (errno == EROFS) {
            return place.string() +
                   " lies on a disk that can only be read: copy the library's folder to another "
                   "disk and open it there.";
        }
        if (errno == EACCES || errno == EPERM) {
            return place.string() +
                   " may not be changed: allow it in its permissions, or sign in as the user it "
                   "belongs to; or copy the library's folder to a place you can write in and open "
                   "it there.";
        }
    }
    return {};
}

std::string no_room_sentence(const Path& library) {
    return "There is no room left on the disk that holds " + library.string() +
           ": free some there, and open the library again. What was saved before is kept.";
}

void refuse_unless_writable(const Path& records) {
    const std::string reason = reason_against_writing(records);
    if (!reason.empty()) throw RecordsUnwritable(reason);
}

}  // namespace quarterturn
