#include "indexer/intake/twins.h"

#include <functional>
#include <string_view>

namespace quarterturn {
namespace {

std::uint64_t mark_of(std::span<const std::byte> front) {
    const auto* text = reinterpret_cast<const char*>(front.data());
    return std::hash<std::string_view>{}({text, front.size()});
}

}  // namespace

PossibleTwins::PossibleTwins(Library& library, const std::vector<StoredFile>& stored,
                             const std::vector<FoundFile>& files)
    : library_(library) {
    for (const FoundFile& found : files) ++files_[found.state.bytes];
    for (const StoredFile& file : stored) {
        if (!files_.contains(file.bytes)) continue;
        stored_[file.bytes].push_back(library.folder() / file.path);
    }
}

std::optional<std::uint64_t> PossibleTwins::mark(std::int64_t bytes,
                                                 std::span<const std::byte> front) const {
    if (files_.at(bytes) < 2 && !stored_.contains(bytes)) return std::nullopt;
    return mark_of(front);
}

bool PossibleTwins::may_have_twin(std::int64_t bytes, std::uint64_t mark) {
    if (stored_.contains(bytes)) add_stored(bytes);
    return unreadable_.contains(bytes) || marked_.at({bytes, mark}) > 1;
}

void PossibleTwins::add_stored(std::int64_t bytes) {
    const auto files = stored_.extract(bytes);
    for (const Path& file : files.mapped()) {
        try {
            add(bytes, mark_of(library_.disk().read_front(file, marked_front_bytes)));
        } catch (const DiskError&) {
            unreadable_.insert(bytes);
        }
    }
}

}  // namespace quarterturn
