#pragma once
// From here on, this process and all that it starts are ended (SIGSYS) by the first socket that
// leads beyond this computer. Those of the desktop's own services stay (AF_UNIX).

#include <seccomp.h>
#include <sys/socket.h>

#include <memory>
#include <stdexcept>

namespace quarterturn {

inline void end_at_the_first_network_socket() {
    const std::unique_ptr<void, decltype(&seccomp_release)> filter{seccomp_init(SCMP_ACT_ALLOW),
                                                                   &seccomp_release};
    const scmp_arg_cmp elsewhere{0, SCMP_CMP_NE, AF_UNIX, 0};
    if (!filter ||
        seccomp_rule_add_array(filter.get(), SCMP_ACT_KILL_PROCESS, SCMP_SYS(socket), 1,
                               &elsewhere) != 0 ||
        seccomp_rule_add(filter.get(), SCMP_ACT_KILL_PROCESS, SCMP_SYS(io_uring_setup), 0) != 0 ||
        seccomp_load(filter.get()) != 0) {
        throw std::runtime_error("the kernel lets sockets not be watched");
    }
}

}  // namespace quarterturn
