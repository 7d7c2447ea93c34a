#include "indexer/store/store_error.h"

#include <sqlite3.h>

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

std::string sentence(const SQLite::Exception& error) {
    constexpr int primary = 0xFF;  // the low byte of an extended result code
    switch (error.getErrorCode() & primary) {
        case SQLITE_CONSTRAINT:
            return constraint_sentence(error);
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return "Another program is writing to this library: wait until it is done, and try "
                   "again. Nothing was changed.";
        case SQLITE_FULL:
            return no_room;
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return "The library's records may not be changed: allow it in the permissions of its "
                   "folder, or sign in as the user it belongs to.";
        case SQLITE_CORRUPT:
            return "The library's records (records.sqlite) are damaged: leave the folder as it is, "
                   "and make the library again from a backup in a new place, with qturn restore "
                   "or on the window's first page.";
        case SQLITE_NOTADB:
            return "The library's records (records.sqlite) are no library file: make the library "
                   "again from a backup in a new place, with qturn restore or on the window's "
                   "first page, or name another folder.";
        case SQLITE_IOERR:
            // The index of the write-ahead log could not grow.
            if (error.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE) return no_room;
            return "The disk that holds the library does not answer: see that it is connected and "
                   "try again. What was saved before is kept.";
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

StoreError store_error(const SQLite::Exception& error) {
    return StoreError(sentence(error));
}

}  // namespace quarterturn
