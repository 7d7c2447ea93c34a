#pragma once
// Work done in a process of its own, for what would change this one: who it runs as, which disks it
// sees, or that it is killed.

#include <sched.h>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <exception>
#include <filesystem>
#include <functional>
#include <optional>
#include <stdexcept>
#include <string>

namespace quarterturn {

using Work = std::function<std::string()>;

namespace child_detail {

inline void write_all(int descriptor, const std::string& text) {
    for (std::size_t done = 0; done < text.size();) {
        const auto count = ::write(descriptor, text.data() + done, text.size() - done);
        if (count <= 0) return;
        done += static_cast<std::size_t>(count);
    }
}

inline std::string answer_of(const Work& work) {
    try {
        return work();
    } catch (const std::exception& error) {
        return error.what();
    }
}

}  // namespace child_detail

// What `work` answers, or the what() of what it throws.
inline std::string in_child(const Work& work) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        child_detail::write_all(ends[1], child_detail::answer_of(work));
        ::_exit(0);
    }
    ::close(ends[1]);
    std::string answer;
    std::array<char, 512> part{};
    for (ssize_t count = 1; count > 0;) {
        count = ::read(ends[0], part.data(), part.size());
        if (count > 0) answer.append(part.data(), static_cast<std::size_t>(count));
    }
    ::close(ends[0]);
    ::waitpid(child, nullptr, 0);
    return answer;
}

// As in_child, as a user who owns nothing: permissions mean nothing to root.
inline std::string as_stranger(const Work& work) {
    return in_child([&] {
        if (::geteuid() == 0 && ::setresuid(65534, 65534, 65534) != 0) {
            throw std::runtime_error("cannot become another user");
        }
        return work();
    });
}

namespace child_detail {

// As in_child, with disks that nobody else sees. Nothing where the system does not let us.
inline std::optional<std::string> with_disks(const std::function<bool()>& mount_them,
                                             const Work& work) {
    constexpr const char* refused = "no such disk can be had";
    const std::string answer = in_child([&]() -> std::string {
        const int wanted = ::geteuid() == 0 ? CLONE_NEWNS : CLONE_NEWNS | CLONE_NEWUSER;
        if (::unshare(wanted) != 0 ||
            ::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 || !mount_them()) {
            return refused;
        }
        return work();
    });
    return answer == refused ? std::nullopt : std::optional{answer};
}

}  // namespace child_detail

// As in_child, with a disk of so many bytes at `folder`. Nothing where the system does not let us.
inline std::optional<std::string> on_small_disk(const std::filesystem::path& folder, long bytes,
                                                const Work& work) {
    const std::string size = "size=" + std::to_string(bytes);
    return child_detail::with_disks(
        [&] { return ::mount("small", folder.c_str(), "tmpfs", 0, size.c_str()) == 0; }, work);
}

// The same, with what lies in `folder` on a disk that can only be read.
inline std::optional<std::string> on_read_only_disk(const std::filesystem::path& folder,
                                                    const Work& work) {
    return child_detail::with_disks(
        [&] {
            const char* place = folder.c_str();
            return ::mount(place, place, nullptr, MS_BIND, nullptr) == 0 &&
                   ::mount(nullptr, place, nullptr, MS_BIND | MS_REMOUNT | MS_RDONLY, nullptr) == 0;
        },
        work);
}

}  // namespace quarterturn
