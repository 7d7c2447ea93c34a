#include "indexer/worker/shared_bytes.h"

#include <fcntl.h>
#include <sys/mman.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <system_error>

namespace quarterturn {
namespace {

constexpr int of_this_length = F_SEAL_SHRINK | F_SEAL_GROW | F_SEAL_SEAL;
constexpr std::size_t most_kept = std::size_t{12} << 20;
constexpr std::size_t few = std::size_t{256} << 10;

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

cv::Mat held_picture(void* start, int rows, int columns, int type) {
    static const MappedPixels allocator;
    cv::Mat picture(rows, columns, type, start);
    auto* data = new cv::UMatData(&allocator);
    data->data = static_cast<uchar*>(start);
    data->origdata = data->data;
    data->size = picture.total() * picture.elemSize();
    data->refcount = 1;
    picture.u = data;
    return picture;
}

// Answers the seals.
int check(const Descriptor& memory, std::size_t bytes) {
    const int seals = ::fcntl(memory.number(), F_GET_SEALS);
    if (seals < 0 || (seals & F_SEAL_SHRINK) == 0) fail(EPERM, "not sealed");
    const off_t length = ::lseek(memory.number(), 0, SEEK_END);
    if (length < 0 || static_cast<std::size_t>(length) < bytes) fail(EINVAL, "too short");
    return seals;
}

void read_into(const Descriptor& memory, std::span<std::byte> bytes) {
    off_t at = 0;
    while (!bytes.empty()) {
        const ssize_t count = ::pread(memory.number(), bytes.data(), bytes.size(), at);
        if (count == 0 || (count < 0 && errno != EINTR)) fail(count < 0 ? errno : EIO, "pread");
        if (count < 0) continue;
        bytes = bytes.subspan(static_cast<std::size_t>(count));
        at += count;
    }
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
    void* start = ::mmap(nullptr, bytes, PROT_READ | PROT_WRITE, sharing, memory.number(), 0);
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
    std::memcpy(kept_, bytes.data(), bytes.size());
    return memory_;
}

// Who is given the memory may not write to it; this mapping, which is older than the seal, may.
void PassedBytes::make_room(std::size_t bytes) {
    let_go();
    memory_ = new_memory();
    if (::lseek(memory_.number(), static_cast<off_t>(bytes - 1), SEEK_SET) < 0)
        fail(errno, "lseek");
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

std::vector<std::byte> copied_bytes(const Descriptor& memory, std::size_t bytes) {
    check(memory, bytes);
    std::vector<std::byte> copy(bytes);
    read_into(memory, copy);
    return copy;
}

cv::Mat picture_in(const Descriptor& memory, int rows, int columns, int type) {
    const std::size_t bytes = static_cast<std::size_t>(rows) * static_cast<std::size_t>(columns) *
                              static_cast<std::size_t>(CV_ELEM_SIZE(type));
    const bool lasting = (check(memory, bytes) & F_SEAL_WRITE) != 0;
    if (lasting) return held_picture(mapped(memory, bytes, MAP_PRIVATE), rows, columns, type);
    cv::Mat picture(rows, columns, type);
    read_into(memory, {reinterpret_cast<std::byte*>(picture.data), bytes});
    return picture;
}

GivenBytes::GivenBytes(const Descriptor& memory, std::size_t bytes) {
    if (bytes <= few) {
        copy_ = copied_bytes(memory, bytes);
        bytes_ = copy_;
        return;
    }
    check(memory, bytes);
    bytes_ = {static_cast<const std::byte*>(mapped(memory, bytes, MAP_PRIVATE)), bytes};
}

GivenBytes::~GivenBytes() {
    if (copy_.empty() && !bytes_.empty()) {
        ::munmap(const_cast<std::byte*>(bytes_.data()), bytes_.size());
    }
}

}  // namespace quarterturn
