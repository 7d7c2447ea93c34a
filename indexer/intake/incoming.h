#pragma once
// The folder where copies wait under a temporary name until they are whole.

#include <atomic>
#include <span>
#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

class Incoming {
  public:
    // Clears away what an interrupted run has left. Throws DiskError.
    explicit Incoming(Library& library);
    // Removes the copies that found no place; a disk that fails is passed over, since the next run
    // clears away too.
    ~Incoming();
    Incoming(const Incoming&) = delete;
    Incoming& operator=(const Incoming&) = delete;

    Path part(const std::string& sha256) const;

    // Writes, syncs and reads back. Throws DiskError, also when what was read differs; nothing is
    // left then. Safe to use from several threads, each for another checksum.
    void put(const std::string& sha256, std::span<const std::byte> bytes);

    // After a call failed: whether the library's disk is there, takes files and gives them back, so
    // that it was a matter of one file. Says no for as long as a copy of any read back different.
    bool goes_on_after(const DiskError& error);

  private:
    void clear();
    bool reads_back(const Path& file, std::span<const std::byte> bytes);

    FileSystem& disk_;
    Path folder_;
    std::atomic<bool> trusted_ = true;
};

}  // namespace quarterturn
