#include "indexer/erasure/files_saying.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/erasure/stray_files.h"
#include "indexer/store/lost_lock.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_loose_bytes = std::int64_t{1} << 33;
constexpr std::size_t piece_bytes = std::size_t{1} << 20;
constexpr std::size_t shared_bytes = 1024;  // of a piece and the next: a name is shorter
constexpr std::string_view begin_of_records = "SQLite format 3";  // where they have no lock

std::set<std::string> paths_that_stay(Library& library, const std::set<std::string>& going) {
    std::set<std::string> stay = paths_in_records(library);
    std::erase_if(stay, [&](const std::string& path) { return going.contains(path); });
    return stay;
}

bool any_below(const std::set<std::string>& paths, const Path& folder) {
    const std::string begin = folder.generic_string() + '/';
    const auto first = paths.lower_bound(begin);
    return first != paths.end() && first->starts_with(begin);
}

class FileSeeker {
  public:
    FileSeeker(Library& library, const SoughtNames& names,
               const std::vector<std::string>& checksums, const std::set<std::string>& going,
               const PlacedByHand& by_hand)
        : library_(library),
          names_(names),
          checksums_(checksums),
          going_(going),
          by_hand_(by_hand),
          stay_(paths_that_stay(library, going)) {}

    std::vector<SaidOfFile> seek() {
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
        if (is_folder) {
            if (is_said(place.filename().string())) say_folder(place);
            return seek_in_folder(entry);
        }
        if (!is_loose(place)) return;
        if (is_said(place.filename().string())) {
            say_named(place);
        } else if (is_ordinary(entry)) {
            seek_in_file(place);
        }
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

    static bool is_text(std::string_view file) {
        return file.starts_with(begin_of_records) ||
               file.substr(0, piece_bytes).find('\0') == std::string_view::npos;
    }

    // A file that is no text may hold a short name by chance.
    bool is_said_within(std::string_view file) const {
        const bool text = is_text(file);
        for (std::size_t at = 0; at < file.size(); at += piece_bytes) {
            const std::string_view piece = file.substr(at, piece_bytes + shared_bytes);
            if (text ? is_said(piece) : is_surely_said(piece)) return true;
        }
        return false;
    }

    bool is_what_went(const Bytes& bytes) const {
        return !checksums_.empty() &&
               std::ranges::find(checksums_, sha256(bytes)) != checksums_.end();
    }

    // Such are told of as what no record names.
    static bool is_among_hers(const Path& place) {
        const std::string top = *place.begin();
        return std::ranges::find(folders_of_hers, top) != folders_of_hers.end();
    }

    // What is kept of a photo by its checksum goes with it.
    static bool is_made_of_a_photo(const Path& place) {
        const Path top = *place.begin();
        return (top == "cache" || top == "incoming") && is_named_by_checksum(place);
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

    // What no record names.
    bool is_loose(const Path& place) const {
        const std::string path = place.generic_string();
        return !stay_.contains(path) && !by_hand_.of_others(path) && !going_.contains(path) &&
               !is_of_records(place) && !is_made_of_a_photo(place);
    }

    void say(const Path& place, const std::string& before, const std::string& behind) {
        const Path file = library_.folder() / place;
        found_.push_back({file, before + file.string() + behind});
    }

    // Where the name may be that of another, her folders may be called so.
    void say_folder(const Path& place) {
        if (any_below(stay_, place)) {
            if (!is_surely_said(place.filename().string())) return;
            say(place, "The name of ",
                " still says it, and what is recorded of others lies in it: leave it as it is, "
                "since the program looks for it there.");
        } else if (any_below(by_hand_.moved, place)) {
            say(place, "The name of ",
                " says it, and what is recorded of others was put into it by hand: qturn verify "
                "gives that its place again; then remove the folder.");
        } else if (!goes_with_its_files(place)) {
            say_named(place);
        }
    }

    // A folder that is empty then is removed.
    bool goes_with_its_files(const Path& folder) const {
        if (!any_below(going_, folder)) return false;
        const std::vector<Path> entries = library_.disk().list(library_.folder() / folder);
        return std::ranges::all_of(entries, [&](const Path& entry) {
            const Path place = folder / entry.filename();
            return library_.disk().is_folder(entry) ? goes_with_its_files(place)
                                                    : going_.contains(place.generic_string());
        });
    }

    void say_named(const Path& place) {
        const bool surely = is_surely_said(place.filename().string());
        say(place, "The name of ",
            surely ? " still says it: rename it, or remove it."
                   : " says it, or the name of another: look whose it is, and rename it, or remove "
                     "it, if it is of what is erased.");
    }

    void seek_in_file(const Path& place) {
        const Bytes bytes = library_.disk().read(library_.folder() / place, most_loose_bytes);
        if (bytes.empty()) return;
        const std::string_view text{reinterpret_cast<const char*>(bytes.data()), bytes.size()};
        if (is_copy_of_records(place) && !text.starts_with(begin_of_records)) {
            say(place, "",
                " is kept of records from before and may say it still: look whether anything is "
                "missing without it, and remove it.");
        } else if (is_what_went(bytes)) {
            say(place, "", " is erased: remove it.");
        } else if (is_said_within(text)) {
            say(place, "", what_to_do_with(text));
        } else if (!is_text(text) && !is_among_hers(place)) {
            say(place, "",
                " is in no record and cannot be read as text, so it may be of what is erased: look "
                "into it, and remove it if it is.");
        }
    }

    static const char* what_to_do_with(std::string_view text) {
        if (text.starts_with(begin_of_records)) {
            return " is a copy of records and still says it: nobody can be taken out of such a "
                   "copy. Look whether anything is missing without it, and remove the file as a "
                   "whole.";
        }
        if (is_text(text)) {
            return " still says it: open it, take out what is hers, and save it; or remove the "
                   "file.";
        }
        return " still says it: look what it is, and remove the file; what you need of it for "
               "others, write anew.";
    }

    void say_unread(const Path& entry) {
        say(entry.lexically_relative(library_.folder()), "",
            " could not be read, so it may say it still: look into it yourself, and remove what is "
            "hers.");
    }

    Library& library_;
    const SoughtNames& names_;
    const std::vector<std::string>& checksums_;
    const std::set<std::string>& going_;
    const PlacedByHand& by_hand_;
    std::set<std::string> stay_;
    std::vector<SaidOfFile> found_;
};

}  // namespace

std::vector<SaidOfFile> files_saying(Library& library, const SoughtNames& names,
                                     const std::vector<std::string>& checksums,
                                     const std::set<std::string>& going,
                                     const PlacedByHand& by_hand) {
    return FileSeeker(library, names, checksums, going, by_hand).seek();
}

}  // namespace quarterturn
