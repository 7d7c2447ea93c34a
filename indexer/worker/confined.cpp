#include "indexer/worker/confined.h"

#include <unistd.h>

#include "indexer/parts/part.h"

namespace quarterturn {
namespace {

constexpr unsigned workers_for_each_core = 2;  // as many as an import has threads

unsigned cores() {
    return std::max(1U, std::thread::hardware_concurrency());
}

// Those of whatever process asks: after a fork, the child has its own.
class OfEachProcess {
  public:
    explicit OfEachProcess(const char* program) : program_(program) {}

    Workers& workers() {
        const std::lock_guard lock{mutex_};
        // Those of the process that this one was forked from are that one's to end.
        if (process_ != ::getpid()) {
            workers_ = new Workers(beside_program(program_), WorkerLimits{},
                                   workers_for_each_core * cores());
            process_ = ::getpid();
        }
        return *workers_;
    }

  private:
    const char* program_;
    std::mutex mutex_;
    pid_t process_ = 0;
    Workers* workers_ = nullptr;  // never destroyed: the system ends the workers
};

Workers& jpeg_workers() {
    static OfEachProcess all{"quarterturn-jpeg-decoder"};
    return all.workers();
}

class ConfinedDecoder final : public Decoder {
  public:
    using Choice = Workers& (*)(std::span<const std::byte> photo);

    explicit ConfinedDecoder(Choice choice) : choice_(choice) {}

    Decoded decode(const DecodeRequest& request) override try {
        return choice_(request.bytes).decode(request);
    } catch (const GivenUp& reason) {
        return refusal(reason.what());
    } catch (const NoWorker& reason) {
        Decoded decoded = refusal(reason.what());
        decoded.nothing_opens = true;
        return decoded;
    }

  private:
    static Decoded refusal(const char* sentence) {
        Decoded decoded;
        decoded.refused = sentence;
        return decoded;
    }

    Choice choice_;
};

}  // namespace

std::unique_ptr<Decoder> make_confined_decoder() {
    return std::make_unique<ConfinedDecoder>(
        [](std::span<const std::byte>) -> Workers& { return workers_of_this_process(); });
}

std::unique_ptr<Decoder> make_quick_decoder() {
    return std::make_unique<ConfinedDecoder>([](std::span<const std::byte> photo) -> Workers& {
        return sniff(photo) == FileKind::jpeg ? jpeg_workers() : workers_of_this_process();
    });
}

void start_quick_workers() {
    constexpr unsigned side_by_side = 2;  // how many pictures a page opens at once
    jpeg_workers().start_ahead(std::min(side_by_side, cores()));
}

FileMetadata read_metadata_confined(std::span<const std::byte> photo) {
    return workers_of_this_process().metadata(photo);
}

std::vector<FileMetadata> read_metadata_confined(
    std::span<const std::span<const std::byte>> photos) {
    return workers_of_this_process().all_metadata(photos);
}

Workers& workers_of_this_process() {
    static OfEachProcess all{"quarterturn-decoder"};
    return all.workers();
}

std::filesystem::path decoder_program() {
    return beside_program("quarterturn-decoder");
}

}  // namespace quarterturn
