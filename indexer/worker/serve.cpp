#include "indexer/worker/serve.h"

#include <fcntl.h>
#include <malloc.h>
#include <signal.h>
#include <sys/prctl.h>
#include <unistd.h>

#include <charconv>
#include <iostream>

#include "indexer/worker/confine.h"
#include "indexer/worker/shared_bytes.h"

namespace quarterturn {
namespace {

// The signal that ends a worker with the program comes only from then on.
bool end_with(int parent) {
    return ::prctl(PR_SET_PDEATHSIG, SIGKILL) == 0 && ::getppid() == parent;
}

// Blocks of a photo's size are kept for the next photo, as in an import (intake/threads.h), and
// each is zeros when it is used again: a damaged photo, of which a library leaves parts unwritten,
// must not show there what another photo has left.
void keep_memory() {
    constexpr int zeros = 0xff;  // the complement of what a block is filled with
    ::mallopt(M_MMAP_THRESHOLD, 32 << 20);
    ::mallopt(M_TRIM_THRESHOLD, 512 << 20);
    ::mallopt(M_PERTURB, zeros);
}

// Libraries have lines of their own to say of a damaged photo, which nobody asked for.
void say_no_more(int nowhere) {
#ifndef QUARTERTURN_SANITIZED
    ::dup2(nowhere, STDERR_FILENO);
#endif
    ::close(nowhere);
}

std::span<const std::byte> bytes_of(const cv::Mat& pixels) {
    return {reinterpret_cast<const std::byte*>(pixels.data), pixels.total() * pixels.elemSize()};
}

bool give(const Descriptor& socket, PassedBytes& passed, const Answer& given) {
    const std::span<const std::byte> bytes =
        given.reply.said == Said::picture ? bytes_of(given.pixels) : std::span(given.bytes);
    WorkerReply reply = given.reply;
    reply.bytes = bytes.size();
    return send(socket, reply, passed.filled_with(bytes));
}

// Where nothing is asked for a moment, what was kept for the next photo goes back.
void wait_for_request(const Descriptor& socket, PassedBytes& passed) {
    if (wait_for_message(socket, std::chrono::seconds{1})) return;
    passed.let_go();
    ::malloc_trim(0);
}

void answer_all(const Descriptor& socket, const Answering& answering) {
    PassedBytes passed;
    for (;;) {
        wait_for_request(socket, passed);
        const auto received = receive<Request>(socket);
        if (!received) return;
        const GivenBytes photo{received->memory, received->message.bytes};
        if (!give(socket, passed, answering(received->message, photo.bytes()))) return;
    }
}

template <class Number>
bool read_number(std::string_view text, Number& number) {
    const char* const end = text.data() + text.size();
    return std::from_chars(text.data(), end, number).ptr == end;
}

}  // namespace

int be_worker(const WorkerWords& words, const Trade& trade) try {
    if (!end_with(words.parent)) return 1;
    ::close_range(worker_socket + 1, ~0U, 0);
    keep_memory();
    trade.use_for_the_first_time();
    const int nowhere = ::open("/dev/null", O_WRONLY);
    confine(words.most_memory);
    say_no_more(nowhere);
    const Descriptor socket{worker_socket};
    send(socket, WorkerReply{.said = Said::ready});
    answer_all(socket, trade.answering);
    return 0;
} catch (const std::exception& failure) {
    std::cerr << "quarterturn-decoder: " << failure.what() << '\n';
    return 1;
}

int be_worker(std::span<char*> words, const Trade& trade) {
    WorkerWords read;
    if (words.size() != 3 || !read_number(words[1], read.parent) ||
        !read_number(words[2], read.most_memory)) {
        std::cerr
            << "quarterturn-decoder opens photos for Quarterturn, which starts it by itself.\n";
        return 2;
    }
    return be_worker(read, trade);
}

}  // namespace quarterturn
