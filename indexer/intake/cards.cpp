#include "indexer/intake/cards.h"

#include <algorithm>
#include <cctype>

namespace quarterturn {
namespace {

bool camera_folder(const Path& entry) {
    std::string name = entry.filename().native();
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
    std::error_code none;
    return name == "dcim" && std::filesystem::is_directory(entry, none);
}

bool holds_camera_folder(FileSystem& disk, const Path& folder) try {
    return std::ranges::any_of(disk.list(folder), camera_folder);
} catch (const DiskError&) {
    return false;
}

}  // namespace

std::vector<Path> camera_cards(FileSystem& disk, const std::vector<Path>& folders) {
    std::vector<Path> cards;
    std::ranges::copy_if(folders, std::back_inserter(cards),
                         [&](const Path& folder) { return holds_camera_folder(disk, folder); });
    return cards;
}

}  // namespace quarterturn
