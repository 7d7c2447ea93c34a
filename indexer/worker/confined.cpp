#include "indexer/worker/confined.h"

#include <unistd.h>

namespace quarterturn {
namespace {

constexpr unsigned workers_for_each_core = 2;  // as many as an import has threads
constexpr int most_folders_up = 3;

class ConfinedDecoder final : public Decoder {
  public:
    Decoded decode(const DecodeRequest& request) override try {
        return workers_of_this_process().decode(request);
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
};

struct OfProcess {
    pid_t process;
    Workers workers;
};

OfProcess* new_workers() {
    const unsigned cores = std::max(1U, std::thread::hardware_concurrency());
    return new OfProcess{::getpid(),
                         {decoder_program(), WorkerLimits{}, workers_for_each_core * cores}};
}

}  // namespace

std::unique_ptr<Decoder> make_confined_decoder() {
    return std::make_unique<ConfinedDecoder>();
}

FileMetadata read_metadata_confined(std::span<const std::byte> photo) {
    return workers_of_this_process().metadata(photo);
}

Workers& workers_of_this_process() {
    static std::mutex mutex;
    static OfProcess* held = nullptr;  // never destroyed: the system ends the workers
    const std::lock_guard lock{mutex};
    if (held && held->process == ::getpid()) return held->workers;
    // Those of the process that this one was forked from are that one's to end.
    held = new_workers();
    return held->workers;
}

std::filesystem::path decoder_program() {
    const std::filesystem::path place = "libexec/quarterturn/quarterturn-decoder";
    const auto bin = std::filesystem::read_symlink("/proc/self/exe").parent_path();
    auto folder = bin;
    for (int up = 0; up < most_folders_up; ++up) {
        folder = folder.parent_path();
        if (std::filesystem::exists(folder / place)) return folder / place;
    }
    return bin.parent_path() / place;
}

}  // namespace quarterturn
