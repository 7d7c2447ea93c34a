#pragma once
// The same work on many things, some at a time: decoding is what a sheet waits for.

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace quarterturn {

inline constexpr std::size_t two_at_once = 2;
// Where much is to be done here too: half of them wait for the processes that decode.
inline constexpr std::size_t four_at_once = 4;

// Each of the workers gets from make_worker() a function of its own, and together they call it for
// 0 … count - 1, each once. An exception ends the work early and is thrown again here.
template <class MakeWorker>
void side_by_side(std::size_t count, MakeWorker make_worker, std::size_t at_once = two_at_once) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::mutex failing;
    const auto run = [&] {
        try {
            if (next >= count) return;
            auto work = make_worker();
            for (std::size_t i = next++; i < count; i = next++) work(i);
        } catch (...) {
            const std::scoped_lock lock(failing);
            failure = std::current_exception();
            next = count;
        }
    };
    {
        std::vector<std::jthread> others;
        for (std::size_t i = 1; i < std::min(at_once, count); ++i) others.emplace_back(run);
        run();
    }
    if (failure) std::rethrow_exception(failure);
}

}  // namespace quarterturn
