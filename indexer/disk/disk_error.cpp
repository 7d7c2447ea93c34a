#include "indexer/disk/disk_error.h"

#include <cerrno>
#include <system_error>

namespace quarterturn {
namespace {

std::string participle(Doing doing) {
    switch (doing) {
        case Doing::reading:
            return "read";
        case Doing::writing:
            return "written";
        case Doing::moving:
            return "moved";
        case Doing::linking:
            return "given a second name";
        case Doing::removing:
            return "removed";
        case Doing::making_folder:
            return "made";
    }
    return "used";
}

std::string in_words(int error_number) {
    return std::error_code(error_number, std::generic_category()).message();
}

std::string sentence(int error_number, const Path& path, Doing doing) {
    const std::string file = path.string();
    const std::string done = participle(doing);
    switch (error_number) {
        case ENOSPC:
        case EDQUOT:
            return "There is no room left on the disk that holds " + file +
                   ": free some and start again; nothing was lost.";
        case EACCES:
        case EPERM:
            return file + " may not be " + done + ": allow it in " +
                   (doing == Doing::reading ? "its" : "its folder's") +
                   " permissions, or sign in as the user it belongs to, and try again.";
        case EROFS:
            return file +
                   " lies on a disk that can only be read: slide off the card's lock, or "
                   "choose another place.";
        case ENOENT:
        case ENODEV:
        case ENXIO:
        case ESTALE:
            if (doing == Doing::writing) {
                return file +
                       " cannot be written, since its folder is not there or takes no files: see "
                       "that its disk is connected, or name another place.";
            }
            return file +
                   " is not there: if it was moved, say where it is now; if a card was "
                   "taken out, put it back and try again.";
        case EIO:
            return file + " could not be " + done +
                   " because the card or disk does not answer: see that it sits firmly and try "
                   "again; if that fails, copy what you can and stop using it.";
        case EBADMSG:
            return file +
                   " is damaged: check the library (qturn verify), which puts it back from a "
                   "backup "
                   "where one holds it.";
        case ENAMETOOLONG:
            return "The name " + file + " is too long for this disk: choose a shorter one.";
        case EEXIST:
            return file + " is there already and was left as it is: choose another name.";
        case ENOTEMPTY:
            return "The folder " + file +
                   " still holds something and was left as it is: empty it first.";
        case EISDIR:
            return file + " is a folder: name a file.";
        case ENOTDIR:
            return file +
                   " cannot be there, since part of its path is no folder: name another "
                   "place.";
        case ELOOP:
            return file +
                   " is a link, and links are not written through: name the file it leads "
                   "to.";
        case EFBIG:
            return file + " is too large to be " + done +
                   " here: leave it out, or choose a disk "
                   "that takes larger files.";
        case EXDEV:
            return file +
                   " could not be moved, since the new place is on another disk: copy it "
                   "instead.";
        case ENOTSUP:
        case ENOSYS:
            return file + " could not be " + done +
                   ", since its disk cannot do that: use a disk "
                   "formatted for this computer.";
        case EMFILE:
        case ENFILE:
            return file + " could not be " + done +
                   ", since too many files are open: close other "
                   "programs and try again.";
        case EBUSY:
        case ETXTBSY:
        case EAGAIN:
            return file + " is in use by another program: close that and try again.";
        default:
            return file + " could not be " + done + " (" + in_words(error_number) +
                   "): try again, and if it fails again, choose another place.";
    }
}

}  // namespace

bool DiskError::disk_full() const {
    return error_number_ == ENOSPC || error_number_ == EDQUOT;
}

bool DiskError::not_empty() const {
    return error_number_ == ENOTEMPTY || error_number_ == EEXIST;
}

bool DiskError::not_allowed() const {
    return error_number_ == EACCES || error_number_ == EPERM;
}

bool DiskError::damaged() const {
    return error_number_ == EBADMSG;
}

DiskError disk_error(int error_number, const Path& file, Doing doing) {
    return {sentence(error_number, file, doing), file, error_number};
}

}  // namespace quarterturn
