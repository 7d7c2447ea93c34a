#include "indexer/erasure/recorded_checksums.h"

namespace quarterturn {
namespace {

RecordedByChecksum going_by_checksum(Library& library, const ErasurePlan& plan) {
    RecordedByChecksum going;
    for (const Photo& photo : plan.photos) going.emplace(photo.file.sha256, photo.file.path);
    if (plan.only) return going;
    for (const ConsentEntry& entry : library.consents().of(plan.client.id)) {
        for (const ConsentPaper& paper : entry.papers) going.emplace(paper.sha256, paper.path);
    }
    for (const Inspiration& brought : library.inspirations().of_client(plan.client.id)) {
        going.emplace(brought.sha256, brought.path);
    }
    return going;
}

}  // namespace

RecordedByChecksum recorded_by_checksum(Library& library) {
    RecordedByChecksum recorded;
    for (const StoredFile& photo : library.photos().stored_files()) {
        recorded.emplace(photo.sha256, photo.path);
    }
    for (const ConsentPaper& paper : library.consents().papers()) {
        recorded.emplace(paper.sha256, paper.path);
    }
    for (const Inspiration& brought : library.inspirations().all()) {
        recorded.emplace(brought.sha256, brought.path);
    }
    return recorded;
}

std::set<std::string> checksums_of_what_goes(Library& library, const ErasurePlan& plan) {
    const RecordedByChecksum all = recorded_by_checksum(library);
    const RecordedByChecksum going = going_by_checksum(library, plan);
    std::set<std::string> checksums;
    for (const auto& [checksum, path] : going) {
        if (all.count(checksum) == going.count(checksum)) checksums.insert(checksum);
    }
    return checksums;
}

}  // namespace quarterturn
