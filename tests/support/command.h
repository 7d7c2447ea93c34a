#pragma once
// Other programs, asked what they think of the same files.

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <stdexcept>
#include <string>

namespace quarterturn {

// `text` as one word for the shell.
inline std::string shell_word(const std::string& text) {
    std::string result = "'";
    for (const char c : text) result += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return result + "'";
}

// What the command prints on standard output. Throws when it does not end with 0.
inline std::string output_of(const std::string& command) {
    FILE* pipe = ::popen(command.c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot run " + command);
    std::string output;
    std::array<char, 4096> part{};
    while (const std::size_t length = std::fread(part.data(), 1, part.size(), pipe)) {
        output.append(part.data(), length);
    }
    const int status = ::pclose(pipe);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
        throw std::runtime_error("this command failed: " + command);
    }
    return output;
}

}  // namespace quarterturn
