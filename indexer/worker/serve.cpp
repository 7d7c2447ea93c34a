#include "indexer/worker/serve.h"

#include <iconv.h>
#include <malloc.h>
#include <signal.h>
#include <sys/prctl.h>
#include <unistd.h>

#include <charconv>
#include <iostream>

#include "indexer/image/decode.h"
#include "indexer/worker/confine.h"
#include "indexer/worker/packed_metadata.h"
#include "indexer/worker/photo_decoder.h"
#include "indexer/worker/shared_bytes.h"

namespace quarterturn {
namespace {

std::vector<std::byte> bytes_of(std::string_view text) {
    const auto bytes = std::as_bytes(std::span(text));
    return {bytes.begin(), bytes.end()};
}

Answer metadata_answer(std::span<const std::byte> photo) {
    return {{.said = Said::metadata}, packed(read_metadata(photo))};
}

Answer picture_answer(const Request& request, std::span<const std::byte> photo) {
    static const std::unique_ptr<Decoder> pictures = make_local_decoder();
    Decoded decoded =
        PhotoDecoder{*pictures}.decode({photo, request.orientation, request.long_edge});
    if (!decoded.ok()) return {{.said = Said::refused}, bytes_of(decoded.refused)};
    const cv::Mat whole = decoded.bgr.isContinuous() ? decoded.bgr : decoded.bgr.clone();
    return {{.said = Said::picture,
             .rows = whole.rows,
             .columns = whole.cols,
             .full_width = decoded.full_width,
             .full_height = decoded.full_height,
             .orientation_applied = decoded.orientation_applied},
            {},
            whole};
}

// The signal that ends a worker with the program comes only from then on.
bool end_with(int parent) {
    return ::prctl(PR_SET_PDEATHSIG, SIGKILL) == 0 && ::getppid() == parent;
}

// Blocks of a photo's size are kept for the next photo, as in an import (intake/threads.h).
void keep_memory() {
    ::mallopt(M_MMAP_THRESHOLD, 32 << 20);
    ::mallopt(M_TRIM_THRESHOLD, 512 << 20);
}

// Libraries open files when they are used for the first time, and these doors are about to close.
void use_for_the_first_time() {
    cv::setNumThreads(1);
    set_up_codecs();
    set_up_metadata();
    ::tzset();
    const iconv_t converter = ::iconv_open("UTF-8", "UCS-2LE");
    if (converter != reinterpret_cast<iconv_t>(-1)) ::iconv_close(converter);
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

Answer answer(const Request& request, std::span<const std::byte> photo) {
    return request.asked == Asked::metadata ? metadata_answer(photo)
                                            : picture_answer(request, photo);
}

int be_worker(const WorkerWords& words, const Answering& answering) try {
    if (!end_with(words.parent)) return 1;
    ::close_range(worker_socket + 1, ~0U, 0);
    keep_memory();
    use_for_the_first_time();
    confine(words.most_memory);
    const Descriptor socket{worker_socket};
    send(socket, WorkerReply{.said = Said::ready});
    answer_all(socket, answering);
    return 0;
} catch (const std::exception& failure) {
    std::cerr << "quarterturn-decoder: " << failure.what() << '\n';
    return 1;
}

int be_worker(std::span<char*> words, const Answering& answering) {
    WorkerWords read;
    if (words.size() != 3 || !read_number(words[1], read.parent) ||
        !read_number(words[2], read.most_memory)) {
        std::cerr
            << "quarterturn-decoder opens photos for Quarterturn, which starts it by itself.\n";
        return 2;
    }
    return be_worker(read, answering);
}

}  // namespace quarterturn
