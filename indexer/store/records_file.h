#pragma once
// The file of the records as a whole: a copy of it, whether it is sound, whether it has changed.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* records_file_name = "records.sqlite";
// What SQLite keeps beside the records, and what the program notes there of them: which file it
// opened (records_guard.h), and how much was in it (records_known.h).
inline constexpr const char* ending_of_mark = ".opened";
inline constexpr const char* ending_of_note = ".known";
inline constexpr std::array endings_of_records{"",         "-wal",         "-shm",
                                               "-journal", ending_of_mark, ending_of_note};
// While a library is restored into a folder, its records wait in this one.
inline constexpr const char* restoring_folder_name = "restoring";

// Writes the records as they are now into a new file of its own that needs no other beside it
// (SQLite's VACUUM INTO), and syncs it; without what erasures left to be looked at in this library.
// What an interrupted copy left there is cleared away.
// Throws StoreError and DiskError.
void copy_records(Library& library, const Path& file);

// A sentence for each thing that SQLite finds wrong with the records (integrity_check,
// foreign_key_check), twenty at most. Throws StoreError when it cannot look.
std::vector<std::string> record_problems(Library& library);

// Where a copy of records goes that would be lost else: "records.sqlite.kept-1".
Path free_place_for_records(const Path& folder);

// Whether a file beside the records looks like them and is none of the program's own.
bool is_records_of_others(const Path& file);

// Removes copies beside the records that were being made when the program was interrupted. Only
// while nobody else has the library open. Throws DiskError.
void remove_unfinished_records(FileSystem& disk, const Path& library);

// A sentence for each file beside the records that looks like them and is none of the program's
// own: services that copy folders to other computers make such files of changes that were made
// there.
std::vector<std::string> records_of_others(Library& library);

// As record_problems, of a file that copy_records wrote: whether nothing is wrong with it.
bool sound_copy(const Path& file);

// Size and time of change of the records when all that was written stands in that one file: the
// same again means that nothing has changed since. Nothing while another program holds the records
// open for writing.
std::optional<FileState> settled_state(Library& library);

}  // namespace quarterturn
