#include "indexer/backup/backup_plan.h"

#include <algorithm>
#include <set>
#include <unordered_map>

namespace quarterturn {
namespace {

class Planning {
  public:
    Planning(const Manifest& listed, const std::vector<std::string>& unfinished,
             const std::function<bool(const LibraryFile&)>& is_there)
        : is_there_(is_there), listed_(listed), left_(unfinished.begin(), unfinished.end()) {
        for (const auto& [path, sha256] : listed.files) by_checksum_.emplace(sha256, path);
    }

    BackupPlan plan(const std::vector<LibraryFile>& wanted) {
        std::set<std::string> places;
        for (const LibraryFile& file : wanted) {
            add(file);
            places.insert(file.path);
        }
        add_obsolete(places);
        return std::move(plan_);
    }

  private:
    void add(const LibraryFile& file) {
        const auto listed = listed_.files.find(file.path);
        const bool named = listed != listed_.files.end();
        if (named && listed->second == file.sha256) {
            return is_there_(file) ? plan_.there.push_back(file) : write(file, file.path);
        }
        write(file, named ? std::string(moving_name) + '/' + file.sha256 : file.path);
    }

    void write(const LibraryFile& file, std::string place) {
        PlannedFile planned{file, std::move(place)};
        planned.ours = left_.contains(planned.place) || listed_.files.contains(planned.place);
        const auto same = by_checksum_.find(file.sha256);
        if (same != by_checksum_.end() && same->second != planned.place) {
            planned.same_bytes = same->second;
        } else {
            plan_.bytes += std::max<std::int64_t>(file.bytes, 0);
        }
        plan_.to_write.push_back(std::move(planned));
    }

    void add_obsolete(const std::set<std::string>& places) {
        std::set<std::string> ours = left_;
        for (const auto& [path, sha256] : listed_.files) {
            if (!is_records_path(path)) ours.insert(path);
        }
        for (const std::string& path : ours) {
            if (!places.contains(path) && !listed_records(path)) plan_.obsolete.push_back(path);
        }
    }

    bool listed_records(const std::string& path) const {
        return is_records_path(path) && listed_.files.contains(path);
    }

    const std::function<bool(const LibraryFile&)>& is_there_;
    const Manifest& listed_;
    std::set<std::string> left_;
    std::unordered_map<std::string, std::string> by_checksum_;
    BackupPlan plan_;
};

}  // namespace

bool BackupPlan::any_in_the_way() const {
    return std::ranges::any_of(
        to_write, [](const PlannedFile& planned) { return planned.place != planned.file.path; });
}

BackupPlan plan_backup(const Manifest& listed, const std::vector<std::string>& unfinished,
                       const std::vector<LibraryFile>& wanted,
                       const std::function<bool(const LibraryFile&)>& is_there) {
    return Planning(listed, unfinished, is_there).plan(wanted);
}

}  // namespace quarterturn
