#include "indexer/erasure/placed_by_hand.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/erasure/recorded_checksums.h"
#include "indexer/erasure/stray_files.h"

namespace quarterturn {
namespace {

constexpr const char* is_put_back =
    " is a recorded file, and none of what is erased; it was moved there by hand: leave it there, "
    "and check every file (qturn verify), which puts it back.";

class HandSearch {
  public:
    HandSearch(Library& library, const std::set<std::string>& gone)
        : library_(library), gone_(gone) {
        for (const StoredFile& photo : library.photos().stored_files()) sizes_.insert(photo.bytes);
        for (const ConsentPaper& paper : library.consents().papers()) sizes_.insert(paper.bytes);
        for (const Inspiration& brought : library.inspirations().all()) note_size(brought.path);
    }

    PlacedByHand search() {
        const FilesInReach found =
            files_in_reach(library_.disk(), library_.folder(), [](const Path&) { return false; });
        for (const Path& file : found.files) {
            if (!is_named_by_checksum(file)) look_at(file);
        }
        return std::move(found_);
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
        if (!state.regular || state.bytes == 0 || !may_be_recorded(state.bytes)) return;
        meet(path, sha256_of_file(library_.disk(), file));
    } catch (const DiskError&) {
        return;  // it is named as what could not be read
    } catch (const std::filesystem::filesystem_error&) {
        return;
    }

    void meet(const std::string& path, const std::string& checksum) {
        if (gone_.contains(checksum)) return found_.of_what_goes.push_back(path);
        const auto [from, to] = places_.equal_range(checksum);
        const bool all_there = std::all_of(from, to, [&](const auto& recorded) {
            return library_.disk().exists(library_.folder() / recorded.second);
        });
        if (from == to) return;
        (all_there ? found_.copies : found_.moved).insert(path);
        if (all_there) return;
        const Path file = library_.folder() / path;
        found_.said.push_back({file, file.string() + is_put_back});
    }

    bool may_be_recorded(std::int64_t bytes) const { return any_size_ || sizes_.contains(bytes); }

    Library& library_;
    const std::set<std::string>& gone_;
    const std::set<std::string> recorded_{paths_in_records(library_)};
    const RecordedByChecksum places_{recorded_by_checksum(library_)};
    std::set<std::int64_t> sizes_;
    bool any_size_ = false;
    PlacedByHand found_;
};

}  // namespace

PlacedByHand placed_by_hand(Library& library, const std::set<std::string>& gone) {
    return HandSearch(library, gone).search();
}

}  // namespace quarterturn
