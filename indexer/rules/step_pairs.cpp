#include "indexer/rules/step_pairs.h"

#include <algorithm>
#include <set>
#include <sstream>
#include <string>

#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn {
namespace {

using Words = std::set<std::string>;

Words words_of(const Step& step) {
    std::istringstream text(lower(step.words));
    Words words;
    for (std::string word; text >> word;) words.insert(word);
    return words;
}

bool alike(const Words& left, const Words& right) {
    const auto common = std::count_if(
        left.begin(), left.end(), [&](const std::string& word) { return right.contains(word); });
    const auto all = static_cast<long>(left.size() + right.size()) - common;
    return 5 * common >= 2 * all;
}

// How much is gained by pairing what comes at and after each pair of places.
class Gains {
  public:
    Gains(const std::vector<Step>& was, const std::vector<Step>& is)
        : width_(is.size() + 1), gain_((was.size() + 1) * width_), pair_(gain_.size()) {
        // One equal pair outweighs any number of pairs that are only alike.
        const long equal = static_cast<long>(std::min(was.size(), is.size())) + 1;
        std::vector<Words> new_words;
        for (const Step& step : is) new_words.push_back(words_of(step));
        for (std::size_t i = was.size(); i-- > 0;) {
            const Words old_words = words_of(was[i]);
            for (std::size_t j = is.size(); j-- > 0;) {
                const bool same = was[i] == is[j];
                pair_[at(i, j)] = same ? equal : alike(old_words, new_words[j]) ? 1 : 0;
                gain_[at(i, j)] = std::max({gain_[at(i + 1, j)], gain_[at(i, j + 1)],
                                            gain_[at(i + 1, j + 1)] + pair_[at(i, j)]});
            }
        }
    }

    bool pairs(std::size_t i, std::size_t j) const {
        return pair_[at(i, j)] > 0 && gain_[at(i, j)] == gain_[at(i + 1, j + 1)] + pair_[at(i, j)];
    }
    bool old_goes_first(std::size_t i, std::size_t j) const {
        return gain_[at(i, j)] == gain_[at(i + 1, j)];
    }

  private:
    std::size_t at(std::size_t i, std::size_t j) const { return i * width_ + j; }

    std::size_t width_;
    std::vector<long> gain_;
    std::vector<long> pair_;
};

}  // namespace

std::vector<std::pair<std::size_t, std::size_t>> step_pairs(const std::vector<Step>& was,
                                                            const std::vector<Step>& is) {
    const Gains gains(was, is);
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < was.size() && j < is.size()) {
        if (gains.pairs(i, j)) {
            pairs.emplace_back(i++, j++);
        } else if (gains.old_goes_first(i, j)) {
            ++i;
        } else {
            ++j;
        }
    }
    return pairs;
}

}  // namespace quarterturn
