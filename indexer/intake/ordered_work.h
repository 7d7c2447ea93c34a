#pragma once
// The same work for many things on several threads, with the results in the things' own order. A
// thread runs at most `look_ahead` things ahead of the one who takes the results, so that memory
// stays bounded when the taker is slower.

#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <utility>
#include <variant>
#include <vector>

namespace quarterturn {

template <class Result>
class OrderedWork {
  public:
    // work(0) … work(count - 1), each called once and from any thread. After a stop is asked for,
    // no new work is begun. `work` must outlive nothing but this object.
    OrderedWork(std::size_t count, unsigned threads, std::function<Result(std::size_t)> work,
                std::stop_token stop)
        : count_(count),
          look_ahead_(std::size_t{8} * threads),
          work_(std::move(work)),
          stop_(std::move(stop)),
          wake_on_stop_(stop_, [this] { wake_all(); }) {
        for (unsigned i = 0; i < threads; ++i) threads_.emplace_back([this] { run(); });
    }

    // Lets work that was begun end; its results are dropped.
    ~OrderedWork() {
        {
            const std::lock_guard lock{mutex_};
            abandoned_ = true;
        }
        changed_.notify_all();
    }

    OrderedWork(const OrderedWork&) = delete;
    OrderedWork& operator=(const OrderedWork&) = delete;

    // The next result in order; nothing after the last one, or when the work was stopped and all
    // that was begun has been given. Throws what the work threw.
    std::optional<Result> next() {
        std::unique_lock lock{mutex_};
        changed_.wait(lock, [this] { return done_.contains(given_) || no_more(); });
        const auto found = done_.find(given_);
        if (found == done_.end()) return std::nullopt;
        auto outcome = std::move(found->second);
        done_.erase(found);
        ++given_;
        lock.unlock();
        changed_.notify_all();
        if (auto* const failure = std::get_if<std::exception_ptr>(&outcome)) {
            std::rethrow_exception(*failure);
        }
        return std::get<Result>(std::move(outcome));
    }

  private:
    using Outcome = std::variant<Result, std::exception_ptr>;

    bool halted() const { return abandoned_ || stop_.stop_requested(); }
    // Nothing is under way that could become the next result.
    bool no_more() const { return given_ == begun_ && (begun_ == count_ || halted()); }

    void wake_all() {
        const std::lock_guard lock{mutex_};
        changed_.notify_all();
    }

    std::optional<std::size_t> begin_one() {
        std::unique_lock lock{mutex_};
        changed_.wait(
            lock, [this] { return halted() || begun_ == count_ || begun_ < given_ + look_ahead_; });
        if (halted() || begun_ == count_) return std::nullopt;
        return begun_++;
    }

    Outcome outcome_of(std::size_t index) {
        try {
            return work_(index);
        } catch (...) {
            return std::current_exception();
        }
    }

    void run() {
        while (const auto index = begin_one()) {
            auto outcome = outcome_of(*index);
            {
                const std::lock_guard lock{mutex_};
                done_.emplace(*index, std::move(outcome));
            }
            changed_.notify_all();
        }
        changed_.notify_all();
    }

    std::mutex mutex_;
    std::condition_variable changed_;
    std::map<std::size_t, Outcome> done_;
    std::size_t begun_ = 0;
    std::size_t given_ = 0;
    bool abandoned_ = false;
    const std::size_t count_;
    const std::size_t look_ahead_;
    const std::function<Result(std::size_t)> work_;
    const std::stop_token stop_;
    std::stop_callback<std::function<void()>> wake_on_stop_;
    std::vector<std::jthread> threads_;  // last: joined before anything they use goes away
};

}  // namespace quarterturn
