#include "indexer/intake/record_batch.h"

#include <algorithm>
#include <map>

#include "indexer/disk/checksum.h"
#include "indexer/intake/file_names.h"
#include "indexer/intake/set_aside.h"
#include "indexer/rules/suggestion.h"

namespace quarterturn {
namespace {

bool named(const Device& device) {
    return !device.make.empty() || !device.model.empty();
}

bool is_refused(const Recorded& recorded) {
    return !recorded.refused.empty();
}

// What cannot be read, such as a link that leads nowhere, holds no photo when one is put back.
bool holds(FileSystem& disk, const Path& file, const FileFacts& facts, bool put_back) try {
    return holds(disk, file, facts.bytes, facts.sha256);
} catch (const DiskError&) {
    if (!put_back) throw;
    return false;
}

}  // namespace

// Once more without those that were refused. The files of the others lie in their places by then,
// and are found there.
std::vector<Recorded> BatchRecorder::record(const std::vector<NewPhoto>& batch,
                                            const std::vector<SeenFile>& seen) {
    std::vector<Recorded> photos(batch.size());
    while (!record_all(batch, seen, photos)) continue;
    for (const Recorded& recorded : photos) {
        if (!recorded.refused.empty() && recorded.placed) {
            unfinished_.leave(recorded.photo.file.path);
        }
    }
    unfinished_.forget();
    return photos;
}

// False when a photo was refused: nothing is recorded then.
bool BatchRecorder::record_all(const std::vector<NewPhoto>& batch,
                               const std::vector<SeenFile>& seen, std::vector<Recorded>& photos) {
    const auto refused = [&] { return std::ranges::count_if(photos, is_refused); };
    const auto refused_before = refused();
    Transaction transaction{library_.database()};
    for (std::size_t i = 0; i < batch.size(); ++i) {
        or_refuse(photos[i], [&] {
            Recorded written = write(batch[i]);
            written.set_aside = photos[i].set_aside;
            written.placed = photos[i].placed;
            photos[i] = std::move(written);
        });
    }
    for (const SeenFile& file : seen) {
        library_.seen().remember(file.source.file, file.source.state, file.sha256);
    }
    if (!photos.empty()) move_in(photos);
    if (refused() != refused_before) return false;
    for (const Recorded& recorded : photos) {
        if (!is_refused(recorded) && recorded.not_put_back.empty()) remember_copy(recorded.photo);
    }
    transaction.commit();
    return true;
}

// One file that the disk does not take does not keep the others out.
template <class Work>
void BatchRecorder::or_refuse(Recorded& recorded, Work work) {
    if (is_refused(recorded)) return;
    try {
        work();
    } catch (const DiskError& error) {
        if (!incoming_.goes_on_after(error)) throw;
        recorded.refused = error.what();
    }
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

void BatchRecorder::remember_copy(const Photo& photo) try {
    const Path file = library_.photo_file(photo);
    library_.seen().remember(file, library_.disk().state(file), photo.file.sha256);
} catch (const DiskError&) {
    // It is read again the next time.
}

void BatchRecorder::note_places(const std::vector<Recorded>& photos) {
    std::vector<std::string> paths;
    for (const Recorded& recorded : photos) {
        if (!recorded.photo.file.path.empty()) paths.push_back(recorded.photo.file.path);
    }
    try {
        unfinished_.note(paths);
    } catch (const DiskError& error) {
        if (!incoming_.goes_on_after(error)) throw;
        unfinished_.note(std::move(paths));
    }
}

void BatchRecorder::move_in(std::vector<Recorded>& photos) {
    note_places(photos);
    for (Recorded& recorded : photos) {
        or_refuse(recorded, [&] { recorded.put_back ? put_back(recorded) : move_in(recorded); });
    }
    sync_folders(photos);
}

void BatchRecorder::sync_folders(std::vector<Recorded>& photos) {
    std::map<Path, std::vector<Recorded*>> folders;
    for (Recorded& recorded : photos) {
        if (is_refused(recorded) || !recorded.not_put_back.empty()) continue;
        folders[library_.photo_file(recorded.photo).parent_path()].push_back(&recorded);
    }
    for (const auto& [folder, in_it] : folders) {
        try {
            library_.disk().sync_folder(folder);
        } catch (const DiskError& error) {
            if (!incoming_.goes_on_after(error)) throw;
            for (Recorded* recorded : in_it) recorded->refused = error.what();
        }
    }
}

void BatchRecorder::move_in(Recorded& recorded) {
    FileSystem& disk = library_.disk();
    const Path file = library_.photo_file(recorded.photo);
    disk.make_folders(file.parent_path());
    if (disk.exists(file)) {
        const bool lies_there = holds(disk, file, recorded.photo.file, recorded.put_back);
        recorded.placed = recorded.placed || lies_there;
        if (lies_there) return;
        recorded.set_aside = set_aside(disk, file);
    }
    recorded.placed = true;
    disk.rename_new(incoming_.part(recorded.photo.file.sha256), file);
}

// One file in the library that cannot be mended does not keep the others out.
void BatchRecorder::put_back(Recorded& recorded) try {
    move_in(recorded);
} catch (const DiskError& error) {
    if (!incoming_.goes_on_after(error)) throw;
    recorded.not_put_back = error.what();
}

}  // namespace quarterturn
