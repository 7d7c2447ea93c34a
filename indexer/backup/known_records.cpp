#include "indexer/backup/known_records.h"

#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_bytes = 100;

Path kept_in(Library& library, const std::string& mark) {
    return library.cache_folder() / ("backed-up-" + mark);
}

std::string state_text(const FileState& state) {
    return std::to_string(state.bytes) + ' ' + std::to_string(state.modified_ns);
}

}  // namespace

bool records_unchanged(Library& library, const std::string& mark) {
    const Path file = kept_in(library, mark);
    if (!library.disk().exists(file)) return false;
    const auto state = settled_state(library);
    const Bytes kept = library.disk().read(file, most_bytes);
    return state && std::string_view(reinterpret_cast<const char*>(kept.data()), kept.size()) ==
                        state_text(*state);
}

void remember_records(Library& library, const std::string& mark) try {
    const auto state = settled_state(library);
    if (!state) return;
    const std::string text = state_text(*state);
    replace_file(library.disk(), kept_in(library, mark), std::as_bytes(std::span(text)));
} catch (const DiskError&) {
    return;
}

}  // namespace quarterturn
