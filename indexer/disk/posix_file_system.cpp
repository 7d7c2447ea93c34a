#include <fcntl.h>
#include <sys/stat.h>
#include <sys/statvfs.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>

#include "indexer/disk/open_file.h"

namespace quarterturn {
namespace {

void check(int result, const Path& file, Doing doing) {
    if (result != 0) throw disk_error(errno, file, doing);
}

Path folder_of(const Path& file) {
    const Path parent = file.parent_path();
    return parent.empty() ? Path{"."} : parent;
}

FileState state_in(const struct stat& found) {
    return {.bytes = found.st_size,
            .modified_ns = found.st_mtim.tv_sec * 1'000'000'000LL + found.st_mtim.tv_nsec,
            .regular = S_ISREG(found.st_mode),
            .device = found.st_dev,
            .number = found.st_ino};
}

[[noreturn]] void refuse_as_no_file(const Path& file, bool folder) {
    if (folder) throw disk_error(EISDIR, file, Doing::reading);
    throw DiskError(file.string() + " is no ordinary file (a pipe or a device): name another file.",
                    file, EINVAL);
}

[[noreturn]] void refuse_as_changed(const Path& file) {
    throw DiskError(file.string() +
                        " changed while it was read: wait until whatever writes it is "
                        "done, and try again.",
                    file, EAGAIN);
}

// A pipe would make open() wait for ever without O_NONBLOCK; on an ordinary file it does nothing.
constexpr int open_to_read = O_RDONLY | O_NONBLOCK | O_NOCTTY;

Bytes read_whole(OpenFile& open, const Path& file, std::int64_t most_bytes) {
    const struct stat before = open.state();
    if (!S_ISREG(before.st_mode)) refuse_as_no_file(file, S_ISDIR(before.st_mode));
    if (before.st_size > most_bytes) throw disk_error(EFBIG, file, Doing::reading);
    Bytes bytes(static_cast<std::size_t>(before.st_size));
    std::byte further{};
    const bool as_long =
        open.read(bytes) == bytes.size() && open.read(std::span(&further, 1), bytes.size()) == 0;
    const bool same_time = state_in(open.state()).modified_ns == state_in(before).modified_ns;
    if (!as_long || !same_time) {
        refuse_as_changed(file);
    }
    return bytes;
}

// Large enough that the disk is asked seldom, and small enough to stay in a processor's cache.
constexpr std::size_t piece_bytes = std::size_t{1} << 18U;

void read_pieces(OpenFile& open, const Path& file,
                 const std::function<void(std::span<const std::byte>)>& take) {
    const struct stat before = open.state();
    if (!S_ISREG(before.st_mode)) refuse_as_no_file(file, S_ISDIR(before.st_mode));
    Bytes piece(piece_bytes);
    std::size_t done = 0;
    while (const std::size_t count = open.read(piece, done)) {
        take(std::span(piece).first(count));
        done += count;
    }
    const struct stat after = open.state();
    const bool same_time = state_in(after).modified_ns == state_in(before).modified_ns;
    if (done != static_cast<std::size_t>(before.st_size) || !same_time) refuse_as_changed(file);
}

bool unsupported(int error_number) {
    return error_number == EINVAL || error_number == ENOSYS || error_number == ENOTSUP;
}

class PosixFileSystem final : public FileSystem {
  public:
    FileState state(const Path& file) override {
        struct stat found {};
        check(::stat(file.c_str(), &found), file, Doing::reading);
        return state_in(found);
    }

    bool exists(const Path& file) override {
        struct stat found {};
        if (::lstat(file.c_str(), &found) == 0) return true;
        if (errno == ENOENT || errno == ENOTDIR) return false;
        throw disk_error(errno, file, Doing::reading);
    }

    bool is_folder(const Path& path) override {
        struct stat found {};
        if (::lstat(path.c_str(), &found) == 0) return S_ISDIR(found.st_mode);
        if (errno == ENOENT || errno == ENOTDIR) return false;
        throw disk_error(errno, path, Doing::reading);
    }

    Bytes read(const Path& file, std::int64_t most_bytes) override {
        OpenFile open(file, open_to_read, Doing::reading);
        return read_whole(open, file, most_bytes);
    }

