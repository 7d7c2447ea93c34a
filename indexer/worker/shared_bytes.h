#pragma once
// Bytes that go from one process to another: memory without a name (memfd_create(2)), sealed so
// that neither side can take it away while the other reads, and the reader never writes to it.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>
#include <vector>

#include "indexer/worker/descriptor.h"

namespace quarterturn {

// What one side passes on, one after the other. Memory of a photo's usual size is kept for the
// next, since the system takes longer to give and clear new pages than to copy a photo; larger
// memory is filled once.
class PassedBytes {
  public:
    PassedBytes() = default;
    ~PassedBytes() { let_go(); }
    PassedBytes(const PassedBytes&) = delete;
    PassedBytes& operator=(const PassedBytes&) = delete;

    // The memory to pass on; what was passed on before is no longer good. Throws std::system_error
    // when the system has no memory for it.
    const Descriptor& filled_with(std::span<const std::byte> bytes);

    // Gives back what was kept.
    void let_go();

  private:
    void make_room(std::size_t bytes);

    Descriptor memory_;
    std::byte* kept_ = nullptr;
    std::size_t length_ = 0;
};

// The first so many bytes of such memory that was passed on. All throw std::system_error for memory
// that is shorter or not sealed, and when this computer has none for them.

// A copy, which the other side cannot change while it is read.
std::vector<std::byte> copied_bytes(const Descriptor& memory, std::size_t bytes);

// Pixels of that type. A picture that is filled only once is no copy, and holds the memory.
cv::Mat picture_in(const Descriptor& memory, int rows, int columns, int type);

// For who trusts the other side not to fill the memory again meanwhile.
class GivenBytes {
  public:
    GivenBytes(const Descriptor& memory, std::size_t bytes);
    ~GivenBytes();
    GivenBytes(const GivenBytes&) = delete;
    GivenBytes& operator=(const GivenBytes&) = delete;

    std::span<const std::byte> bytes() const { return bytes_; }

  private:
    std::vector<std::byte> copy_;  // of few bytes, since a mapping costs more than they do
    std::span<const std::byte> bytes_;
};

}  // namespace quarterturn
