#include "indexer/intake/arriving.h"

namespace quarterturn {
namespace {

bool same(const FileState& one, const FileState& other) {
    return one.bytes == other.bytes && one.modified_ns == other.modified_ns;
}

}  // namespace

std::vector<Path> ArrivingFiles::look(Library& library) {
    std::vector<Path> finished;
    std::map<Path, Seen> seen;
    unfinished_ = false;
    for (const FoundFile& found : walk(library, sources_).files) {
        const auto before = seen_.find(found.file);
        const bool unchanged = before != seen_.end() && same(before->second.state, found.state);
        const bool settled = unchanged && before->second.settled;
        if (unchanged && !settled) finished.push_back(found.file);
        if (!unchanged) unfinished_ = true;
        seen[found.file] = {found.state, settled};
    }
    seen_ = std::move(seen);
    return finished;
}

void ArrivingFiles::settle(const std::vector<Path>& files) {
    for (const Path& file : files) {
        const auto seen = seen_.find(file);
        if (seen != seen_.end()) seen->second.settled = true;
    }
}

ImportReport import_arrived(Library& library, Decoder& decoder, ArrivingFiles& arriving,
                            ImportWishes wishes) {
    wishes.sources = arriving.look(library);
    if (wishes.sources.empty()) return {};
    ImportReport report = import_photos(library, decoder, wishes);
    if (!report.stopped) arriving.settle(wishes.sources);
    return report;
}

}  // namespace quarterturn
