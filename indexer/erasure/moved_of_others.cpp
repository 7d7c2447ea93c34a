#include "indexer/erasure/moved_of_others.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/erasure/recorded_checksums.h"

namespace quarterturn {
namespace {

constexpr const char* is_put_back =
    " is a recorded file, and none of what is erased; it was moved there by hand: leave it there, "
    "and check every file (qturn verify), which puts it back.";

class MovedSearch {
  public:
    MovedSearch(Library& library, const std::set<std::string>& gone) : library_(library) {
        std::erase_if(places_, [&](const auto& file) { return gone.contains(file.first); });
        for (const StoredFile& photo : library.photos().stored_files()) sizes_.insert(photo.bytes);
        for (const ConsentPaper& paper : library.consents().papers()) sizes_.insert(paper.bytes);
        for (const Inspiration& brought : library.inspirations().all()) note_size(brought.path);
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
    // The records do not know it, so where one is gone every file is read.
    void note_size(const Path& picture) try {
        const auto state = state_if_there(library_.disk(), library_.folder() / picture);
        if (state) sizes_.insert(state->bytes);
        any_size_ = any_size_ || !state;
    } catch (const DiskError&) {
        any_size_ = true;
    }

    void look_at(const Path& file) try {
        const std::string path = file.lexically_relative(library_.folder()).generic_string();
        if (recorded_.contains(path) || std::filesystem::is_symlink(file)) return;
        const FileState state = library_.disk().state(file);
        if (!state.regular || !may_be_recorded(state.bytes)) return;
        const auto [from, to] = places_.equal_range(sha256_of_file(library_.disk(), file));
        if (from == to) return;
        moved_.paths.insert(path);
        const bool all_there = std::all_of(from, to, [&](const auto& recorded) {
            return library_.disk().exists(library_.folder() / recorded.second);
        });
        if (all_there) return;  // it is a copy
        moved_.said.push_back({file, file.string() + is_put_back});
    } catch (const DiskError&) {
        return;  // it is named as what could not be read
    } catch (const std::filesystem::filesystem_error&) {
        return;
    }

    bool may_be_recorded(std::int64_t bytes) const { return any_size_ || sizes_.contains(bytes); }

    Library& library_;
    const std::set<std::string> recorded_{paths_in_records(library_)};
    RecordedByChecksum places_{recorded_by_checksum(library_)};
    std::set<std::int64_t> sizes_;
    bool any_size_ = false;
    MovedOfOthers moved_;
};

}  // namespace

MovedOfOthers moved_of_others(Library& library, const std::set<std::string>& gone) {
    return MovedSearch(library, gone).search();
}

}  // namespace quarterturn
