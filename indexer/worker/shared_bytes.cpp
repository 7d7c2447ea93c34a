#include "indexer/worker/shared_bytes.h"

#include <fcntl.h>
#include <sys/mman.h>

#include <cerrno>
#include <system_error>

namespace quarterturn {
namespace {

constexpr int all_seals = F_SEAL_WRITE | F_SEAL_SHRINK | F_SEAL_GROW | F_SEAL_SEAL;

[[noreturn]] void fail(int error_number, const char* what) {
    throw std::system_error(error_number, std::generic_category(), what);
}

// Gives the memory back when the last picture that shows it goes.
class MappedPixels final : public cv::MatAllocator {
  public:
    cv::UMatData* allocate(int dims, const int* sizes, int type, void* data, std::size_t* step,
                           cv::AccessFlag flags, cv::UMatUsageFlags usage) const override {
        return cv::Mat::getStdAllocator()->allocate(dims, sizes, type, data, step, flags, usage);
    }
    bool allocate(cv::UMatData*, cv::AccessFlag, cv::UMatUsageFlags) const override {
        return false;
    }
    void deallocate(cv::UMatData* data) const override {
        ::munmap(data->origdata, data->size);
        delete data;
    }
};

cv::UMatData* held_pixels(void* start, std::size_t length) {
    static const MappedPixels allocator;
    auto* data = new cv::UMatData(&allocator);
    data->data = static_cast<uchar*>(start);
    data->origdata = data->data;
    data->size = length;
    data->refcount = 1;
    return data;
}

}  // namespace

Descriptor sealed_bytes(std::span<const std::byte> bytes) {
    Descriptor memory{::memfd_create("photo", MFD_CLOEXEC | MFD_ALLOW_SEALING)};
    if (!memory.open()) fail(errno, "memfd_create");
    while (!bytes.empty()) {
        const ssize_t written = ::write(memory.number(), bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR) fail(errno, "write");
        if (written > 0) bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    if (::fcntl(memory.number(), F_ADD_SEALS, all_seals) != 0) fail(errno, "F_ADD_SEALS");
    return memory;
}

MappedBytes::MappedBytes(const Descriptor& sealed, std::size_t bytes) {
    if ((::fcntl(sealed.number(), F_GET_SEALS) & all_seals) != all_seals) fail(EPERM, "not sealed");
    const off_t length = ::lseek(sealed.number(), 0, SEEK_END);
    if (length < 0 || static_cast<std::size_t>(length) != bytes) fail(EINVAL, "of another length");
    if (bytes == 0) return;
    void* start = ::mmap(nullptr, bytes, PROT_READ | PROT_WRITE, MAP_PRIVATE, sealed.number(), 0);
    if (start == MAP_FAILED) fail(errno, "mmap");
    start_ = start;
    length_ = bytes;
}

MappedBytes::~MappedBytes() {
    if (start_ != nullptr) ::munmap(start_, length_);
}

cv::Mat MappedBytes::become_picture(int rows, int columns, int type) {
    cv::Mat picture(rows, columns, type, start_);
    picture.u = held_pixels(start_, length_);
    start_ = nullptr;
    length_ = 0;
    return picture;
}

}  // namespace quarterturn
