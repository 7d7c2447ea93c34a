#pragma once
// The same work on many things, two at a time: decoding is what a sheet waits for.

#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <thread>

namespace quarterturn {

// Calls work(0) … work(count - 1), each once, from this thread and one more. An exception ends the
// work early and is thrown again here.
template <class Work>
void side_by_side(std::size_t count, Work work) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::mutex failing;
    const auto run = [&] {
        try {
            for (std::size_t i = next++; i < count; i = next++) work(i);
        } catch (...) {
            const std::scoped_lock lock(failing);
            failure = std::current_exception();
            next = count;
        }
    };
    {
        const std::jthread other(run);
        run();
    }
    if (failure) std::rethrow_exception(failure);
}

}  // namespace quarterturn