    Bytes read_front(const Path& file, std::int64_t most_bytes) override {
        OpenFile open(file, open_to_read, Doing::reading);
        const struct stat found = open.state();
        if (!S_ISREG(found.st_mode)) refuse_as_no_file(file, S_ISDIR(found.st_mode));
        Bytes bytes(static_cast<std::size_t>(std::min<std::int64_t>(found.st_size, most_bytes)));
        bytes.resize(open.read(bytes));
        return bytes;
    }

    void read_through(const Path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override {
        OpenFile open(file, open_to_read, Doing::reading);
        read_pieces(open, file, take);
    }

    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        OpenFile open(file, open_to_read, Doing::reading);
        open.drop_page_cache();
        read_pieces(open, file, take);
    }

    void write_new(const Path& file, std::span<const std::byte> bytes) override {
        OpenFile open(file, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW, Doing::writing, 0600);
        try {
            open.write(bytes);
            open.close();
        } catch (...) {
            ::unlink(file.c_str());
            throw;
        }
    }

    void sync_file(const Path& file) override {
        OpenFile(file, open_to_read | O_NOFOLLOW, Doing::writing).sync();
    }

    void sync_folder(const Path& folder) override {
        OpenFile open(folder, O_RDONLY | O_DIRECTORY, Doing::writing);
        try {
            open.sync();
        } catch (const DiskError& error) {
            // Some network disks order folder entries by themselves and know no such call.
            if (!unsupported(error.error_number())) throw;
        }
    }

    void rename_new(const Path& from, const Path& to) override {
        if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
            return;
        if (!unsupported(errno)) throw_from_move(from, to);
        link_new(from, to);
        remove(from);
    }

    void rename_over(const Path& from, const Path& to) override {
        if (::rename(from.c_str(), to.c_str()) != 0) throw_from_move(from, to);
    }

    void link_new(const Path& existing, const Path& name) override {
        check(::link(existing.c_str(), name.c_str()), name, Doing::linking);
    }

    void remove(const Path& file) override { check(::unlink(file.c_str()), file, Doing::removing); }

    void remove_empty_folder(const Path& folder) override {
        check(::rmdir(folder.c_str()), folder, Doing::removing);
    }

    void make_folders(const Path& folder) override {
        if (leads_to_folder(folder)) return;
        const Path parent = folder_of(folder);
        if (parent != folder) make_folders(parent);
        if (::mkdir(folder.c_str(), 0700) == 0) {
            sync_folder(parent);
        } else if (errno != EEXIST || !leads_to_folder(folder)) {
            throw disk_error(errno, folder, Doing::making_folder);
        }
    }

    std::vector<Path> list(const Path& folder) override {
        std::error_code error;
        std::vector<Path> entries;
        std::filesystem::directory_iterator entry(folder, error);
        for (; !error && entry != std::filesystem::directory_iterator{}; entry.increment(error)) {
            entries.push_back(entry->path());
        }
        if (error) throw disk_error(error.value(), folder, Doing::reading);
        std::ranges::sort(entries, {}, &Path::native);
        return entries;
    }

    std::int64_t free_bytes(const Path& folder) override {
        struct statvfs found {};
        check(::statvfs(folder.c_str(), &found), folder, Doing::reading);
        return static_cast<std::int64_t>(found.f_bavail) *
               static_cast<std::int64_t>(found.f_frsize);
    }

  private:
    // Names the file that stands in the way when it is the new name that is wrong.
    [[noreturn]] static void throw_from_move(const Path& from, const Path& to) {
        const int error = errno;
        struct stat found {};
        const bool source_is_there = ::lstat(from.c_str(), &found) == 0;
        throw disk_error(error, source_is_there ? to : from, Doing::moving);
    }

    static bool leads_to_folder(const Path& folder) {
        struct stat found {};
        return ::stat(folder.c_str(), &found) == 0 && S_ISDIR(found.st_mode);
    }
};

}  // namespace

FileSystem& real_file_system() {
    static PosixFileSystem disk;
    return disk;
}

}  // namespace quarterturn
