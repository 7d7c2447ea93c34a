#pragma once
// What a disk holds after the power went: everything that is written below a folder is recorded, by
// the program's own file system and by SQLite's, and played again up to any moment. What had been
// synced by then is there; of the rest nothing, all, or any part, in any order, as a disk may have
// it. A name counts as synced only when its folder was, which is stricter than most disks are.

#include <sqlite3.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <mutex>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "indexer/disk/file_system.h"
#include "tests/support/files.h"

namespace quarterturn {

enum class Happened { write, cut_short, name, unname, rename, make_folder, sync_file, sync_folder };

struct DiskEvent {
    Happened what;
    int file = 0;         // what a name leads to
    std::string path{};   // of a name or folder; of a rename, the new one
    std::string from{};   // of a rename
    std::int64_t at = 0;  // of a write; the new length of what is cut short
    std::string bytes{};
};

class DiskLog {
  public:
    // What lies below the folder now counts as synced long ago.
    explicit DiskLog(Path root) : root_(std::move(root)) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root_)) {
            const std::string path = entry.path().string();
            if (entry.is_directory()) folders_.insert(path);
            if (!entry.is_regular_file()) continue;
            const auto bytes = read_bytes(entry.path());
            at_first_[++files_] = {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
            names_at_first_[path] = files_;
        }
        names_ = names_at_first_;
    }

    bool watches(const Path& file) const { return file.string().starts_with(root_.string() + "/"); }
    int file_called(const Path& path) {
        const std::scoped_lock lock(busy_);
        return names_.at(path.string());
    }
    int add_file(const Path& path) {
        const std::scoped_lock lock(busy_);
        names_[path.string()] = ++files_;
        events_.push_back({.what = Happened::name, .file = files_, .path = path.string()});
        return files_;
    }
    void add(DiskEvent event) {
        const std::scoped_lock lock(busy_);
        if (event.what == Happened::name) names_[event.path] = event.file;
        if (event.what == Happened::unname) names_.erase(event.path);
        if (event.what == Happened::rename) {
            event.file = names_.at(event.from);
            names_.erase(event.from);
            names_[event.path] = event.file;
        }
        events_.push_back(std::move(event));
    }
    std::size_t moment() {
        const std::scoped_lock lock(busy_);
        return events_.size();
    }
    const std::vector<DiskEvent>& events() const { return events_; }

    // Lays out what the disk holds when the power goes before event `moment`. Each event that had
    // not been synced happened with that chance, a write perhaps in part.
    void lay_out(std::size_t moment, double chance, std::minstd_rand& random,
                 const Path& to) const {
        std::map<int, std::string> contents = at_first_;
        std::map<std::string, int> names = names_at_first_;
        std::set<std::string> folders = folders_;
        for (std::size_t i = 0; i < moment; ++i) {
            const bool whole = synced_at()[i] < moment;
            if (!whole && std::bernoulli_distribution(1 - chance)(random)) continue;
            const bool torn = !whole && chance < 1 && random() % 4 == 0;
            play(events_[i], torn, contents, names, folders);
        }
        write(contents, names, folders, to);
    }

  private:
    static std::string folder_of(const std::string& path) {
        return Path(path).parent_path().string();
    }

    // The number of the event that made sure of each, or past all of them.
    const std::vector<std::size_t>& synced_at() const {
        for (std::size_t i = synced_at_.size(); i < events_.size(); ++i) {
            std::size_t later = i + 1;
            while (later < events_.size() && !makes_sure(events_[later], events_[i])) ++later;
            synced_at_.push_back(later);
        }
        return synced_at_;
    }

    static bool makes_sure(const DiskEvent& sync, const DiskEvent& of) {
        if (of.what == Happened::write || of.what == Happened::cut_short) {
            return sync.what == Happened::sync_file && sync.file == of.file;
        }
        return sync.what == Happened::sync_folder && sync.path == folder_of(of.path);
    }

    static void play(const DiskEvent& event, bool torn, std::map<int, std::string>& contents,
                     std::map<std::string, int>& names, std::set<std::string>& folders) {
        constexpr std::size_t sector = 512;
        switch (event.what) {
            case Happened::write: {
                std::string& file = contents[event.file];
                const std::size_t length =
                    torn ? event.bytes.size() / 2 / sector * sector : event.bytes.size();
                const auto at = static_cast<std::size_t>(event.at);
                if (file.size() < at + length) file.resize(at + length);
                file.replace(at, length, event.bytes, 0, length);
                break;
            }
            case Happened::cut_short:
                contents[event.file].resize(static_cast<std::size_t>(event.at));
                break;
            case Happened::rename:
                names.erase(event.from);
                names[event.path] = event.file;
                break;
            case Happened::name:
                names[event.path] = event.file;
                break;
            case Happened::unname:
                names.erase(event.path);
                folders.erase(event.path);
                break;
            case Happened::make_folder:
                folders.insert(event.path);
                break;
            case Happened::sync_file:
            case Happened::sync_folder:
                break;
        }
    }

    // A name in a folder that is not there is lost with it.
    void write(const std::map<int, std::string>& contents, const std::map<std::string, int>& names,
               const std::set<std::string>& folders, const Path& to) const {
        std::filesystem::create_directories(to);
        const auto there = [&](const std::string& path) {
            return to / Path(path).lexically_relative(root_);
        };
        for (const std::string& folder : folders) {
            if (std::filesystem::exists(there(folder).parent_path())) {
                std::filesystem::create_directory(there(folder));
                std::filesystem::permissions(there(folder), std::filesystem::perms::owner_all);
            }
        }
        for (const auto& [path, file] : names) {
            if (!std::filesystem::exists(there(path).parent_path())) continue;
            const auto found = contents.find(file);
            std::ofstream stream(there(path), std::ios::binary);
            if (found != contents.end()) stream << found->second;
        }
    }

    Path root_;
    mutable std::mutex busy_;
    int files_ = 0;
    std::map<int, std::string> at_first_;
    std::map<std::string, int> names_at_first_;
    std::set<std::string> folders_;
    std::map<std::string, int> names_;
    std::vector<DiskEvent> events_;
    mutable std::vector<std::size_t> synced_at_;  // once nothing is recorded any longer
};

