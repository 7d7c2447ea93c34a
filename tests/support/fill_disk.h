#pragma once

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <filesystem>

namespace quarterturn {

// With one more file, until it takes not a byte more. For on_small_disk.
inline void fill_disk_of(const std::filesystem::path& folder) {
    const int filler = ::open((folder / "filler").c_str(), O_CREAT | O_WRONLY | O_CLOEXEC, 0600);
    static constexpr std::array<char, 4096> nothing{};
    while (::write(filler, nothing.data(), nothing.size()) > 0) {
    }
    ::close(filler);
}

}  // namespace quarterturn
