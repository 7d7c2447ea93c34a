#include "indexer/erasure/moved_of_others.h"

#include <algorithm>
#include <map>

#include "indexer/disk/checksum.h"

namespace quarterturn {
namespace {

constexpr const char* is_put_back =
    " is a recorded photo, and none of what is erased; it was moved there by hand: leave it there, "
    "and check every file (qturn verify), which puts it back.";

class MovedSearch {
  public:
    MovedSearch(Library& library, const std::vector<std::string>& gone) : library_(library) {
        const std::set<std::string> erased(gone.begin(), gone.end());
        for (const StoredFile& photo : library.photos().stored_files()) {
            recorded_.insert(photo.path);
            if (erased.contains(photo.sha256)) continue;
            sizes_.insert(photo.bytes);
            places_.emplace(photo.sha256, photo.path);
        }
    }

    MovedOfOthers search() {
        const auto passed_over = [&](const Path& entry) {
            const Path place = entry.lexically_relative(library_.folder());
            return place == "cache" || place == "incoming";
        };
        const FilesInReach found = files_in_reach(library_.disk(), library_.folder(), passed_over);
        for (const Path& file : found.files) look_at(file);
        return std::move(moved_);
    }

  private:
    void look_at(const Path& file) try {
        const std::string path = file.lexically_relative(library_.folder()).generic_string();
        if (recorded_.contains(path) || std::filesystem::is_symlink(file)) return;
        const FileState state = library_.disk().state(file);
        if (!state.regular || !sizes_.contains(state.bytes)) return;
        const auto place = places_.find(sha256_of_file(library_.disk(), file));
        if (place == places_.end()) return;
        moved_.paths.insert(path);
        if (library_.disk().exists(library_.folder() / place->second)) return;  // it is a copy
        moved_.said.push_back({file, file.string() + is_put_back});
    } catch (const DiskError&) {
        return;  // it is named as what could not be read
    } catch (const std::filesystem::filesystem_error&) {
        return;
    }

    Library& library_;
    std::set<std::string> recorded_;
    std::set<std::int64_t> sizes_;
    std::map<std::string, std::string> places_;  // by checksum
    MovedOfOthers moved_;
};

}  // namespace

MovedOfOthers moved_of_others(Library& library, const std::vector<std::string>& gone) {
    return MovedSearch(library, gone).search();
}

}  // namespace quarterturn
