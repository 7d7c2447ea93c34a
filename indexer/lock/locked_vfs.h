#pragma once
// How SQLite reads and writes the records of a locked library: a layer over its usual one
// (https://sqlite.org/vfs.html) that seals each page of the file and of its write-ahead log. The
// key is that of the folder on the key ring.
//
// Of the log, the headers of file and frames stay as SQLite writes them: numbers of pages, random
// salts, and a running checksum of 64 bits over what the pages hold. Who guesses a whole page byte
// for byte can see that the guess is right; it tells no more. A frame that power loss tore reads as
// zeroes while the log is being recovered, so SQLite's checksum ends the log there as ever;
// anywhere else a page that fails its seal is SQLITE_CORRUPT. The index (-shm) holds numbers only.
//
// Rollback journals and temporary files would hold pages as they are: they live in memory alone.
// Without the journal, a file that is not in WAL mode may be broken by a power cut: so are written
// only files that have no name yet.

#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// For SQLite::Database and ?vfs=. Throws std::runtime_error where SQLite refuses it.
std::string locked_vfs();

// For a file of records: the locked one when it lies in a folder on the key ring, else empty for
// SQLite's own.
std::string vfs_of_records(const Path& file);

}  // namespace quarterturn
