#include "indexer/intake/walk.h"

#include <string>
#include <unordered_set>

#include "indexer/disk/lies_in.h"
#include "indexer/intake/photo_file.h"

namespace quarterturn {
namespace {

namespace fs = std::filesystem;

bool hidden(const Path& file) {
    return file.filename().native().starts_with('.');
}

// Cards keep thumbnails of videos and photos in folders of this name (common practice of cameras).
bool thumbnail_folder(const Path& folder) {
    std::string name = folder.filename().native();
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
    return name == "thmbnl" || name == "thumbnails";
}

constexpr auto reason_link =
    "It is a link, and links are not followed: name the file or folder that it leads to.";
constexpr auto reason_no_file =
    "It is named like a photo and is no ordinary file: there is no photo in it to bring in.";

class Walk {
  public:
    explicit Walk(Library& library)
        : disk_(library.disk()), library_folder_(fs::weakly_canonical(library.folder())) {}

    void from(const Path& source) {
        std::error_code error;
        const Path file = fs::canonical(source, error);
        if (error) return refuse(source, reason_not_there(source));
        if (lies_in(file, library_folder_)) return refuse(source, reason_own_folder(source));
        if (fs::is_directory(file, error)) return into(file);
        take(file);
    }

    Found found() && { return std::move(found_); }

  private:
    static std::string reason_not_there(const Path& source) {
        return "There is no file or folder " + source.string() +
               ": check the name, or put the card in and wait until the computer shows it.";
    }

    static std::string reason_own_folder(const Path& source) {
        return source.string() +
               " is this library itself, so its photos are here already: name the "
               "folder or card that the photos are still on.";
    }

    void refuse(const Path& file, std::string reason) {
        found_.refused.push_back({file, std::move(reason)});
    }

    void leave_alone(const Path& file) { found_.left_alone.push_back(file); }

    // A photo that is not brought in is said by name.
    void pass_over(const Path& entry, const char* reason) {
        named_like_a_photo(entry) ? refuse(entry, reason) : leave_alone(entry);
    }

    void into(const Path& folder) {
        if (!walked_.insert(folder.native()).second) return;
        try {
            for (const Path& entry : disk_.list(folder)) meet(entry);
        } catch (const DiskError& error) {
            refuse(folder, error.what());
        }
    }

    void meet(const Path& entry) {
        std::error_code error;
        const fs::file_status status = fs::symlink_status(entry, error);
        if (error) return refuse(entry, reason_not_there(entry));
        const bool folder = fs::is_directory(status);
        if (hidden(entry)) return leave_alone(entry);
        if (fs::is_symlink(status)) return pass_over(entry, reason_link);
        if (folder && (thumbnail_folder(entry) || entry == library_folder_)) {
            return leave_alone(entry);
        }
        folder ? into(entry) : take(entry);
    }

    void take(const Path& file) {
        if (!walked_.insert(file.native()).second) return;
        try {
            const FileState state = disk_.state(file);
            if (!state.regular) return pass_over(file, reason_no_file);
            found_.files.push_back({file, state});
        } catch (const DiskError& error) {
            refuse(file, error.what());
        }
    }

    FileSystem& disk_;
    Path library_folder_;
    std::unordered_set<std::string> walked_;
    Found found_;
};

}  // namespace

Found walk(Library& library, const std::vector<Path>& sources) {
    Walk walk{library};
    for (const Path& source : sources) walk.from(source);
    return std::move(walk).found();
}

}  // namespace quarterturn
