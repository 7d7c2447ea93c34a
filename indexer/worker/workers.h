#pragma once
// The workers of this program: as many as photos are opened at once, each started when it is first
// needed.

#include <atomic>
#include <condition_variable>
#include <future>
#include <mutex>
#include <queue>
#include <thread>

#include "indexer/worker/worker_process.h"

namespace quarterturn {

class Workers {
  public:
    // At most so many at once; who asks for more waits. Nothing is started yet.
    Workers(std::filesystem::path program, WorkerLimits limits, unsigned most);
    ~Workers();  // ends them; nobody may be waiting for one
    Workers(const Workers&) = delete;
    Workers& operator=(const Workers&) = delete;

    // Begins to start so many, which whoever comes first waits for: while they start, the program
    // can do something else.
    void start_ahead(unsigned count);

    // Safe to use from several threads at once. A worker that died is replaced, and the photo tried
    // once more where others before it may be to blame. Where one that was started never answered,
    // the next are waited for a fraction of the time. All throw GivenUp and NoWorker.
    FileMetadata metadata(std::span<const std::byte> photo);
    std::vector<FileMetadata> all_metadata(std::span<const std::span<const std::byte>> photos);
    Decoded decode(const DecodeRequest& request);

    std::vector<pid_t> idle() const;  // the processes that wait for the next photo

  private:
    using Worker = std::unique_ptr<WorkerProcess>;

    template <class Work>
    auto with_one(const Work& work);
    Worker idle_or_new();
    Worker start();
    std::future<Worker> ask_for_one();
    Worker ready(std::future<Worker> started);
    void start_all_asked_for();
    void take_seat();
    void leave_seat(Worker worker);

    const std::filesystem::path program_;
    const WorkerLimits limits_;
    mutable std::mutex mutex_;
    std::condition_variable seat_left_;
    std::condition_variable asked_;  // wakes the starter, who sleeps while workers come and go
    std::vector<Worker> idle_;
    std::vector<std::future<Worker>> ahead_;
    unsigned free_seats_;
    std::queue<std::promise<Worker>> asked_for_;
    bool over_ = false;
    std::atomic<bool> was_silent_ = false;  // one that was started never answered
    // The system ends a worker with the thread that started it, so one thread starts them all and
    // lives as long as they do.
    std::thread starter_;
};

}  // namespace quarterturn
