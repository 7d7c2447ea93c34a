#pragma once
// What a disk holds after the power went: everything that is written below a folder is recorded, by
// the program's own file system and by SQLite's, and played again up to any moment. What had been
// synced by then is there; of the rest nothing, all, or any part, in any order, as a disk may have
// it. A name counts as synced only when its folder was, which is stricter than most disks are.

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

}  // namespace quarterturn
