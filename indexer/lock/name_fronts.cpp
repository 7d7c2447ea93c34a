#include "indexer/lock/name_fronts.h"

#include <optional>

#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

bool is_front(const Path& folder) {
    return is_front_of_locked_name(folder.filename().native());
}

std::optional<Path> front_of(const Path& place) {
    Path folder = place.parent_path();
    return is_front(folder) ? std::optional(std::move(folder)) : std::nullopt;
}

}  // namespace

void NameFronts::make(const Path& place) {
    const auto front = front_of(place);
    if (front && beneath_->is_folder(front->parent_path())) beneath_->make_folders(*front);
}

void NameFronts::sync(const Path& place) {
    if (const auto front = front_of(place)) beneath_->sync_folder(*front);
}

void NameFronts::drop_if_empty(const Path& place) {
    const auto front = front_of(place);
    if (front && beneath_->list(*front).empty()) beneath_->remove_empty_folder(*front);
}

void NameFronts::drop_empty_in(const Path& folder) {
    for (const Path& entry : beneath_->list(folder)) {
        if (is_front(entry) && beneath_->list(entry).empty()) beneath_->remove_empty_folder(entry);
    }
}

std::vector<std::string> NameFronts::names_at(const Path& entry) {
    const std::string name = entry.filename().native();
    if (!is_front(entry)) return {name};
    std::vector<std::string> names;
    for (const Path& rest : beneath_->list(entry)) {
        names.push_back(joined_locked_name(name, rest.filename().native()));
    }
    return names;
}

}  // namespace quarterturn
