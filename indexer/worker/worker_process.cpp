#include "indexer/worker/worker_process.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <ctime>

#include "indexer/worker/bundle.h"
#include "indexer/worker/packed_metadata.h"

namespace quarterturn {
namespace {

#ifdef QUARTERTURN_SANITIZED
constexpr bool limits_memory = false;
#else
constexpr bool limits_memory = true;
#endif

NoWorker no_worker(const std::filesystem::path& program, bool was_silent = false) {
    const bool some_alone = program.filename() == "quarterturn-heif-decoder";
    return NoWorker(std::string(some_alone ? "No HEIC or AVIF" : "No photo") +
                        " can be opened, since the program that opens them, " + program.string() +
                        (was_silent ? ", starts and never answers" : ", does not start") +
                        ". Install Quarterturn again, or start the computer anew.",
                    was_silent);
}

// How the other process begins: its socket in place, nothing of this one's, and not stopped by the
// Ctrl-C that is meant for this one.
class Beginning {
  public:
    explicit Beginning(const Descriptor& socket) {
        ::posix_spawn_file_actions_init(&files_);
        ::posix_spawn_file_actions_adddup2(&files_, socket.number(), worker_socket);
        ::posix_spawn_file_actions_addopen(&files_, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
        ::posix_spawn_file_actions_addopen(&files_, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
        ::posix_spawnattr_init(&attributes_);
        ::posix_spawnattr_setflags(
            &attributes_, POSIX_SPAWN_SETPGROUP | POSIX_SPAWN_SETSIGMASK | POSIX_SPAWN_SETSIGDEF);
        sigset_t signals;
        ::sigemptyset(&signals);
        ::posix_spawnattr_setsigmask(&attributes_, &signals);
        ::sigfillset(&signals);
        ::posix_spawnattr_setsigdefault(&attributes_, &signals);
    }
    ~Beginning() {
        ::posix_spawn_file_actions_destroy(&files_);
        ::posix_spawnattr_destroy(&attributes_);
    }
    Beginning(const Beginning&) = delete;
    Beginning& operator=(const Beginning&) = delete;

    // Answers nothing when the program cannot be started.
    std::optional<pid_t> start(const std::filesystem::path& program,
                               const WorkerLimits& limits) const {
        std::string name = program.filename();
        std::string parent = std::to_string(::getpid());
        std::string memory = std::to_string(limits_memory ? limits.memory : 0);
        const std::array<char*, 4> words{name.data(), parent.data(), memory.data(), nullptr};
        pid_t id = 0;
        const int error = ::posix_spawn(&id, program.c_str(), &files_, &attributes_, words.data(),
                                        environment().data());
        return error == 0 ? std::optional{id} : std::nullopt;
    }

  private:
    // exiv2 makes a thousand small things for each photo, and glibc keeps seven of a size at hand.
    static std::vector<char*> environment() {
        static std::string many_small_things = "GLIBC_TUNABLES=glibc.malloc.tcache_count=1000";
        std::vector<char*> lines{many_small_things.data()};
        for (char** line = environ; *line != nullptr; ++line) lines.push_back(*line);
        lines.push_back(nullptr);
        return lines;
    }

    posix_spawn_file_actions_t files_{};
    posix_spawnattr_t attributes_{};
};

std::string in_words(std::chrono::milliseconds time) {
    const auto seconds = std::chrono::ceil<std::chrono::seconds>(time).count();
    return std::to_string(seconds) + (seconds == 1 ? " second" : " seconds");
}

std::string too_long(const WorkerLimits& limits) {
    return "To open it took more than " + in_words(limits.processor_time) +
           ", longer than any photo takes, and was given up. Keep the original, and save the photo "
           "as a JPEG where it opens.";
}

std::string why_it_died(int status, const WorkerLimits& limits) {
    const int signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    if (signal == SIGXCPU) return too_long(limits);
    if (signal == SIGSYS) {
        return "While it was opened, it made the program attempt what no photo needs, which was "
               "not let happen. It may be meant to do harm: keep the original apart, and ask "
               "whoever "
               "gave it to you for another copy.";
    }
    return "It is damaged in such a way that the program which opens photos ended over it. Keep "
           "the "
           "original, and save the photo as a JPEG where it opens.";
}

// Those of decoders are of printable ASCII and the sign between width and height.
bool is_sentence(std::string text) {
    static const std::string times = "×";
    for (auto at = text.find(times); at != std::string::npos; at = text.find(times)) {
        text.erase(at, times.size());
    }
    return std::ranges::all_of(text, [](char letter) { return letter >= ' ' && letter <= '~'; });
}

constexpr std::size_t longest_sentence = 1000;  // bytes

std::string text_of(std::span<const std::byte> bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

bool is_picture(const WorkerReply& reply) {
    constexpr std::int64_t longest_edge = 1 << 30;
    const auto is_edge = [](std::int64_t pixels) { return pixels > 0 && pixels < longest_edge; };
    if (reply.said != Said::picture || !is_edge(reply.rows) || !is_edge(reply.columns) ||
        !is_edge(reply.full_width) || !is_edge(reply.full_height)) {
        return false;
    }
    const std::uint64_t bytes = std::uint64_t{3} * static_cast<std::uint64_t>(reply.rows) *
                                static_cast<std::uint64_t>(reply.columns);
    return bytes == reply.bytes && reply.orientation_applied >= 1 && reply.orientation_applied <= 8;
}

}  // namespace

WorkerProcess::WorkerProcess(const std::filesystem::path& program, const WorkerLimits& limits)
    : limits_(limits), program_(program) {
    std::array<int, 2> ends{};
    if (::socketpair(AF_UNIX, SOCK_SEQPACKET | SOCK_CLOEXEC, 0, ends.data()) != 0) {
        throw no_worker(program);
    }
    socket_ = Descriptor{ends[0]};
    const Descriptor its_socket{ends[1]};
    const auto id = Beginning{its_socket}.start(program, limits);
    if (!id) throw no_worker(program);
    id_ = *id;
}

WorkerProcess::~WorkerProcess() {
    end();
}

void WorkerProcess::become_ready(std::chrono::milliseconds most_time) {
    if (!wait_for_message(socket_, most_time)) throw no_worker(program_, /*was_silent=*/true);
    const auto said = receive<WorkerReply>(socket_);
    if (!said || said->message.said != Said::ready) throw no_worker(program_);
}

FileMetadata WorkerProcess::metadata(std::span<const std::byte> photo) {
    const Answered answered = ask({.asked = Asked::metadata}, photo);
    if (answered.reply.said != Said::metadata) give_up();
    auto metadata = unpacked(copied_bytes(answered.memory, answered.reply.bytes));
    if (!metadata) give_up();
    return *std::move(metadata);
}

std::vector<FileMetadata> WorkerProcess::all_metadata(
    std::span<const std::span<const std::byte>> photos) {
    const Answered answered = ask({.asked = Asked::all_metadata}, bundled(photos));
    if (answered.reply.said != Said::metadata) give_up();
    const auto bundle = copied_bytes(answered.memory, answered.reply.bytes);
    const auto parts = unbundled(bundle);
    if (!parts || parts->size() != photos.size()) give_up();
    std::vector<FileMetadata> all;
    for (const auto part : *parts) {
        auto metadata = unpacked(part);
        if (!metadata) give_up();
        all.push_back(*std::move(metadata));
    }
    return all;
}

Decoded WorkerProcess::decode(const DecodeRequest& request) {
    const Answered answered = ask({.asked = Asked::picture,
                                   .orientation = request.orientation,
                                   .long_edge = request.long_edge},
                                  request.bytes);
    const WorkerReply& reply = answered.reply;
    Decoded decoded;
    if (reply.said == Said::refused && reply.bytes <= longest_sentence) {
        decoded.refused = text_of(copied_bytes(answered.memory, reply.bytes));
        if (!is_sentence(decoded.refused)) give_up();
    } else if (is_picture(reply)) {
        decoded.full_width = reply.full_width;
        decoded.full_height = reply.full_height;
        decoded.orientation_applied = reply.orientation_applied;
        decoded.bgr = picture_in(answered.memory, reply.rows, reply.columns, CV_8UC3);
    }
    if (decoded.ok() == decoded.bgr.empty()) give_up();
    return decoded;
}

WorkerProcess::Answered WorkerProcess::ask(const Request& request,
                                           std::span<const std::byte> photo) {
    allow_processor_time();
    Request whole = request;
    whole.bytes = photo.size();
    if (!send(socket_, whole, passed_.filled_with(photo))) give_up();
    if (!wait_for_message(socket_, limits_.time)) {
        end();
        throw GivenUp(too_long(limits_), /*took_too_long=*/true);
    }
    auto received = receive<WorkerReply>(socket_);
    if (!received || !received->memory.open()) give_up();
    has_opened_any_ = true;
    return {received->message, std::move(received->memory)};
}

// So many seconds from now, of which a worker has spent some on the photos before.
void WorkerProcess::allow_processor_time() const {
    clockid_t clock{};
    timespec spent{};
    if (::clock_getcpuclockid(id_, &clock) != 0 || ::clock_gettime(clock, &spent) != 0) return;
    rlimit bound{};
    if (::prlimit(id_, RLIMIT_CPU, nullptr, &bound) != 0) return;
    bound.rlim_cur = static_cast<rlim_t>(spent.tv_sec + 1 + limits_.processor_time.count());
    ::prlimit(id_, RLIMIT_CPU, &bound, nullptr);
}

void WorkerProcess::give_up() {
    const int status = end();
    throw GivenUp(why_it_died(status, limits_), WIFSIGNALED(status) && WTERMSIG(status) == SIGXCPU);
}

// One that has ended by itself keeps the status that it ended with.
int WorkerProcess::end() {
    if (id_ == 0) return 0;
    int status = 0;
    ::kill(id_, SIGKILL);
    while (::waitpid(id_, &status, 0) < 0 && errno == EINTR) continue;
    id_ = 0;
    return status;
}

}  // namespace quarterturn
