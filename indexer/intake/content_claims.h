#pragma once
// Each content is taken in once, however many files hold it and however many threads meet it.

#include <future>
#include <mutex>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>

#include "indexer/intake/examine.h"

namespace quarterturn {

class ContentClaims {
  public:
    struct Claim {
        std::shared_future<Examined> result;         // not valid when it has been recorded
        std::optional<std::promise<Examined>> mine;  // who holds this must keep the promise
    };

    bool is_recorded(const std::string& sha256) {
        const std::lock_guard lock{mutex_};
        return recorded_.contains(sha256);
    }

    Claim claim(const std::string& sha256) {
        const std::lock_guard lock{mutex_};
        if (recorded_.contains(sha256)) return {};
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
        recorded_.insert(sha256);
        under_way_.erase(sha256);
    }

  private:
    std::mutex mutex_;
    std::unordered_set<std::string> recorded_;
    std::unordered_map<std::string, std::shared_future<Examined>> under_way_;
};

}  // namespace quarterturn
