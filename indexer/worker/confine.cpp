#include "indexer/worker/confine.h"

#include <fcntl.h>
#include <linux/landlock.h>
#include <sched.h>
#include <seccomp.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <memory>
#include <system_error>

namespace quarterturn {
namespace {

using Filter = std::unique_ptr<void, decltype(&seccomp_release)>;

// Of a call: its argument of this number, compared with values.
scmp_arg_cmp argument(unsigned number, scmp_compare how, scmp_datum_t first,
                      scmp_datum_t second = 0) {
    return {number, how, first, second};
}

void refuse_if(bool failed, int error_number, const char* what) {
    if (failed) throw std::system_error(error_number, std::generic_category(), what);
}

void limit(__rlimit_resource what, rlim_t most) {
    const rlimit bound{most, most};
    refuse_if(::setrlimit(what, &bound) != 0, errno, "setrlimit");
}

void set_limits(std::int64_t most_memory) {
    constexpr rlim_t most_open_files = 16;
    constexpr rlim_t most_pixels_of_a_picture = 1 << 30;  // bytes of memory that it may pass on
    limit(RLIMIT_CORE, 0);
    limit(RLIMIT_NOFILE, most_open_files);
    limit(RLIMIT_FSIZE, most_pixels_of_a_picture);
    if (most_memory > 0) limit(RLIMIT_AS, static_cast<rlim_t>(most_memory));
}

void close_folders() {
    const long version =
        ::syscall(SYS_landlock_create_ruleset, nullptr, 0, LANDLOCK_CREATE_RULESET_VERSION);
    if (version < 1) return;  // a kernel without it: seccomp stands alone
    const std::uint64_t all =
        version == 1 ? LANDLOCK_ACCESS_FS_REFER - 1 : (LANDLOCK_ACCESS_FS_REFER << 1) - 1;
    const landlock_ruleset_attr everything{.handled_access_fs = all};
    const auto rules =
        static_cast<int>(::syscall(SYS_landlock_create_ruleset, &everything, sizeof everything, 0));
    refuse_if(rules < 0, errno, "landlock_create_ruleset");
    const long closed = ::syscall(SYS_landlock_restrict_self, rules, 0);
    ::close(rules);
    refuse_if(closed != 0, errno, "landlock_restrict_self");
}

template <class... Conditions>
void add(const Filter& filter, std::uint32_t action, const char* call, Conditions... conditions) {
    const int number = ::seccomp_syscall_resolve_name(call);
    if (number == __NR_SCMP_ERROR) return;  // not on this kind of processor
    const std::array<scmp_arg_cmp, sizeof...(Conditions)> all{conditions...};
    const int error =
        ::seccomp_rule_add_array(filter.get(), action, number, all.size(), all.data());
    refuse_if(error < 0 && error != -EOPNOTSUPP, -error, call);
}

// Memory, threads of this process, the clock, and messages on what is open already.
void allow_work(const Filter& filter) {
    for (const char* call : {"read",
                             "write",
                             "readv",
                             "writev",
                             "pread64",
                             "close",
                             "dup2",
                             "dup3",
                             "lseek",
                             "poll",
                             "ppoll",
                             "recvmsg",
                             "sendmsg",
                             "memfd_create",
                             "munmap",
                             "mremap",
                             "madvise",
                             "brk",
                             "futex",
                             "sched_yield",
                             "sched_getaffinity",
                             "set_robust_list",
                             "rseq",
                             "membarrier",
                             "getpid",
                             "gettid",
                             "getrandom",
                             "getcpu",
                             "sysinfo",
                             "rt_sigaction",
                             "rt_sigprocmask",
                             "rt_sigreturn",
                             "sigaltstack",
                             "restart_syscall",
                             "clock_gettime",
                             "clock_getres",
                             "clock_nanosleep",
                             "nanosleep",
                             "gettimeofday",
                             "time",
                             "getrusage",
                             "exit",
                             "exit_group"}) {
        add(filter, SCMP_ACT_ALLOW, call);
    }
#ifdef QUARTERTURN_SANITIZED
    // The undefined-behaviour sanitizer asks through a pipe of its own what memory can be read.
    for (const char* call : {"pipe", "pipe2"}) add(filter, SCMP_ACT_ALLOW, call);
#endif
    const auto no_program =
        argument(2, SCMP_CMP_MASKED_EQ, std::uint64_t{PROT_EXEC}, std::uint64_t{0});
    add(filter, SCMP_ACT_ALLOW, "mmap", no_program);
    add(filter, SCMP_ACT_ALLOW, "mprotect", no_program);
    add(filter, SCMP_ACT_ALLOW, "fcntl", argument(1, SCMP_CMP_EQ, std::uint64_t{F_ADD_SEALS}));
    add(filter, SCMP_ACT_ALLOW, "fcntl", argument(1, SCMP_CMP_EQ, std::uint64_t{F_GET_SEALS}));
    add(filter, SCMP_ACT_ALLOW, "prctl", argument(0, SCMP_CMP_EQ, std::uint64_t{PR_SET_NAME}));
    add(filter, SCMP_ACT_ALLOW, "tgkill",
        argument(0, SCMP_CMP_EQ, static_cast<std::uint64_t>(::getpid())));
    add(filter, SCMP_ACT_ALLOW, "clone",
        argument(0, SCMP_CMP_MASKED_EQ, std::uint64_t{CLONE_THREAD}, std::uint64_t{CLONE_THREAD}));
    // Its flags lie in memory, where no filter sees them; libraries go on with clone.
    add(filter, SCMP_ACT_ERRNO(ENOSYS), "clone3");
}

void end_at_attack(const Filter& filter) {
    for (const char* call :
         {"execve", "execveat", "fork", "vfork", "socket", "socketpair", "connect", "bind",
          "listen", "accept", "accept4", "ptrace", "process_vm_readv", "process_vm_writev", "kill",
          "mount", "open_by_handle_at", "io_uring_setup", "bpf"}) {
        add(filter, SCMP_ACT_KILL_PROCESS, call);
    }
    add(filter, SCMP_ACT_KILL_PROCESS, "clone",
        argument(0, SCMP_CMP_MASKED_EQ, std::uint64_t{CLONE_THREAD}, std::uint64_t{0}));
}

void filter_calls() {
    const Filter filter{::seccomp_init(SCMP_ACT_ERRNO(EPERM)), &seccomp_release};
    refuse_if(!filter, ENOMEM, "seccomp_init");
    allow_work(filter);
    end_at_attack(filter);
    const int error = ::seccomp_load(filter.get());
    refuse_if(error < 0, -error, "seccomp_load");
}

}  // namespace

void confine(std::int64_t most_memory) {
    refuse_if(::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0, errno, "PR_SET_NO_NEW_PRIVS");
    set_limits(most_memory);
    close_folders();
    filter_calls();
}

}  // namespace quarterturn
