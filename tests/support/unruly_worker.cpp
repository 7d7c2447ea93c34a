// A worker that does what the bytes of a "photo" tell it, confined like the one that opens photos:
// what a hostile file might bring that one to do.

#include <fcntl.h>
#include <netinet/in.h>
#include <sys/mman.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <map>
#include <thread>

#include "indexer/worker/serve.h"

namespace quarterturn {
namespace {

std::string outcome(long result) {
    return result >= 0 ? "done" : std::strerror(errno);
}

std::string take_memory() {
    std::vector<std::unique_ptr<std::byte[]>> held;
    constexpr std::size_t at_once = 64 << 20;
    try {
        for (;;) {
            held.push_back(std::make_unique<std::byte[]>(at_once));
            std::memset(held.back().get(), 1, at_once);
        }
    } catch (const std::bad_alloc&) {
        return "no more than " + std::to_string(held.size() * at_once);
    }
}

[[noreturn]] void work_for_ever() {
    volatile unsigned steps = 0;
    for (;;) steps = steps + 1;
}

[[noreturn]] void wait_for_ever() {
    for (;;) std::this_thread::sleep_for(std::chrono::hours{1});
}

char* const no_words[] = {nullptr};

const std::map<std::string, std::string (*)()>& deeds() {
    static const std::map<std::string, std::string (*)()> all{
        {"nothing", [] { return std::string("done"); }},
        {"read a file", [] { return outcome(::open("/etc/hostname", O_RDONLY)); }},
        {"write a file", [] { return outcome(::open("/tmp/x", O_WRONLY | O_CREAT, 0600)); }},
        {"list a folder", [] { return outcome(::open("/", O_RDONLY | O_DIRECTORY)); }},
        {"make a folder", [] { return outcome(::mkdir("/tmp/x", 0700)); }},
        {"remove a file", [] { return outcome(::unlink("/tmp/x")); }},
        {"run code from memory",
         [] {
             void* memory = ::mmap(nullptr, 4096, PROT_READ | PROT_WRITE | PROT_EXEC,
                                   MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
             return outcome(memory == MAP_FAILED ? -1 : 0);
         }},
        {"raise a limit",
         [] {
             const rlimit most{RLIM_INFINITY, RLIM_INFINITY};
             return outcome(::setrlimit(RLIMIT_CPU, &most));
         }},
        {"use a thread",
         [] {
             std::string done;
             std::thread([&] { done = "done"; }).join();
             return done;
         }},
        {"open a socket", [] { return outcome(::socket(AF_INET, SOCK_STREAM, 0)); }},
        {"open a local socket", [] { return outcome(::socket(AF_UNIX, SOCK_STREAM, 0)); }},
        {"run a program", [] { return outcome(::execve("/bin/true", no_words, no_words)); }},
        {"start a process", [] { return outcome(::fork()); }},
        {"end its parent", [] { return outcome(::kill(::getppid(), SIGTERM)); }},
        {"crash", [] { return outcome(std::raise(SIGSEGV)); }},
        {"leave", []() -> std::string { ::_exit(0); }},
        {"wait", []() -> std::string { wait_for_ever(); }},
        {"work", []() -> std::string { work_for_ever(); }},
        {"take memory", take_memory},
    };
    return all;
}

Answer sentence(const std::string& text) {
    const auto bytes = std::as_bytes(std::span(text));
    return {{.said = Said::refused}, {bytes.begin(), bytes.end()}};
}

// What no honest worker answers.
std::optional<Answer> lie(const std::string& told) {
    if (told == "answer rubbish")
        return Answer{{.said = Said::metadata}, std::vector<std::byte>(12)};
    if (told == "say rubbish") return Answer{{.said = Said::refused}, std::vector<std::byte>(12)};
    if (told == "say nothing") return Answer{{.said = Said::refused}};
    return std::nullopt;
}

Answer do_as_told(const Request&, std::span<const std::byte> photo) {
    const std::string told(reinterpret_cast<const char*>(photo.data()), photo.size());
    if (const auto lying = lie(told)) return *lying;
    return sentence(deeds().at(told)());
}

}  // namespace
}  // namespace quarterturn

int main(int argc, char** argv) {
    ::_exit(quarterturn::be_worker({argv, static_cast<std::size_t>(argc)},
                                   {.answering = quarterturn::do_as_told}));
}
