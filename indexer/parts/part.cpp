#include "indexer/parts/part.h"

#include <dlfcn.h>

#include <stdexcept>

namespace quarterturn {
namespace {

constexpr int most_folders_up = 3;

}  // namespace

std::filesystem::path beside_program(const std::string& name) {
    const auto place = std::filesystem::path("libexec/quarterturn") / name;
    const auto bin = std::filesystem::read_symlink("/proc/self/exe").parent_path();
    auto folder = bin;
    for (int up = 0; up < most_folders_up; ++up) {
        folder = folder.parent_path();
        if (std::filesystem::exists(folder / place)) return folder / place;
    }
    return bin.parent_path() / place;
}

void* part_detail::function_of(const std::string& part, const char* name) {
    const std::string file = beside_program(part + ".so");
    void* const loaded = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    void* const function = loaded == nullptr ? nullptr : ::dlsym(loaded, name);
    if (function != nullptr) return function;
    throw std::runtime_error("The part of the program in " + file +
                             " does not load. Install Quarterturn again.");
}

}  // namespace quarterturn
