#pragma once
// What a process may no longer do from here on, whatever bytes come its way: open a file, a socket
// or a program, start a process, or take more memory than a photo needs. Three locks, one behind
// the other: limits (setrlimit(2)), the list of calls it may make (seccomp(2)), and, where the
// kernel has it, no way into any folder (landlock(7)).

#include <cstdint>

namespace quarterturn {

// Forbidden calls that libraries are known to try fail; those that none of them has a reason to
// make, such as execve, socket and ptrace, end the process (SIGSYS). `most_memory` is in bytes of
// address space; 0 leaves it open, as the address sanitizer needs. Throws std::system_error when
// the kernel cannot confine it; nothing may be read then.
void confine(std::int64_t most_memory);

}  // namespace quarterturn
