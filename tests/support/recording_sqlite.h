#pragma once

#include <sqlite3.h>

#include <utility>

#include "tests/support/disk_log.h"

namespace quarterturn {

// SQLite's own file system, noting the same while it lives; one at a time.
class RecordingSqlite {
  public:
    explicit RecordingSqlite(DiskLog& log) {
        log_ = &log;
        real_ = sqlite3_vfs_find(nullptr);
        mine_ = *real_;
        mine_.zName = "recording";
        mine_.szOsFile = static_cast<int>(sizeof(File)) + real_->szOsFile;
        mine_.xOpen = open;
        mine_.xDelete = remove;
        sqlite3_vfs_register(&mine_, 1);
    }
    ~RecordingSqlite() {
        sqlite3_vfs_unregister(&mine_);
        sqlite3_vfs_register(real_, 1);
    }
    RecordingSqlite(const RecordingSqlite&) = delete;
    RecordingSqlite& operator=(const RecordingSqlite&) = delete;

  private:
    struct File : sqlite3_file {
        int number = 0;       // in the log; 0 when it is not watched
        std::string* name{};  // of a new journal, whose folder is synced with it at first
        sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
    };
    static File& of(sqlite3_file* file) { return *static_cast<File*>(file); }

    static int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out) {
        auto& mine = *new (file) File;
        constexpr int kinds = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL;
        const bool watched = name != nullptr && (flags & kinds) != 0 && log_->watches(name);
        const bool is_new = watched && !std::filesystem::exists(name);
        const int result = real_->xOpen(real_, name, mine.real(), flags, out);
        mine.pMethods = mine.real()->pMethods != nullptr ? methods() : nullptr;
        if (result != SQLITE_OK || !watched) return result;
        if (is_new && !std::filesystem::exists(name)) return result;
        mine.number = is_new ? log_->add_file(name) : log_->file_called(name);
        if (is_new && (flags & SQLITE_OPEN_MAIN_DB) == 0) mine.name = new std::string(name);
        return result;
    }
    static int remove(sqlite3_vfs*, const char* name, int sync_folder) {
        const bool there = std::filesystem::exists(name);
        const int result = real_->xDelete(real_, name, sync_folder);
        if (!there || !log_->watches(name)) return result;
        log_->add({.what = Happened::unname, .path = name});
        if (sync_folder != 0) synced_folder_of(name);
        return result;
    }
    static void synced_folder_of(const std::string& name) {
        log_->add({.what = Happened::sync_folder, .path = Path(name).parent_path().string()});
    }
    static int close(sqlite3_file* file) {
        delete of(file).name;
        return of(file).real()->pMethods->xClose(of(file).real());
    }
    static int write(sqlite3_file* file, const void* bytes, int length, sqlite3_int64 at) {
        const int result = of(file).real()->pMethods->xWrite(of(file).real(), bytes, length, at);
        if (of(file).number == 0) return result;
        log_->add({.what = Happened::write,
                   .file = of(file).number,
                   .at = at,
                   .bytes = {static_cast<const char*>(bytes), static_cast<std::size_t>(length)}});
        return result;
    }
    static int truncate(sqlite3_file* file, sqlite3_int64 length) {
        const int result = of(file).real()->pMethods->xTruncate(of(file).real(), length);
        if (of(file).number == 0) return result;
        log_->add({.what = Happened::cut_short, .file = of(file).number, .at = length});
        return result;
    }
    static int sync(sqlite3_file* file, int flags) {
        const int result = of(file).real()->pMethods->xSync(of(file).real(), flags);
        if (of(file).number == 0) return result;
        log_->add({.what = Happened::sync_file, .file = of(file).number});
        if (of(file).name == nullptr) return result;
        synced_folder_of(*of(file).name);
        delete std::exchange(of(file).name, nullptr);
        return result;
    }

    template <auto Method, class... Values>
    static auto forward(sqlite3_file* file, Values... values) {
        sqlite3_file* real = of(file).real();
        return (real->pMethods->*Method)(real, values...);
    }
    // Without memory maps (version 2), through which bytes could pass unseen.
    static const sqlite3_io_methods* methods() {
        using Io = sqlite3_io_methods;
        static const Io all{2,
                            close,
                            forward<&Io::xRead, void*, int, sqlite3_int64>,
                            write,
                            truncate,
                            sync,
                            forward<&Io::xFileSize, sqlite3_int64*>,
                            forward<&Io::xLock, int>,
                            forward<&Io::xUnlock, int>,
                            forward<&Io::xCheckReservedLock, int*>,
                            forward<&Io::xFileControl, int, void*>,
                            forward<&Io::xSectorSize>,
                            forward<&Io::xDeviceCharacteristics>,
                            forward<&Io::xShmMap, int, int, int, void volatile**>,
                            forward<&Io::xShmLock, int, int, int>,
                            forward<&Io::xShmBarrier>,
                            forward<&Io::xShmUnmap, int>,
                            nullptr,
                            nullptr};
        return &all;
    }

    inline static DiskLog* log_ = nullptr;
    inline static sqlite3_vfs* real_ = nullptr;
    inline static sqlite3_vfs mine_{};
};

}  // namespace quarterturn
