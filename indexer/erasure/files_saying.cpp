#include "indexer/erasure/files_saying.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_loose_bytes = std::int64_t{1} << 33;
constexpr std::size_t piece_bytes = std::size_t{1} << 20;
constexpr std::size_t shared_bytes = 1024;  // of a piece and the next: a name is shorter
constexpr std::string_view begin_of_records = "SQLite format 3";  // where they have no lock

class FileSeeker {
  public:
    FileSeeker(Library& library, const SoughtNames& names,
               const std::vector<std::string>& checksums)
        : library_(library), names_(names), checksums_(checksums) {}

    std::vector<std::string> seek() {
        seek_in_folder(library_.folder());
        return std::move(found_);
    }

  private:
    void seek_in_folder(const Path& folder) try {
        for (const Path& entry : library_.disk().list(folder)) seek_at(entry);
    } catch (const DiskError&) {
        say_unread(folder);
    }

    void seek_at(const Path& entry) try {
        const Path place = entry.lexically_relative(library_.folder());
        const bool is_folder = library_.disk().is_folder(entry);
        if (is_said(place.filename().string())) {
            say_named(place);
        } else if (!is_folder && is_loose(place) && is_ordinary(entry)) {
            seek_in_file(place);
        }
        if (is_folder) seek_in_folder(entry);
    } catch (const DiskError&) {
        say_unread(entry);
    }

    bool is_ordinary(const Path& entry) const try {
        return library_.disk().state(entry).regular;
    } catch (const DiskError&) {
        return false;  // a link that leads nowhere
    }

    bool holds_a_checksum(std::string_view text) const {
        return std::ranges::any_of(checksums_, [&](const std::string& sum) {
            return text.find(sum) != std::string_view::npos;
        });
    }

    bool is_said(std::string_view text) const {
        return !names_.said_in(text).empty() || holds_a_checksum(text);
    }

    bool is_surely_said(std::string_view text) const {
        const auto said = names_.said_in(text);
        return std::ranges::any_of(said, &NameSaid::surely) || holds_a_checksum(text);
    }

    // A file that is no text may hold a short name by chance.
    bool is_said_within(std::string_view file) const {
        const bool text = file.starts_with(begin_of_records) ||
                          file.substr(0, piece_bytes).find('\0') == std::string_view::npos;
        for (std::size_t at = 0; at < file.size(); at += piece_bytes) {
            const std::string_view piece = file.substr(at, piece_bytes + shared_bytes);
            if (text ? is_said(piece) : is_surely_said(piece)) return true;
        }
        return false;
    }

    bool is_photo_that_went(const Bytes& bytes) const {
        return !checksums_.empty() &&
               std::ranges::find(checksums_, sha256(bytes)) != checksums_.end();
    }

    // What the records know by its name is told of with them.
    static bool is_kept(const Path& place) {
        const Path top = *place.begin();
        return top == "cache" || top == "inspiration" || top == "consents";
    }

    // The records themselves are searched as such.
    static bool is_of_records(const Path& place) {
        return std::ranges::any_of(endings_of_records, [&](const char* ending) {
            return place == std::string(records_file_name) + ending;
        });
    }

    static bool is_copy_of_records(const Path& place) {
        return place.native().starts_with(records_file_name) || is_records_of_others(place);
    }

    // Photos and what is made of them are pictures of others.
    static bool is_loose(const Path& place) {
        return *place.begin() != "photos" && !is_kept(place) && !is_of_records(place);
    }

    void say_named(const Path& place) {
        if (is_kept(place) || library_.photos().path_taken(place.generic_string())) return;
        found_.push_back("The name of " + (library_.folder() / place).string() +
                         " still says it: rename it, or remove it.");
    }

    void seek_in_file(const Path& place) {
        const Bytes bytes = library_.disk().read(library_.folder() / place, most_loose_bytes);
        if (bytes.empty()) return;
        const std::string_view text{reinterpret_cast<const char*>(bytes.data()), bytes.size()};
        if (is_copy_of_records(place) && !text.starts_with(begin_of_records)) {
            found_.push_back((library_.folder() / place).string() +
                             " is kept of records from before and may say it still: look whether "
                             "anything is missing without it, and remove it.");
        } else if (is_said_within(text) || is_photo_that_went(bytes)) {
            found_.push_back((library_.folder() / place).string() +
                             " still says it: look into it, and remove what is hers.");
        }
    }

    void say_unread(const Path& entry) {
        found_.push_back(entry.string() +
                         " could not be read, so it may say it still: look into it yourself, and "
                         "remove what is hers.");
    }

    Library& library_;
    const SoughtNames& names_;
    const std::vector<std::string>& checksums_;
    std::vector<std::string> found_;
};

}  // namespace

std::vector<std::string> files_saying(Library& library, const SoughtNames& names,
                                      const std::vector<std::string>& checksums) {
    return FileSeeker(library, names, checksums).seek();
}

}  // namespace quarterturn
