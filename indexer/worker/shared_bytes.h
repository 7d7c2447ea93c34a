#pragma once
// Bytes that go from one process to another without a copy of the receiver's own: memory without a
// name (memfd_create(2)), filled once and sealed, so that neither side can change it or take it
// away while the other reads.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>

#include "indexer/worker/descriptor.h"

namespace quarterturn {

// Throws std::system_error when the system has no memory for it.
Descriptor sealed_bytes(std::span<const std::byte> bytes);

// Such memory, to be read. What is written to it stays this process's own.
class MappedBytes {
  public:
    // Throws std::system_error for anything but sealed memory of exactly so many bytes.
    MappedBytes(const Descriptor& sealed, std::size_t bytes);
    ~MappedBytes();
    MappedBytes(const MappedBytes&) = delete;
    MappedBytes& operator=(const MappedBytes&) = delete;

    std::span<const std::byte> bytes() const {
        return {static_cast<const std::byte*>(start_), length_};
    }

    // The bytes as the pixels of a picture, which holds them from then on; this is empty
    // afterwards. There are rows × columns × the size of the type of them.
    cv::Mat become_picture(int rows, int columns, int type);

  private:
    void* start_ = nullptr;
    std::size_t length_ = 0;
};

}  // namespace quarterturn
