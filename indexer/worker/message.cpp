#include "indexer/worker/message.h"

#include <poll.h>
#include <sys/socket.h>

#include <array>
#include <cerrno>
#include <cstring>

namespace quarterturn {
namespace {

struct Envelope {
    Envelope(void* message, std::size_t length) : part{message, length} {
        header.msg_iov = &part;
        header.msg_iovlen = 1;
        header.msg_control = control.data();
        header.msg_controllen = control.size();
    }

    alignas(cmsghdr) std::array<char, CMSG_SPACE(sizeof(int))> control{};
    iovec part;
    msghdr header{};
};

Descriptor descriptor_in(msghdr& header) {
    const cmsghdr* enclosed = CMSG_FIRSTHDR(&header);
    if (enclosed == nullptr || enclosed->cmsg_type != SCM_RIGHTS) return {};
    int number = -1;
    std::memcpy(&number, CMSG_DATA(enclosed), sizeof number);
    return Descriptor{number};
}

}  // namespace

bool message_detail::send(int socket, const void* message, std::size_t length,
                          const Descriptor& memory) {
    Envelope envelope{const_cast<void*>(message), length};
    if (memory.open()) {
        cmsghdr* enclosed = CMSG_FIRSTHDR(&envelope.header);
        enclosed->cmsg_level = SOL_SOCKET;
        enclosed->cmsg_type = SCM_RIGHTS;
        enclosed->cmsg_len = CMSG_LEN(sizeof(int));
        const int number = memory.number();
        std::memcpy(CMSG_DATA(enclosed), &number, sizeof number);
    } else {
        envelope.header.msg_controllen = 0;
    }
    ssize_t sent = -1;
    do {
        sent = ::sendmsg(socket, &envelope.header, MSG_NOSIGNAL);
    } while (sent < 0 && errno == EINTR);
    return sent == static_cast<ssize_t>(length);
}

bool message_detail::receive(int socket, void* message, std::size_t length, Descriptor& memory) {
    Envelope envelope{message, length};
    ssize_t received = -1;
    do {
        received = ::recvmsg(socket, &envelope.header, MSG_CMSG_CLOEXEC);
    } while (received < 0 && errno == EINTR);
    if (received > 0) memory = descriptor_in(envelope.header);
    return received == static_cast<ssize_t>(length);
}

bool wait_for_message(const Descriptor& socket, std::chrono::milliseconds at_most) {
    const auto until = std::chrono::steady_clock::now() + at_most;
    for (;;) {
        const auto left =
            std::chrono::ceil<std::chrono::milliseconds>(until - std::chrono::steady_clock::now());
        pollfd waiting{socket.number(), POLLIN, 0};
        const int ready =
            ::poll(&waiting, 1, static_cast<int>(std::max<std::int64_t>(left.count(), 0)));
        if (ready >= 0 || errno != EINTR) return ready > 0;
    }
}

}  // namespace quarterturn
