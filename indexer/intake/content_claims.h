#pragma once
// Each content is taken in once, however many files hold it and however many threads meet it.

#include <future>
#include <mutex>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "indexer/intake/examine.h"

namespace quarterturn {

class ContentClaims {
  public:
    struct Claim {
        std::shared_future<Examined> result;         // not valid when the library holds the content
        std::optional<std::promise<Examined>> mine;  // who holds this must keep the promise
    };

    explicit ContentClaims(std::vector<std::string> in_library)
        : in_library_(std::make_move_iterator(in_library.begin()),
                      std::make_move_iterator(in_library.end())) {}

    bool in_library(const std::string& sha256) {
        const std::lock_guard lock{mutex_};
        return in_library_.contains(sha256);
    }

    Claim claim(const std::string& sha256) {
        const std::lock_guard lock{mutex_};
        if (in_library_.contains(sha256)) return {};
        if (const auto found = under_way_.find(sha256); found != under_way_.end()) {
            return {found->second, std::nullopt};
        }
        std::promise<Examined> mine;
        std::shared_future<Examined> result = mine.get_future().share();
        under_way_.emplace(sha256, result);
        return {std::move(result), std::move(mine)};
    }

    void recorded(const std::string& sha256) {
        const std::lock_guard lock{mutex_};
        in_library_.insert(sha256);
        under_way_.erase(sha256);
    }

  private:
    std::mutex mutex_;
    std::unordered_set<std::string> in_library_;
    std::unordered_map<std::string, std::shared_future<Examined>> under_way_;
};

}  // namespace quarterturn
