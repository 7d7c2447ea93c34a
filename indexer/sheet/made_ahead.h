#pragma once

#include <exception>
#include <functional>
#include <future>
#include <memory>
#include <thread>
#include <utility>
#include <vector>

#include "indexer/sheet/side_by_side.h"

namespace quarterturn {

// Things that threads make one after the other, each waited for where it is needed first. Whoever
// waits for one that failed gets the exception.
template <class Made>
class MadeAhead {
  public:
    MadeAhead() = default;

    // `make` is called for 0 … count - 1, some at a time.
    template <class Make>
    MadeAhead(std::size_t count, Make make) {
        std::vector<std::promise<Made>> promises(count);
        for (auto& promise : promises) made_.push_back(promise.get_future().share());
        if (count == 0) return;
        making_ = std::make_shared<std::jthread>(
            [promises = std::move(promises), make = std::move(make)]() mutable {
                const auto keep_one = [&](std::size_t i) {
                    try {
                        promises[i].set_value(make(i));
                    } catch (...) {
                        promises[i].set_exception(std::current_exception());
                    }
                };
                side_by_side(promises.size(), [&] { return keep_one; });
            });
    }

    explicit MadeAhead(const std::vector<Made>& made) {
        for (const Made& one : made) {
            std::promise<Made> promise;
            promise.set_value(one);
            made_.push_back(promise.get_future().share());
        }
    }

    std::size_t size() const { return made_.size(); }
    const Made& at(std::size_t i) const { return made_.at(i).get(); }
    std::shared_future<Made> promised(std::size_t i) const { return made_.at(i); }
    // Throws what any of them threw.
    void wait() const {
        for (const auto& one : made_) (void)one.get();
    }

  private:
    std::vector<std::shared_future<Made>> made_;
    std::shared_ptr<std::jthread> making_;
};

}  // namespace quarterturn
