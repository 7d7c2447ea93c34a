#include "indexer/rules/word_changes.h"

#include <algorithm>
#include <sstream>

namespace quarterturn {
namespace {

std::vector<std::string> split_words(std::string_view text) {
    std::istringstream stream{std::string(text)};
    std::vector<std::string> all;
    for (std::string next; stream >> next;) all.push_back(next);
    return all;
}

// How many words can stay of what comes at and after each pair of places.
class Staying {
  public:
    Staying(const std::vector<std::string>& was, const std::vector<std::string>& is)
        : width_(is.size() + 1), count_((was.size() + 1) * width_) {
        for (std::size_t i = was.size(); i-- > 0;) {
            for (std::size_t j = is.size(); j-- > 0;) {
                count_[i * width_ + j] =
                    was[i] == is[j] ? at(i + 1, j + 1) + 1 : std::max(at(i + 1, j), at(i, j + 1));
            }
        }
    }
    int at(std::size_t i, std::size_t j) const { return count_[i * width_ + j]; }

  private:
    std::size_t width_;
    std::vector<int> count_;
};

void add_word(std::vector<WordRun>& runs, const std::string& next, bool changed) {
    if (!runs.empty() && runs.back().changed == changed) {
        runs.back().words += ' ' + next;
    } else {
        runs.push_back({next, changed});
    }
}

// The lines that the other side does not have, by their places.
std::vector<std::size_t> lines_alone(const std::vector<std::string>& lines,
                                     const std::vector<std::string>& others) {
    std::vector<std::size_t> alone;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (std::find(others.begin(), others.end(), lines[i]) == others.end()) alone.push_back(i);
    }
    return alone;
}

std::vector<std::vector<WordRun>> all_staying(const std::vector<std::string>& lines) {
    std::vector<std::vector<WordRun>> runs;
    for (const std::string& line : lines) runs.push_back({{line, false}});
    return runs;
}

}  // namespace

WordChanges word_changes(std::string_view was, std::string_view is) {
    const auto before = split_words(was);
    const auto after = split_words(is);
    const Staying staying(before, after);
    WordChanges changes;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < before.size() || j < after.size()) {
        if (i < before.size() && j < after.size() && before[i] == after[j]) {
            add_word(changes.was, before[i++], false);
            add_word(changes.is, after[j++], false);
        } else if (j == after.size() ||
                   (i < before.size() && staying.at(i + 1, j) >= staying.at(i, j + 1))) {
            add_word(changes.was, before[i++], true);
        } else {
            add_word(changes.is, after[j++], true);
        }
    }
    return changes;
}

LineChanges line_changes(const std::vector<std::string>& was, const std::vector<std::string>& is) {
    LineChanges changes{all_staying(was), all_staying(is)};
    const auto gone = lines_alone(was, is);
    const auto come = lines_alone(is, was);
    for (std::size_t i = 0; i < std::max(gone.size(), come.size()); ++i) {
        const WordChanges words = word_changes(i < gone.size() ? was[gone[i]] : std::string(),
                                               i < come.size() ? is[come[i]] : std::string());
        if (i < gone.size()) changes.was[gone[i]] = words.was;
        if (i < come.size()) changes.is[come[i]] = words.is;
    }
    return changes;
}

}  // namespace quarterturn
