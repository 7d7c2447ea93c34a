#pragma once
// Bytes that go from one process to another: memory without a name (memfd_create(2)), sealed so that
// neither side can take it away while the other reads, and the reader never writes to it.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>

#include "indexer/worker/descriptor.h"

namespace quarterturn {

// What one side passes on, one after the other. Memory of a photo's usual size is kept for the next,
// since the system takes longer to give and clear new pages than to copy a photo; larger memory is
// filled once.
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

// Such memory, to be read. What is written to it stays this process's own.
class MappedBytes {
  public:
    // The first so many bytes. Throws std::system_error for memory that is shorter or not sealed.
    MappedBytes(const Descriptor& sealed, std::size_t bytes);
    ~MappedBytes();
    MappedBytes(const MappedBytes&) = delete;
    MappedBytes& operator=(const MappedBytes&) = delete;

    std::span<const std::byte> bytes() const {
        return {static_cast<const std::byte*>(start_), length_};
    }

    // The bytes as the pixels of a picture, a copy where the other side fills the memory again; this
    // is empty afterwards. There are rows × columns × the size of the type of them.
    cv::Mat become_picture(int rows, int columns, int type);

  private:
    void* start_ = nullptr;
    std::size_t length_ = 0;
    bool lasting_ = false;
};

}  // namespace quarterturn
