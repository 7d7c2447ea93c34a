#pragma once
// An open file of the operating system, closed when it goes out of scope. All functions throw
// DiskError and start again when a signal interrupts them.

#include <sys/stat.h>

#include "indexer/disk/disk_error.h"

namespace quarterturn {

class OpenFile {
  public:
    // Flags and mode as of open(2); O_CLOEXEC is added.
    OpenFile(const Path& file, int flags, Doing doing, mode_t mode = 0);
    ~OpenFile();
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    struct stat state() const;
    void sync();
    void drop_page_cache();  // so that the next read asks the disk; does nothing where unsupported
    // Fills `bytes` from `offset` on; answers how many there were.
    std::size_t read(std::span<std::byte> bytes, std::size_t offset = 0);
    void write(std::span<const std::byte> bytes);
    void close();  // throws what the destructor would keep to itself

  private:
    [[noreturn]] void fail() const;

    Path file_;
    Doing doing_;
    int descriptor_;
};

}  // namespace quarterturn
