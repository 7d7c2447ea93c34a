#pragma once
// What this process writes to one of its outputs, kept in a file.

#include <fcntl.h>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <iostream>
#include <stdexcept>

namespace quarterturn {

class Redirected {
  public:
    // `output` is STDOUT_FILENO or STDERR_FILENO; written elsewhere for as long as this lives.
    Redirected(int output, const std::filesystem::path& file) : output_(output) {
        flush();
        before_ = ::dup(output);
        const int opened = ::open(file.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
        if (before_ < 0 || opened < 0) throw std::runtime_error("cannot write " + file.string());
        ::dup2(opened, output);
        ::close(opened);
    }
    ~Redirected() {
        flush();
        ::dup2(before_, output_);
        ::close(before_);
    }
    Redirected(const Redirected&) = delete;
    Redirected& operator=(const Redirected&) = delete;

  private:
    static void flush() {
        std::cout.flush();
        std::cerr.flush();
        std::fflush(nullptr);
    }

    int output_;
    int before_ = -1;
};

}  // namespace quarterturn