// The real disk; what is changed below the log's folder is noted there once it is done.
class RecordingDisk : public FileSystem {
  public:
    explicit RecordingDisk(DiskLog& log) : log_(&log) {}

    FileState state(const Path& file) override { return real_.state(file); }
    bool exists(const Path& file) override { return real_.exists(file); }
    bool is_folder(const Path& path) override { return real_.is_folder(path); }
    Bytes read(const Path& file, std::int64_t most_bytes) override {
        return real_.read(file, most_bytes);
    }
    Bytes read_front(const Path& file, std::int64_t most_bytes) override {
        return real_.read_front(file, most_bytes);
    }
    void read_through(const Path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override {
        real_.read_through(file, take);
    }
    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        real_.read_back(file, take);
    }
    void write_new(const Path& file, std::span<const std::byte> bytes) override {
        real_.write_new(file, bytes);
        if (!log_->watches(file)) return;
        const int added = log_->add_file(file);
        log_->add({.what = Happened::write,
                   .file = added,
                   .bytes = {reinterpret_cast<const char*>(bytes.data()), bytes.size()}});
    }
    void sync_file(const Path& file) override {
        real_.sync_file(file);
        if (log_->watches(file)) {
            log_->add({.what = Happened::sync_file, .file = log_->file_called(file)});
        }
    }
    void sync_folder(const Path& folder) override {
        real_.sync_folder(folder);
        log_->add({.what = Happened::sync_folder, .path = folder.string()});
    }
    void rename_new(const Path& from, const Path& to) override {
        real_.rename_new(from, to);
        renamed(from, to);
    }
    void rename_over(const Path& from, const Path& to) override {
        real_.rename_over(from, to);
        renamed(from, to);
    }
    void link_new(const Path& existing, const Path& name) override {
        real_.link_new(existing, name);
        if (!log_->watches(name)) return;
        log_->add(
            {.what = Happened::name, .file = log_->file_called(existing), .path = name.string()});
    }
    void remove(const Path& file) override {
        real_.remove(file);
        log_->add({.what = Happened::unname, .path = file.string()});
    }
    void remove_empty_folder(const Path& folder) override {
        real_.remove_empty_folder(folder);
        log_->add({.what = Happened::unname, .path = folder.string()});
    }
    // New ones are synced, as the real disk's are.
    void make_folders(const Path& folder) override {
        std::vector<Path> made;
        for (Path each = folder; !each.empty() && !real_.exists(each); each = each.parent_path()) {
            made.insert(made.begin(), each);
        }
        real_.make_folders(folder);
        for (const Path& each : made) {
            log_->add({.what = Happened::make_folder, .path = each.string()});
            log_->add({.what = Happened::sync_folder, .path = each.parent_path().string()});
        }
    }
    std::vector<Path> list(const Path& folder) override { return real_.list(folder); }
    std::int64_t free_bytes(const Path& folder) override { return real_.free_bytes(folder); }

  private:
    void renamed(const Path& from, const Path& to) {
        if (!log_->watches(to)) return;
        log_->add({.what = Happened::rename, .path = to.string(), .from = from.string()});
    }

    FileSystem& real_ = real_file_system();
    DiskLog* log_;
};

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
