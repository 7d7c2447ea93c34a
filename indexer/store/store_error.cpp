#include "indexer/store/store_error.h"

#include <sqlite3.h>

#include <cerrno>
#include <system_error>

namespace quarterturn {
namespace {

std::string constraint_sentence(const SQLite::Exception& error) {
    switch (error.getExtendedErrorCode()) {
        case SQLITE_CONSTRAINT_FOREIGNKEY:
            return "This belongs to a client, wedding, sitting, look, photo or device that is not "
                   "in the library: list what is there and choose one of those.";
        case SQLITE_CONSTRAINT_UNIQUE:
        case SQLITE_CONSTRAINT_PRIMARYKEY:
            return std::string("The same is there already, and cannot be there twice (") +
                   error.what() + "): leave one of the two out.";
        default:
            return std::string("The library's records cannot hold this (") + error.what() +
                   "): correct it and try again.";
    }
}

constexpr auto no_room =
    "There is no room left on the disk that holds the library: free some and try again. What was "
    "saved before is kept.";

constexpr auto not_allowed =
    "The library's records may not be changed: allow it in the permissions of its folder, or sign "
    "in as the user it belongs to.";

int primary_code(const SQLite::Exception& error) {
    constexpr int primary = 0xFF;  // the low byte of an extended result code
    return error.getErrorCode() & primary;
}

std::string disk_sentence(int system_error) {
    switch (system_error) {
        case EACCES:
        case EPERM:
        case EROFS:
            return not_allowed;
        case 0:
        case EIO:
        case ENOENT:
        case ENODEV:
        case ENXIO:
        case ESTALE:
            return "The disk that holds the library does not answer: see that it is connected and "
                   "try again. What was saved before is kept.";
        default:
            return "The library's records could not be used (" +
                   std::error_code(system_error, std::generic_category()).message() +
                   "): try again; what was saved before is kept.";
    }
}

// Also when the index of the write-ahead log could not grow, or a file beside the records not be
// made.
bool is_no_room(const SQLite::Exception& error, int system_error) {
    const int code = primary_code(error);
    if (code == SQLITE_FULL) return true;
    if (code != SQLITE_IOERR && code != SQLITE_CANTOPEN) return false;
    if (system_error == ENOSPC || system_error == EDQUOT) return true;
    return system_error == 0 && error.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE;
}

std::string sentence(const SQLite::Exception& error, int system_error) {
    switch (primary_code(error)) {
        case SQLITE_CONSTRAINT:
            return constraint_sentence(error);
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return "Another program is writing to this library: wait until it is done, and try "
                   "again. Nothing was changed.";
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return not_allowed;
        case SQLITE_CORRUPT:
            return std::string("The library's records (records.sqlite) are damaged: leave the "
                               "folder as it is, and ") +
                   restore_elsewhere + '.';
        case SQLITE_NOTADB:
            return "The library's records (records.sqlite) are no library file: make the library "
                   "again from a backup in a new place, with qturn restore or on the window's "
                   "first page, or name another folder.";
        case SQLITE_IOERR:
            return disk_sentence(system_error);
        case SQLITE_CANTOPEN:
            return "The library's records (records.sqlite) cannot be opened: see that the folder "
                   "is there and that you may write in it.";
        case SQLITE_TOOBIG:
            return "This text is too long to be kept: shorten it.";
        default:
            return std::string("The library's records could not be used (") + error.what() +
                   "): try again; what was saved before is kept.";
    }
}

}  // namespace

void throw_in_words(const SQLite::Exception& error, sqlite3* connection) {
    const int system_error = connection == nullptr ? 0 : sqlite3_system_errno(connection);
    if (is_no_room(error, system_error)) throw NoRoomForRecords(no_room);
    throw StoreError(sentence(error, system_error));
}

}  // namespace quarterturn
