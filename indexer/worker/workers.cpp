#include "indexer/worker/workers.h"

#include <system_error>

namespace quarterturn {
namespace {

constexpr const char* no_memory =
    "This computer's memory is too small for it: close other programs and try again.";

// How many times as short the next are waited for, so that a minute is lost once and not with each
// photo.
constexpr int once_silent = 60;

template <class Thing>
Thing taken_from(std::vector<Thing>& things) {
    Thing last = std::move(things.back());
    things.pop_back();
    return last;
}

}  // namespace

Workers::Workers(std::filesystem::path program, WorkerLimits limits, unsigned most)
    : program_(std::move(program)), limits_(limits), free_seats_(most) {}

Workers::~Workers() {
    idle_.clear();
    ahead_.clear();
    {
        const std::lock_guard lock{mutex_};
        over_ = true;
    }
    asked_.notify_all();
    if (starter_.joinable()) starter_.join();
}

template <class Work>
auto Workers::with_one(const Work& work) {
    take_seat();
    Worker worker;
    try {
        worker = idle_or_new();
        for (;;) {
            const bool is_new = !worker->has_opened_any();
            try {
                auto answer = work(*worker);
                leave_seat(std::move(worker));
                return answer;
            } catch (const GivenUp& reason) {
                if (is_new || reason.took_too_long()) throw;
            } catch (const std::system_error&) {
                throw GivenUp(no_memory, /*took_too_long=*/false);
            }
            worker = start();
        }
    } catch (...) {
        leave_seat({});
        throw;
    }
}

void Workers::start_ahead(unsigned count) {
    for (unsigned i = 0; i < count; ++i) {
        std::future<Worker> started = ask_for_one();
        const std::lock_guard lock{mutex_};
        ahead_.push_back(std::move(started));
    }
}

FileMetadata Workers::metadata(std::span<const std::byte> photo) {
    return with_one([&](WorkerProcess& worker) { return worker.metadata(photo); });
}

std::vector<FileMetadata> Workers::all_metadata(
    std::span<const std::span<const std::byte>> photos) {
    return with_one([&](WorkerProcess& worker) { return worker.all_metadata(photos); });
}

Decoded Workers::decode(const DecodeRequest& request) {
    return with_one([&](WorkerProcess& worker) { return worker.decode(request); });
}

std::vector<pid_t> Workers::idle() const {
    const std::lock_guard lock{mutex_};
    std::vector<pid_t> ids;
    for (const Worker& worker : idle_) ids.push_back(worker->id());
    return ids;
}

void Workers::take_seat() {
    std::unique_lock lock{mutex_};
    seat_left_.wait(lock, [this] { return free_seats_ > 0; });
    --free_seats_;
}

void Workers::leave_seat(Worker worker) {
    {
        const std::lock_guard lock{mutex_};
        ++free_seats_;
        if (worker) idle_.push_back(std::move(worker));
    }
    seat_left_.notify_one();
}

Workers::Worker Workers::idle_or_new() {
    std::future<Worker> started;
    {
        const std::lock_guard lock{mutex_};
        if (!idle_.empty()) return taken_from(idle_);
        if (!ahead_.empty()) started = taken_from(ahead_);
    }
    return ready(started.valid() ? std::move(started) : ask_for_one());
}

Workers::Worker Workers::start() {
    return ready(ask_for_one());
}

Workers::Worker Workers::ready(std::future<Worker> started) {
    Worker worker = started.get();
    const auto most_time = limits_.time_to_start;
    try {
        worker->become_ready(was_silent_ ? most_time / once_silent : most_time);
    } catch (const NoWorker& reason) {
        if (reason.was_silent()) was_silent_ = true;
        throw;
    }
    was_silent_ = false;
    return worker;
}

std::future<Workers::Worker> Workers::ask_for_one() {
    std::future<Worker> started;
    {
        const std::lock_guard lock{mutex_};
        started = asked_for_.emplace().get_future();
        if (!starter_.joinable()) starter_ = std::thread([this] { start_all_asked_for(); });
    }
    asked_.notify_all();
    return started;
}

void Workers::start_all_asked_for() {
    for (;;) {
        std::unique_lock lock{mutex_};
        asked_.wait(lock, [this] { return over_ || !asked_for_.empty(); });
        if (asked_for_.empty()) return;
        std::promise<Worker> asked = std::move(asked_for_.front());
        asked_for_.pop();
        lock.unlock();
        try {
            asked.set_value(std::make_unique<WorkerProcess>(program_, limits_));
        } catch (...) {
            asked.set_exception(std::current_exception());
        }
    }
}

}  // namespace quarterturn
