#include "indexer/disk/volume.h"

#include <sys/stat.h>

#include <charconv>

namespace quarterturn {
namespace {

// udev writes what a file name had better not hold as "\x20".
std::string without_escapes(const std::string& name) {
    constexpr std::size_t escape_length = 4;
    std::string label;
    for (std::size_t i = 0; i < name.size(); ++i) {
        unsigned char byte = 0;
        const bool escape =
            name.compare(i, 2, "\\x") == 0 && i + escape_length <= name.size() &&
            std::from_chars(&name[i + 2], &name[i] + escape_length, byte, 16).ec == std::errc();
        label += escape ? static_cast<char>(byte) : name[i];
        if (escape) i += escape_length - 1;
    }
    return label;
}

}  // namespace

std::string volume_label(const Path& folder) {
    struct stat there {};
    if (::stat(folder.c_str(), &there) != 0) return {};
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator("/dev/disk/by-label", none)) {
        struct stat device {};
        if (::stat(entry.path().c_str(), &device) == 0 && device.st_rdev == there.st_dev) {
            return without_escapes(entry.path().filename().string());
        }
    }
    return {};
}

bool on_one_volume(FileSystem& disk, const Path& one, const Path& other) try {
    return disk.state(one).device == disk.state(other).device;
} catch (const DiskError&) {
    return false;
}

}  // namespace quarterturn
