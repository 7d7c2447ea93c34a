#include "indexer/worker/confined.h"

#include <unistd.h>

#include "indexer/parts/part.h"
#include "indexer/worker/workers.h"

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

Workers& photo_workers() {
    static OfEachProcess all{"quarterturn-decoder"};
    return all.workers();
}

Workers& jpeg_workers() {
    static OfEachProcess all{"quarterturn-jpeg-decoder"};
    return all.workers();
}

Workers& heif_workers() {
    static OfEachProcess all{"quarterturn-heif-decoder"};
    return all.workers();
}

Workers& workers_for(FileKind kind) {
    return kind == FileKind::heif ? heif_workers() : photo_workers();
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
        [](std::span<const std::byte> photo) -> Workers& { return workers_for(sniff(photo)); });
}

std::unique_ptr<Decoder> make_quick_decoder() {
    return std::make_unique<ConfinedDecoder>([](std::span<const std::byte> photo) -> Workers& {
        const FileKind kind = sniff(photo);
        return kind == FileKind::jpeg ? jpeg_workers() : workers_for(kind);
    });
}

void start_quick_workers() {
    constexpr unsigned side_by_side = 2;  // how many pictures a page opens at once
    jpeg_workers().start_ahead(std::min(side_by_side, cores()));
}

void start_photo_workers() {
    photo_workers().start_ahead(cores());
}

FileMetadata read_metadata_confined(std::span<const std::byte> photo) {
    return photo_workers().metadata(photo);
}

std::vector<FileMetadata> read_metadata_confined(
    std::span<const std::span<const std::byte>> photos) {
    return photo_workers().all_metadata(photos);
}

std::vector<pid_t> idle_workers() {
    std::vector<pid_t> ids;
    for (const Workers* workers : {&photo_workers(), &jpeg_workers(), &heif_workers()}) {
        std::ranges::copy(workers->idle(), std::back_inserter(ids));
    }
    return ids;
}

}  // namespace quarterturn
