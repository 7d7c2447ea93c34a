#include "indexer/intake/record_batch.h"

#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/intake/file_names.h"
#include "indexer/intake/set_aside.h"
#include "indexer/rules/suggestion.h"

namespace quarterturn {
namespace {

bool named(const Device& device) {
    return !device.make.empty() || !device.model.empty();
}

// What cannot be read, such as a link that leads nowhere, holds no photo when one is put back.
bool holds(FileSystem& disk, const Path& file, const FileFacts& facts, bool put_back) try {
    return holds(disk, file, facts.bytes, facts.sha256);
} catch (const DiskError&) {
    if (!put_back) throw;
    return false;
}

}  // namespace

std::vector<Recorded> BatchRecorder::record(const std::vector<NewPhoto>& batch,
                                            const std::vector<SeenFile>& seen) {
    Transaction transaction{library_.database()};
    std::vector<Recorded> photos;
    for (const NewPhoto& fresh : batch) photos.push_back(write(fresh));
    for (const SeenFile& file : seen) {
        library_.seen().remember(file.source.file, file.source.state, file.sha256);
    }
    if (!photos.empty()) move_in(photos);
    for (const Recorded& recorded : photos) {
        if (recorded.not_put_back.empty()) remember_copy(recorded.photo);
    }
    transaction.commit();
    unfinished_.forget();
    return photos;
}

Recorded BatchRecorder::write(const NewPhoto& fresh) {
    if (const auto known = library_.photos().with_sha256(fresh.examined.photo.file.sha256)) {
        return {.photo = library_.photos().find_also_in_bin(*known).value(), .put_back = true};
    }
    Photo photo = complete(fresh);
    photo.id = library_.photos().add(photo);
    return {.photo = std::move(photo), .put_back = false};
}

Photo BatchRecorder::complete(const NewPhoto& fresh) {
    Photo photo = fresh.examined.photo;
    photo.file.name = as_text(fresh.source.file.filename().native());
    if (photo.file.taken) photo.moment = photo.file.taken->local;
    if (named(fresh.examined.device)) {
        photo.file.device = library_.devices().find_or_add(fresh.examined.device);
        const auto device = library_.devices().find(*photo.file.device);
        if (photo.moment && device) *photo.moment += device->clock_shift;
    }
    if (const auto angle = suggest_angle(photo.file.name, fresh.examined.keywords)) {
        photo.suggestion.angle = angle->angle;
        photo.suggestion.angle_source = angle->source;
    }
    photo.tags.sitting = places_.sitting_at(photo.moment);
    photo.file.path = places_.free_path(places_.folder(photo), photo.file);
    return photo;
}

void BatchRecorder::remember_copy(const Photo& photo) {
    const Path file = library_.photo_file(photo);
    library_.seen().remember(file, library_.disk().state(file), photo.file.sha256);
}

void BatchRecorder::move_in(std::vector<Recorded>& photos) {
    FileSystem& disk = library_.disk();
    std::vector<std::string> paths;
    std::ranges::transform(photos, std::back_inserter(paths),
                           [](const Recorded& recorded) { return recorded.photo.file.path; });
    unfinished_.note(std::move(paths));
    std::set<Path> folders;
    for (Recorded& recorded : photos) {
        if (recorded.put_back) {
            put_back(recorded);
        } else {
            move_in(recorded);
        }
        if (recorded.not_put_back.empty()) {
            folders.insert(library_.photo_file(recorded.photo).parent_path());
        }
    }
    for (const Path& folder : folders) disk.sync_folder(folder);
}

void BatchRecorder::move_in(Recorded& recorded) {
    FileSystem& disk = library_.disk();
    const Path file = library_.photo_file(recorded.photo);
    disk.make_folders(file.parent_path());
    if (disk.exists(file)) {
        if (holds(disk, file, recorded.photo.file, recorded.put_back)) return;
        recorded.set_aside = set_aside(disk, file);
    }
    disk.rename_new(incoming_.part(recorded.photo.file.sha256), file);
}

// One file in the library that cannot be mended does not keep the others out.
void BatchRecorder::put_back(Recorded& recorded) try {
    move_in(recorded);
} catch (const DiskError& error) {
    if (error.disk_full()) throw;
    recorded.not_put_back = error.what();
}

}  // namespace quarterturn
