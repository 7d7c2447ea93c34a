#include "indexer/intake/lines_by_reason.h"

#include <algorithm>
#include <iterator>

#include "indexer/record/count_text.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_named_of_one_reason = 20;

std::string without_front(const std::string& sentence, const std::string& front) {
    return sentence.starts_with(front + ' ') ? sentence.substr(front.size() + 1) : sentence;
}

std::vector<std::string> lines_of_reason(const std::string& reason,
                                         const std::vector<std::string>& files) {
    if (files.size() == 1) return {"  " + files.front() + ": " + reason};
    if (files.size() > most_named_of_one_reason) {
        return {"  " + files.front() + " and " + count_text(files.size() - 1, "other file") +
                ", which qturn names with --json: " + reason};
    }
    std::vector<std::string> lines{"  " + count_text(files.size(), "file") + ": " + reason};
    for (const std::string& file : files) lines.push_back("    " + file);
    return lines;
}

}  // namespace

// Without the path that begins many of them, so that a pulled card is told once.
std::vector<std::string> lines_by_reason(const std::vector<RefusedFile>& refused) {
    std::vector<std::pair<std::string, std::vector<std::string>>> by_reason;
    for (const RefusedFile& file : refused) {
        const std::string reason = without_front(file.reason, file.file.string());
        const auto known = std::ranges::find_if(
            by_reason, [&](const auto& group) { return group.first == reason; });
        auto& files = known == by_reason.end()
                          ? by_reason.emplace_back(reason, std::vector<std::string>{}).second
                          : known->second;
        files.push_back(file.file.string());
    }
    std::vector<std::string> lines;
    for (const auto& [reason, files] : by_reason) {
        std::ranges::move(lines_of_reason(reason, files), std::back_inserter(lines));
    }
    return lines;
}

}  // namespace quarterturn
