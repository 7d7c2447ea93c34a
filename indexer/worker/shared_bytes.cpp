#include "indexer/worker/shared_bytes.h"

#include <fcntl.h>
#include <sys/mman.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <system_error>

namespace quarterturn {
namespace {

constexpr int of_this_length = F_SEAL_SHRINK | F_SEAL_GROW | F_SEAL_SEAL;
constexpr std::size_t most_kept = std::size_t{12} << 20;

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

Descriptor new_memory() {
    Descriptor memory{::memfd_create("photo", MFD_CLOEXEC | MFD_ALLOW_SEALING)};
    if (!memory.open()) fail(errno, "memfd_create");
    return memory;
}

void append(const Descriptor& memory, std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(memory.number(), bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR) fail(errno, "write");
        if (written > 0) bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
}

void seal(const Descriptor& memory, int seals) {
    if (::fcntl(memory.number(), F_ADD_SEALS, seals) != 0) fail(errno, "F_ADD_SEALS");
}

void* mapped(const Descriptor& memory, std::size_t bytes, int sharing) {
    void* start =
        ::mmap(nullptr, bytes, PROT_READ | PROT_WRITE, sharing, memory.number(), 0);
    if (start == MAP_FAILED) fail(errno, "mmap");
    return start;
}

}  // namespace

const Descriptor& PassedBytes::filled_with(std::span<const std::byte> bytes) {
    if (bytes.size() > most_kept || bytes.empty()) {
        let_go();
        memory_ = new_memory();
        append(memory_, bytes);
        seal(memory_, of_this_length | F_SEAL_WRITE);
        return memory_;
    }
    if (length_ < bytes.size()) make_room(bytes.size());
    std::ranges::copy(bytes, kept_);
    return memory_;
}

// Who is given the memory may not write to it; this mapping, which is older than the seal, may.
void PassedBytes::make_room(std::size_t bytes) {
    let_go();
    memory_ = new_memory();
    if (::lseek(memory_.number(), static_cast<off_t>(bytes - 1), SEEK_SET) < 0) fail(errno, "lseek");
    append(memory_, std::array{std::byte{}});
    kept_ = static_cast<std::byte*>(mapped(memory_, bytes, MAP_SHARED));
    length_ = bytes;
    seal(memory_, of_this_length | F_SEAL_FUTURE_WRITE);
}

void PassedBytes::let_go() {
    if (kept_ != nullptr) ::munmap(kept_, length_);
    kept_ = nullptr;
    length_ = 0;
    memory_ = Descriptor{};
}

MappedBytes::MappedBytes(const Descriptor& sealed, std::size_t bytes) {
    const int seals = ::fcntl(sealed.number(), F_GET_SEALS);
    if (seals < 0 || (seals & F_SEAL_SHRINK) == 0) fail(EPERM, "not sealed");
    const off_t length = ::lseek(sealed.number(), 0, SEEK_END);
    if (length < 0 || static_cast<std::size_t>(length) < bytes) fail(EINVAL, "too short");
    lasting_ = (seals & F_SEAL_WRITE) != 0;
    if (bytes == 0) return;
    start_ = mapped(sealed, bytes, MAP_PRIVATE);
    length_ = bytes;
}

MappedBytes::~MappedBytes() {
    if (start_ != nullptr) ::munmap(start_, length_);
}

cv::Mat MappedBytes::become_picture(int rows, int columns, int type) {
    cv::Mat picture(rows, columns, type, start_);
    if (!lasting_) return picture.clone();
    picture.u = held_pixels(start_, length_);
    start_ = nullptr;
    length_ = 0;
    return picture;
}

}  // namespace quarterturn
