#include "indexer/disk/open_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

namespace quarterturn {
namespace {

// Repeats a call that a signal interrupted.
template <class Call>
auto uninterrupted(Call call) {
    auto result = call();
    while (result < 0 && errno == EINTR) result = call();
    return result;
}

}  // namespace

OpenFile::OpenFile(const Path& file, int flags, Doing doing, mode_t mode)
    : file_(file),
      doing_(doing),
      descriptor_(uninterrupted([&] { return ::open(file.c_str(), flags | O_CLOEXEC, mode); })) {
    if (descriptor_ < 0) fail();
}

OpenFile::~OpenFile() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

void OpenFile::fail() const {
    throw disk_error(errno, file_, doing_);
}

struct stat OpenFile::state() const {
    struct stat result {};
    if (::fstat(descriptor_, &result) != 0) fail();
    return result;
}

void OpenFile::sync() {
    if (uninterrupted([&] { return ::fsync(descriptor_); }) != 0) fail();
}

void OpenFile::drop_page_cache() {
    (void)::posix_fadvise(descriptor_, 0, 0, POSIX_FADV_DONTNEED);
}

std::size_t OpenFile::read(std::span<std::byte> bytes, std::size_t offset) {
    std::size_t done = 0;
    while (done < bytes.size()) {
        const auto count = uninterrupted([&] {
            return ::pread(descriptor_, bytes.data() + done, bytes.size() - done,
                           static_cast<off_t>(offset + done));
        });
        if (count < 0) fail();
        if (count == 0) break;
        done += static_cast<std::size_t>(count);
    }
    return done;
}

void OpenFile::write(std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const auto count =
            uninterrupted([&] { return ::write(descriptor_, bytes.data(), bytes.size()); });
        if (count < 0) fail();
        bytes = bytes.subspan(static_cast<std::size_t>(count));
    }
}

void OpenFile::close() {
    // After EINTR, Linux has closed the file all the same; a second try could close another one.
    const int result = ::close(std::exchange(descriptor_, -1));
    if (result != 0 && errno != EINTR) fail();
}

}  // namespace quarterturn
