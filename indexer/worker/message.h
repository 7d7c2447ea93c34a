#pragma once
// What the program and a worker say to each other over their socket: one message of fixed length,
// with the bytes it is about as sealed memory (shared_bytes.h).

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>

#include "indexer/worker/descriptor.h"

namespace quarterturn {

// The number of a worker's end of the socket.
inline constexpr int worker_socket = 3;

// The bytes with `all_metadata`, and of its answer, are a bundle (bundle.h).
enum class Asked : std::uint32_t { metadata, all_metadata, picture };

struct Request {
    Asked asked = Asked::metadata;
    std::int32_t orientation = 1;  // both as in DecodeRequest
    std::int32_t long_edge = 0;
    std::uint64_t bytes = 0;
};

// `ready` is said once, before anything is asked; the bytes of the others are packed metadata,
// pixels as rows of BGR, and a sentence.
enum class Said : std::uint32_t { ready, metadata, picture, refused };

struct WorkerReply {
    Said said = Said::refused;
    std::int32_t rows = 0;
    std::int32_t columns = 0;
    std::int32_t full_width = 0;  // these three as in Decoded
    std::int32_t full_height = 0;
    std::int32_t orientation_applied = 1;
    std::uint64_t bytes = 0;
};

template <class Message>
struct Received {
    Message message{};
    Descriptor memory;  // not open when none came with it
};

namespace message_detail {
bool send(int socket, const void* message, std::size_t length, const Descriptor& memory);
bool receive(int socket, void* message, std::size_t length, Descriptor& memory);
}  // namespace message_detail

// False when the other side is gone.
template <class Message>
bool send(const Descriptor& socket, const Message& message, const Descriptor& memory = {}) {
    static_assert(std::is_trivially_copyable_v<Message>);
    return message_detail::send(socket.number(), &message, sizeof message, memory);
}

// Nothing when the other side is gone, or what came is no such message.
template <class Message>
std::optional<Received<Message>> receive(const Descriptor& socket) {
    static_assert(std::is_trivially_copyable_v<Message>);
    Received<Message> received;
    if (!message_detail::receive(socket.number(), &received.message, sizeof received.message,
                                 received.memory)) {
        return std::nullopt;
    }
    return received;
}

// Whether something came, or the other side went, within that time.
bool wait_for_message(const Descriptor& socket, std::chrono::milliseconds at_most);

}  // namespace quarterturn
