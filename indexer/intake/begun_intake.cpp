#include "indexer/intake/begun_intake.h"

#include <algorithm>
#include <cctype>
#include <nlohmann/json.hpp>

#include "indexer/intake/incoming.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/unfinished.h"
#include "indexer/store/sought_names.h"
#include "indexer/store/text_words.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// However it was typed.
Path whole(const Path& source) {
    const Path normal = std::filesystem::absolute(source).lexically_normal();
    return normal.has_filename() ? normal : normal.parent_path();
}

// Names may hold any bytes, which no text of the records may.
std::string text_of(const std::vector<Path>& sources) {
    json paths = json::array();
    for (const Path& source : sources) {
        const std::string& bytes = source.native();
        paths.push_back(std::vector<unsigned char>(bytes.begin(), bytes.end()));
    }
    return paths.dump();
}

std::vector<Path> sources_in(const std::string& text) try {
    std::vector<Path> sources;
    for (const auto& bytes : json::parse(text).get<std::vector<std::vector<unsigned char>>>()) {
        sources.emplace_back(std::string(bytes.begin(), bytes.end()));
    }
    return sources;
} catch (const json::exception&) {
    return {};
}

bool is_among(const std::vector<Path>& sources, const Path& source) {
    return std::ranges::find(sources, source) != sources.end();
}

// Whatever stands between words is left out.
std::string letters_of(std::string_view text) {
    std::string letters = plain_letters(text);
    std::erase_if(letters, [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < 0x80 && std::isalpha(byte) == 0;
    });
    return letters;
}

bool says(const Path& source, const std::string& name) {
    constexpr std::size_t fewest_letters = 5;  // fewer stand within other words by chance
    const std::string letters = letters_of(name);
    return !SoughtNames({name}).said_in(source.native()).empty() ||
           (letters.size() >= fewest_letters &&
            letters_of(source.native()).find(letters) != std::string::npos);
}

}  // namespace

void BegunIntake::keep(const std::vector<Path>& sources) {
    if (sources.empty()) return forget();
    library_.settings().set(setting_, text_of(sources));
}

void BegunIntake::add(const std::vector<Path>& sources) {
    std::vector<Path> all = this->sources();
    for (const Path& source : sources) {
        if (!is_among(all, whole(source))) all.push_back(whole(source));
    }
    keep(all);
}

void BegunIntake::finish(const std::vector<Path>& sources) {
    std::vector<Path> left = this->sources();
    const auto finished = std::erase_if(left, [&](const Path& source) {
        return std::ranges::find(sources, source, whole) != sources.end();
    });
    if (finished > 0) keep(left);
}

void BegunIntake::forget() {
    library_.settings().clear(setting_);
}

std::vector<Path> BegunIntake::sources() {
    const auto text = library_.settings().get(setting_);
    return text ? sources_in(*text) : std::vector<Path>();
}

std::vector<Path> unfinished_intake(Library& library) {
    std::vector<Path> sources = BegunIntake::once(library).sources();
    if (!sources.empty() && !MoveLock(library).held()) sources.clear();
    return sources;
}

void clear_incoming(Library& library) {
    const Incoming cleared_away(library);
    (void)Unfinished(library).settle();
}

bool any_left_incoming(Library& library) try {
    return std::ranges::any_of(library.disk().list(library.incoming_folder()),
                               [](const Path& file) { return file.extension() == ".part"; });
} catch (const DiskError&) {
    return false;
}

void clear_left_incoming(Library& library) try {
    if (library.only_to_look() || !any_left_incoming(library)) return;
    const MoveLock lock(library);
    if (lock.held()) clear_incoming(library);
} catch (const std::runtime_error&) {
    return;
}

void leave_unfinished_intake(Library& library) {
    const MoveLock lock(library);
    if (!lock.held()) throw StoreError(photos_are_being_moved);
    clear_incoming(library);
    BegunIntake::once(library).forget();
}

void forget_intake(Library& library) {
    BegunIntake::once(library).forget();
    BegunIntake::as_they_arrive(library).forget();
}

void forget_intake_saying(Library& library, const std::string& name) {
    for (BegunIntake begun : {BegunIntake::once(library), BegunIntake::as_they_arrive(library)}) {
        const auto sources = begun.sources();
        if (std::ranges::any_of(sources, [&](const Path& source) { return says(source, name); })) {
            begun.forget();
        }
    }
}

}  // namespace quarterturn
