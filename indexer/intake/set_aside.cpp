#include "indexer/intake/set_aside.h"

#include "indexer/intake/file_names.h"

namespace quarterturn {
namespace {

constexpr int most_set_aside_of_one = 99;
// What stays of " (changed)" also where a long name is cut for its number.
constexpr const char* mark_of_set_aside = " (cha";

}  // namespace

Path set_aside(FileSystem& disk, const Path& changed) {
    for (int number = 1;; ++number) {
        const Path aside =
            changed.parent_path() / changed_name(changed.filename().native(), number);
        if (disk.exists(aside)) continue;
        disk.rename_new(changed, aside);
        return aside;
    }
}

bool is_set_aside_name(const std::string& name, const std::string& photo) {
    if (name.find(mark_of_set_aside) == name.npos) return false;
    for (int number = 1; number <= most_set_aside_of_one; ++number) {
        if (changed_name(photo, number) == name) return true;
    }
    return false;
}

std::optional<std::string> name_before_set_aside(const std::string& name) {
    constexpr std::string_view mark = " (changed)";
    const std::size_t at = name.rfind(mark);
    if (at == name.npos) return std::nullopt;
    const std::size_t ending = name.find('.', at);
    const std::string photo =
        name.substr(0, at) + (ending == name.npos ? std::string{} : name.substr(ending));
    return is_set_aside_name(name, photo) ? std::optional(photo) : std::nullopt;
}

}  // namespace quarterturn
