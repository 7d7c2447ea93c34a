#include "indexer/lock/locked_vfs.h"

#include <sqlite3.h>

#include <algorithm>
#include <new>
#include <stdexcept>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/locked_records_file.h"

namespace quarterturn {
namespace {

constexpr const char* vfs_name = "quarterturn-locked";

sqlite3_vfs* usual() {
    return sqlite3_vfs_find(nullptr);
}

int open_memory(sqlite3_file* file, int flags, int* flags_out) {
    auto* const memory = new (file) MemoryFile{};
    memory->pMethods = memory_file_methods();
    if (flags_out != nullptr) *flags_out = flags;
    return SQLITE_OK;
}

int open_sealed(const char* name, sqlite3_file* file, int flags, int* flags_out) {
    KeysInHand keys = key_ring::of_file(name);
    if (keys == nullptr) return SQLITE_CANTOPEN;
    const PageOf kind = (flags & SQLITE_OPEN_WAL) != 0 ? PageOf::log : PageOf::records;
    auto* const sealed = new (file) SealedFile(kind, std::move(keys), usual()->szOsFile);
    const int result = usual()->xOpen(usual(), name, sealed->real(), flags, flags_out);
    if (result == SQLITE_OK) {
        sealed->pMethods = sealed_file_methods();
        return SQLITE_OK;
    }
    if (sealed->real()->pMethods != nullptr) sealed->real()->pMethods->xClose(sealed->real());
    sealed->~SealedFile();
    file->pMethods = nullptr;
    return result;
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* flags_out) try {
    file->pMethods = nullptr;
    const bool sealed = (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_WAL)) != 0 && name != nullptr;
    return sealed ? open_sealed(name, file, flags, flags_out) : open_memory(file, flags, flags_out);
} catch (const std::exception&) {
    file->pMethods = nullptr;
    return SQLITE_CANTOPEN;
}

// A journal that lived in memory is not there to be removed.
int remove(sqlite3_vfs*, const char* name, int sync_folder) {
    const int result = usual()->xDelete(usual(), name, sync_folder);
    return result == SQLITE_IOERR_DELETE_NOENT ? SQLITE_OK : result;
}

template <auto Method, class... Values>
auto forward_usual(sqlite3_vfs*, Values... values) {
    return (usual()->*Method)(usual(), values...);
}

sqlite3_vfs make_vfs() {
    using Vfs = sqlite3_vfs;
    sqlite3_vfs vfs{};
    vfs.iVersion = 2;
    vfs.szOsFile = static_cast<int>(std::max(sizeof(SealedFile), sizeof(MemoryFile)));
    vfs.mxPathname = usual()->mxPathname;
    vfs.zName = vfs_name;
    vfs.xOpen = open;
    vfs.xDelete = remove;
    vfs.xAccess = forward_usual<&Vfs::xAccess, const char*, int, int*>;
    vfs.xFullPathname = forward_usual<&Vfs::xFullPathname, const char*, int, char*>;
    vfs.xRandomness = forward_usual<&Vfs::xRandomness, int, char*>;
    vfs.xSleep = forward_usual<&Vfs::xSleep, int>;
    vfs.xCurrentTime = forward_usual<&Vfs::xCurrentTime, double*>;
    vfs.xGetLastError = forward_usual<&Vfs::xGetLastError, int, char*>;
    vfs.xCurrentTimeInt64 = forward_usual<&Vfs::xCurrentTimeInt64, sqlite3_int64*>;
    return vfs;
}

}  // namespace

std::string locked_vfs() {
    static sqlite3_vfs vfs = make_vfs();
    static const int registered = sqlite3_vfs_register(&vfs, 0);
    if (registered != SQLITE_OK) {
        throw std::runtime_error("This computer's SQLite library takes no locked records.");
    }
    return vfs_name;
}

std::string vfs_of_records(const Path& file) {
    return key_ring::of_file(file) == nullptr ? std::string{} : locked_vfs();
}

}  // namespace quarterturn
