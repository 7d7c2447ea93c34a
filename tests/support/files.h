#pragma once
// Files as bytes, and the folders of photos that tests read.

#include <cstddef>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

namespace quarterturn {

inline std::vector<std::byte> read_bytes(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::vector<std::byte> bytes(std::filesystem::file_size(file));
    stream.read(reinterpret_cast<char*>(bytes.data()), std::ssize(bytes));
    if (!stream) throw std::runtime_error("cannot read " + file.string());
    return bytes;
}

// Empty where there is no such file.
inline std::string text_of(const std::filesystem::path& file) {
    if (!std::filesystem::is_regular_file(file)) return {};
    const std::vector<std::byte> bytes = read_bytes(file);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

inline void write_bytes(const std::filesystem::path& file, std::span<const std::byte> bytes) {
    std::ofstream stream(file, std::ios::binary);
    stream.write(reinterpret_cast<const char*>(bytes.data()),
                 static_cast<std::streamsize>(bytes.size()));
    if (!stream.flush()) throw std::runtime_error("cannot write " + file.string());
}

// Files straight from real cameras, which stay out of the repository: the folder that the
// environment variable REAL_PHOTOS names. Nothing when it is unset or not there.
inline std::optional<std::filesystem::path> real_photos() {
    const char* folder = std::getenv("REAL_PHOTOS");
    if (folder == nullptr || !std::filesystem::exists(folder)) return std::nullopt;
    return folder;
}

inline std::vector<std::filesystem::path> files_in(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.is_regular_file()) files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace quarterturn

// At the start of a test that needs them.
#define SKIP_WITHOUT_REAL_PHOTOS()                                                       \
    if (!quarterturn::real_photos()) {                                                   \
        GTEST_SKIP() << "REAL_PHOTOS names no folder of photos from real cameras; this " \
                        "test looks at nothing.";                                        \
    }
