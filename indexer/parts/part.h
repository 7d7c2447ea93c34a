#pragma once
// What lies beside the programs: those that they start, and parts of them that few commands need,
// with libraries that take longer to load than most commands take. A part is loaded when something
// of it is called for the first time.

#include <filesystem>
#include <string>

namespace quarterturn {

// In libexec/quarterturn of the nearest folder above this program that has it. Where none has, what
// it would be when installed.
std::filesystem::path beside_program(const std::string& name);

namespace part_detail {
void* function_of(const std::string& part, const char* name);
}

// A function of a part by its C name. Throws std::runtime_error with the next step when the part is
// missing. Safe to use from several threads at once.
template <class Function>
Function* part_function(const std::string& part, const char* name) {
    return reinterpret_cast<Function*>(part_detail::function_of(part, name));
}

}  // namespace quarterturn
