#pragma once
// One worker: a confined process that opens photos, one after the other.

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <memory>
#include <span>
#include <stdexcept>
#include <string>

#include "indexer/image/decode.h"
#include "indexer/metadata/read.h"
#include "indexer/worker/message.h"
#include "indexer/worker/shared_bytes.h"

namespace quarterturn {

// No worker could be started, so no photo is opened. what() is a sentence with the next step.
class NoWorker : public std::runtime_error {
  public:
    explicit NoWorker(const std::string& sentence, bool was_silent = false)
        : std::runtime_error(sentence), was_silent_(was_silent) {}
    bool was_silent() const { return was_silent_; }  // it started, and never answered

  private:
    bool was_silent_;
};

// A worker died or was ended over a photo. what() is a sentence without the photo's name.
class GivenUp : public std::runtime_error {
  public:
    GivenUp(const std::string& sentence, bool took_too_long)
        : std::runtime_error(sentence), took_too_long_(took_too_long) {}
    bool took_too_long() const { return took_too_long_; }

  private:
    bool took_too_long_;
};

// What one photo may take. A see-through TIFF of 250 megapixels, the largest picture that is
// opened, holds 2.75 GB at once (as RGBA, as BGR, and the paper that shows through it). Times are a
// guess far above what was seen: 240 megapixels took three seconds.
struct WorkerLimits {
    std::chrono::milliseconds time{120'000};
    std::chrono::seconds processor_time{60};
    // A start takes a tenth of a second; a computer that is busy may take its time.
    std::chrono::milliseconds time_to_start{60'000};
    std::int64_t memory = std::int64_t{3} << 30;  // bytes; open under the address sanitizer
};

class WorkerProcess {
  public:
    // Starts the program. The system ends the worker with the thread that calls this. Throws
    // NoWorker.
    WorkerProcess(const std::filesystem::path& program, const WorkerLimits& limits);
    ~WorkerProcess();  // ends it, whatever it does
    WorkerProcess(const WorkerProcess&) = delete;
    WorkerProcess& operator=(const WorkerProcess&) = delete;

    // Waits until it is confined, at most so long. Throws NoWorker.
    void become_ready(std::chrono::milliseconds most_time);

    // Both throw GivenUp, also for an answer that no honest worker gives, and std::system_error
    // when this computer has no memory for it; the worker is of no use afterwards.
    FileMetadata metadata(std::span<const std::byte> photo);
    std::vector<FileMetadata> all_metadata(std::span<const std::span<const std::byte>> photos);
    Decoded decode(const DecodeRequest& request);

    pid_t id() const { return id_; }
    bool has_opened_any() const { return has_opened_any_; }

  private:
    struct Answered {
        WorkerReply reply;
        Descriptor memory;
    };

    Answered ask(const Request& request, std::span<const std::byte> photo);
    void allow_processor_time() const;
    [[noreturn]] void give_up();
    int end();  // its wait status

    WorkerLimits limits_;
    std::filesystem::path program_;
    Descriptor socket_;
    PassedBytes passed_;
    pid_t id_ = 0;
    bool has_opened_any_ = false;
};

}  // namespace quarterturn
