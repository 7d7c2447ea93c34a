#include "indexer/backup/backup_words.h"

#include <algorithm>
#include <iterator>

#include "indexer/disk/lines_by_reason.h"
#include "indexer/record/count_text.h"

namespace quarterturn {

std::vector<std::string> lacking_lines(const BackupReport& report) {
    if (report.problems.empty()) return {};
    std::vector<RefusedFile> lacking;
    for (std::size_t i = 0; i < report.problems.size(); ++i) {
        lacking.push_back({report.lacking[i], report.problems[i]});
    }
    std::vector<std::string> lines{"Not in the backup:"};
    std::ranges::move(lines_by_reason(lacking), std::back_inserter(lines));
    return lines;
}

std::vector<std::string> lost_there_lines(const BackupReport& report) {
    if (report.lost_there.empty()) return {};
    const std::size_t others = report.lost_there.size() - 1;
    return {"Damaged or gone there since the backup before: " + *report.lost_there.begin() +
            (others == 0 ? std::string() : " and " + count_text(others, "other file")) +
            ". If nobody changed it, that drive may be failing: make a backup on another one too."};
}

std::vector<std::string> same_disk_lines(const BackupReport& report) {
    if (!report.on_same_disk) return {};
    return {
        "This backup lies on the same disk as the library: if that disk fails or is stolen, both "
        "are gone. Make one on another drive too."};
}

std::vector<std::string> gone_lines(const BackupReport& report) {
    if (report.gone.empty()) return {};
    std::vector<RefusedFile> gone;
    for (const Path& file : report.gone) {
        gone.push_back({file, file.string() +
                                  " is whole in this backup, and qturn verify puts it back: from "
                                  "where it was moved to in the library, or else from the "
                                  "backup."});
    }
    std::vector<std::string> lines{"Not in the library:"};
    std::ranges::move(lines_by_reason(gone), std::back_inserter(lines));
    return lines;
}

std::vector<std::string> staying_lines(const BackupReport& report) {
    if (report.staying.empty()) return {};
    std::vector<std::string> lines{
        "Still to be removed there, as it is not in the library any longer; the next backup to it "
        "goes on with that:"};
    std::ranges::move(lines_by_reason(report.staying), std::back_inserter(lines));
    return lines;
}

}  // namespace quarterturn
