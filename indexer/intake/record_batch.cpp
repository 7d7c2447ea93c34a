#include "indexer/intake/record_batch.h"

#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/intake/file_names.h"
#include "indexer/rules/suggestion.h"

namespace quarterturn {
namespace {

bool named(const Device& device) {
    return !device.make.empty() || !device.model.empty();
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
    for (const Recorded& recorded : photos) remember_copy(recorded.photo);
    transaction.commit();
    unfinished_.forget();
    return photos;
}

Recorded BatchRecorder::write(const NewPhoto& fresh) {
    if (const auto known = library_.photos().with_sha256(fresh.examined.photo.file.sha256)) {
        return {.photo = library_.photos().find(*known).value(), .put_back = true};
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
        const FileFacts& facts = recorded.photo.file;
        const Path file = library_.photo_file(recorded.photo);
        if (folders.insert(file.parent_path()).second) disk.make_folders(file.parent_path());
        if (disk.exists(file)) {
            if (holds(disk, file, facts.bytes, facts.sha256)) continue;
            recorded.set_aside = set_aside(file);
        }
        disk.rename_new(incoming_.part(facts.sha256), file);
    }
    for (const Path& folder : folders) disk.sync_folder(folder);
}

Path BatchRecorder::set_aside(const Path& changed) {
    for (int number = 1;; ++number) {
        const Path aside =
            changed.parent_path() / changed_name(changed.filename().native(), number);
        if (library_.disk().exists(aside)) continue;
        library_.disk().rename_new(changed, aside);
        return aside;
    }
}

}  // namespace quarterturn
