#include "indexer/disk/lines_by_reason.h"

#include <algorithm>
#include <iterator>

#include "indexer/record/count_text.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_named_of_one_reason = 20;

struct Reason {
    std::string words;
    bool goes_on_from_file = false;  // after its name: "… is not there"

    bool operator==(const Reason&) const = default;
};

using FilesByReason = std::vector<std::pair<Reason, std::vector<std::string>>>;

Reason reason_of(const RefusedFile& refused) {
    const std::string front = refused.file.string() + ' ';
    if (!refused.reason.starts_with(front)) return {refused.reason};
    return {refused.reason.substr(front.size()), true};
}

std::string line_of(const Reason& reason, const std::string& of_one, const std::string& of_each) {
    return (reason.goes_on_from_file ? of_each + ' ' : of_one + ": ") + reason.words;
}

std::string first_and_others(const std::vector<std::string>& files) {
    return files.front() + " and " + count_text(files.size() - 1, "other file");
}

std::string sentence_of(const Reason& reason, const std::vector<std::string>& files) {
    if (files.size() == 1) return line_of(reason, files.front(), files.front());
    return line_of(reason, first_and_others(files), "Each of " + first_and_others(files));
}

std::vector<std::string> lines_of_reason(const Reason& reason,
                                         const std::vector<std::string>& files) {
    if (files.size() == 1) return {"  " + sentence_of(reason, files)};
    if (files.size() > most_named_of_one_reason) {
        const std::string others = first_and_others(files);
        return {"  " + line_of(reason, others + ", which qturn names with --json",
                               "Each of " + others + " (qturn names them with --json)")};
    }
    const std::string number = count_text(files.size(), "file");
    std::vector<std::string> lines{"  " + line_of(reason, number, "Each of " + number)};
    for (const std::string& file : files) lines.push_back("    " + file);
    return lines;
}

// Without the path that begins many of them, so that a pulled card is told once.
FilesByReason by_reason_of(const std::vector<RefusedFile>& refused) {
    FilesByReason by_reason;
    for (const RefusedFile& file : refused) {
        const Reason reason = reason_of(file);
        const auto known = std::ranges::find_if(
            by_reason, [&](const auto& group) { return group.first == reason; });
        auto& files = known == by_reason.end()
                          ? by_reason.emplace_back(reason, std::vector<std::string>{}).second
                          : known->second;
        files.push_back(file.file.string());
    }
    return by_reason;
}

}  // namespace

std::vector<std::string> reasons_of(const std::vector<RefusedFile>& refused) {
    std::vector<std::string> reasons;
    std::ranges::transform(refused, std::back_inserter(reasons), &RefusedFile::reason);
    return reasons;
}

std::vector<std::string> lines_by_reason(const std::vector<RefusedFile>& refused) {
    std::vector<std::string> lines;
    for (const auto& [reason, files] : by_reason_of(refused)) {
        std::ranges::move(lines_of_reason(reason, files), std::back_inserter(lines));
    }
    return lines;
}

std::vector<std::string> sentences_by_reason(const std::vector<RefusedFile>& refused) {
    std::vector<std::string> sentences;
    for (const auto& [reason, files] : by_reason_of(refused)) {
        sentences.push_back(sentence_of(reason, files));
    }
    return sentences;
}

}  // namespace quarterturn
