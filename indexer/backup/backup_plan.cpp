#include "indexer/backup/backup_plan.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

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
        std::unordered_set<std::string_view> places;
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

    void add_obsolete(const std::unordered_set<std::string_view>& places) {
        std::set<std::string> obsolete;
        for (const std::string& path : left_) {
            if (!places.contains(path) && !listed_records(path)) obsolete.insert(path);
        }
        for (const auto& [path, sha256] : listed_.files) {
            if (!is_records_path(path) && !places.contains(path)) obsolete.insert(path);
        }
        plan_.obsolete.assign(obsolete.begin(), obsolete.end());
    }

    bool listed_records(const std::string& path) const {
        return is_records_path(path) && listed_.files.contains(path);
    }

    const std::function<bool(const LibraryFile&)>& is_there_;
    const Manifest& listed_;
    std::set<std::string> left_;
    std::unordered_map<std::string_view, std::string_view> by_checksum_;  // of listed_
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
