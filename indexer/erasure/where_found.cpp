#include <algorithm>

#include "indexer/erasure/erase.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_loose_bytes = std::int64_t{1} << 33;
constexpr const char* records_file = "records.sqlite";

std::string in_small(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return text;
}

class Seeker {
  public:
    Seeker(Library& library, const std::vector<std::string>& texts) : library_(library) {
        for (const std::string& text : texts) texts_.push_back(in_small(text));
    }

    std::vector<std::string> seek() {
        seek_in_records();
        seek_in_folder(library_.folder());
        return std::move(found_);
    }

  private:
    void seek_in_folder(const Path& folder) {
        for (const Path& entry : library_.disk().list(folder)) {
            const Path place = entry.lexically_relative(library_.folder());
            const bool is_folder = library_.disk().is_folder(entry);
            if (holds_any(place.filename().string())) {
                found_.push_back("The name of " + entry.string() +
                                 " still says it: rename it, or remove it.");
            } else if (!is_folder && is_loose(place) && is_ordinary(entry)) {
                seek_in_file(place);
            }
            if (is_folder) seek_in_folder(entry);
        }
    }

    bool holds_any(std::string text) const {
        text = in_small(std::move(text));
        return std::ranges::any_of(texts_, [&](const std::string& wanted) {
            return text.find(wanted) != std::string::npos;
        });
    }

    bool is_ordinary(const Path& entry) const try {
        return library_.disk().state(entry).regular;
    } catch (const DiskError&) {
        return false;  // a link that leads nowhere
    }

    // Photos and what is made of them are pictures of others.
    static bool is_loose(const Path& place) {
        const Path top = *place.begin();
        return top != "photos" && top != "cache" && top != "inspiration";
    }

    void seek_in_records() {
        ErasureTable records(library_.database());
        for (const std::string& text : texts_) {
            for (const std::string& place : records.places_of(text)) {
                if (std::ranges::find(places_, place) != places_.end()) continue;
                places_.push_back(place);
                found_.push_back("The records of others still say it (" + place +
                                 "): look for it and change it.");
            }
        }
    }

    void seek_in_file(const Path& place) {
        const bool records = place.filename().string().starts_with(records_file);
        if (records && !places_.empty()) return;  // said already, and better
        const Bytes bytes = library_.disk().read(library_.folder() / place, most_loose_bytes);
        if (holds_any({reinterpret_cast<const char*>(bytes.data()), bytes.size()})) {
            found_.push_back((library_.folder() / place).string() +
                             " still says it: look into it, and remove what is hers.");
        }
    }

    Library& library_;
    std::vector<std::string> texts_;
    std::vector<std::string> places_;
    std::vector<std::string> found_;
};

}  // namespace

std::vector<std::string> where_found(Library& library, const std::vector<std::string>& texts) {
    return Seeker(library, texts).seek();
}

}  // namespace quarterturn
