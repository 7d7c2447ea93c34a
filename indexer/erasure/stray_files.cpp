#include "indexer/erasure/stray_files.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/intake/set_aside.h"
#include "indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

constexpr const char* may_be_of_it =
    " is in no record, so it may be of what is erased: look into it, and remove it if it is.";

bool is_link(const Path& file) {
    std::error_code unknown;
    return std::filesystem::is_symlink(file, unknown);
}

class StraySearch {
  public:
    StraySearch(Library& library, const std::vector<Photo>& photos, OtherStrays others)
        : library_(library), others_(others) {
        for (const Photo& photo : photos) {
            const Path file = photo.file.path;
            going_.insert(photo.id);
            sizes_.insert(photo.file.bytes);
            sums_.insert(photo.file.sha256);
            names_.insert({photo.file.name, file.filename().string()});
            by_folder_.emplace(file.parent_path(), file.filename().string());
        }
    }

    FilesToGo search(const FilesWithoutRecord& strays) {
        for (const std::string& path : strays.files) meet(path);
        for (const std::string& folder : strays.out_of_reach) {
            say(folder,
                " could not be looked into, so something of what is erased may lie in it: see to "
                "the disk and to its permissions, and look yourself.");
        }
        return std::move(found_);
    }

  private:
    bool is_copy(const std::string& path) const {
        const Path file = library_.folder() / path;
        if (is_link(file)) return false;
        const FileState state = library_.disk().state(file);
        return state.regular && sizes_.contains(state.bytes) &&
               sums_.contains(sha256_of_file(library_.disk(), file));
    }

    void meet(const std::string& path) try {
        if (is_link(library_.folder() / path)) return;
        if (lies_beside_its_photo(path) || is_copy(path)) {
            found_.files.push_back(path);
        } else if (const auto photo = name_before_set_aside(Path(path).filename().string())) {
            meet_set_aside(path, *photo);
        } else {
            meet_other(path);
        }
    } catch (const DiskError&) {
        say(path,
            " could not be read, so it may be of what is erased: see to the disk and to its "
            "permissions, look into it, and remove it if it is.");
    }

    bool lies_beside_its_photo(const Path& path) const {
        const auto [from, to] = by_folder_.equal_range(path.parent_path());
        return std::any_of(from, to, [&](const auto& photo) {
            return is_set_aside_name(path.filename().string(), photo.second);
        });
    }

    // Away from its photo: that one was placed elsewhere since.
    void meet_set_aside(const std::string& path, const std::string& photo) {
        const Whose others = photos_called(photo, Path(path).parent_path() / photo);
        if (!names_.contains(photo)) {
            if (others == Whose::nobodys) meet_other(path);
            return;
        }
        if (others == Whose::beside_it) return;
        if (others == Whose::nobodys) return found_.files.push_back(path);
        say(path, " was found changed, and may be of what is erased: another photo is called " +
                      photo + " too. Look at it, and remove it if it is.");
    }

    void meet_other(const std::string& path) {
        if (others_ == OtherStrays::named && path.starts_with("photos/")) say(path, may_be_of_it);
    }

    enum class Whose { nobodys, somewhere, beside_it };

    // Of the photos that stay.
    Whose photos_called(const std::string& name, const Path& beside) {
        const bool named_so =
            std::ranges::any_of(library_.photos().named(name),
                                [&](const Photo& photo) { return !going_.contains(photo.id); });
        const auto [from, to] = files_that_stay().equal_range(name);
        const bool is_beside =
            std::any_of(from, to, [&](const auto& stored) { return stored.second == beside; });
        if (is_beside) return Whose::beside_it;
        return named_so || from != to ? Whose::somewhere : Whose::nobodys;
    }

    // By name. Read once, since there may be many of them and many that were found changed.
    const std::multimap<std::string, Path>& files_that_stay() {
        if (files_that_stay_) return *files_that_stay_;
        files_that_stay_.emplace();
        for (const StoredFile& stored : library_.photos().stored_files()) {
            if (going_.contains(stored.id)) continue;
            const Path file = stored.path;
            files_that_stay_->emplace(file.filename().string(), file);
        }
        return *files_that_stay_;
    }

    void say(const std::string& path, const std::string& what) {
        const Path file = library_.folder() / path;
        found_.unsure.push_back({file, file.string() + what});
    }

    Library& library_;
    OtherStrays others_;
    std::set<PhotoId> going_;
    std::set<std::int64_t> sizes_;
    std::set<std::string> sums_;
    std::set<std::string> names_;
    std::multimap<Path, std::string> by_folder_;
    std::optional<std::multimap<std::string, Path>> files_that_stay_;
    FilesToGo found_;
};

}  // namespace

FilesToGo strays_of(Library& library, const std::vector<Photo>& photos,
                    const FilesWithoutRecord& strays, OtherStrays others) {
    return StraySearch(library, photos, others).search(strays);
}

bool is_named_by_checksum(const Path& file) {
    constexpr std::size_t digits = 64;
    const std::string name = file.filename().string();
    return name.find_first_not_of("0123456789abcdef") >= digits && name.size() >= digits;
}

FilesToGo papers_left_of(const Library& library, const FilesWithoutRecord& strays,
                         ClientId client) {
    FilesToGo found;
    const std::string hers = "/client " + std::to_string(client.value) + '/';
    for (const std::string& path : strays.files) {
        if (path.starts_with("photos/")) continue;
        if (path.starts_with("consents" + hers) || path.starts_with("inspiration" + hers)) {
            found.files.push_back(path);
        } else {
            const Path file = library.folder() / path;
            found.unsure.push_back({file, file.string() + may_be_of_it});
        }
    }
    return found;
}

}  // namespace quarterturn
