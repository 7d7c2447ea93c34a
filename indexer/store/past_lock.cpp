#include "indexer/store/past_lock.h"

#include <algorithm>
#include <cerrno>

#include "indexer/disk/empty_folders.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

class LookPastLock {
  public:
    LookPastLock(LockedFileSystem& locked, const Path& folder) : locked_(locked), folder_(folder) {}

    FoundPastLock run() {
        for (const Path& entry : listed(folder_)) {
            if (is_folder(entry)) look_in(entry, entry);
        }
        return std::move(found_);
    }

  private:
    // `plain` is the folder in plain words.
    void look_in(const Path& place, const Path& plain) {
        for (const Path& entry : listed(place)) {
            const std::string name = entry.filename().native();
            if (!is_front_of_locked_name(name)) {
                look_at(entry, name, plain);
                continue;
            }
            for (const Path& rest : listed(entry)) {
                look_at(rest, joined_locked_name(name, rest.filename().native()), plain);
            }
        }
    }

    void look_at(const Path& place, const std::string& name, const Path& plain) {
        const Path below = plain.lexically_relative(folder_);
        if (stays_as_it_is(below / name)) return;
        const auto told = unlock_name(locked_.keys(), below.generic_string(), name);
        if (!told) return add(place, plain);
        if (is_folder(place)) look_in(place, plain / *told);
    }

    void add(const Path& place, const Path& plain) {
        const Path belongs = plain / place.filename();
        if (!is_folder(place)) {
            found_.files.push_back({place, belongs, is_sealed(locked_, place)});
            return;
        }
        try {
            for (const Path& entry : locked_.beneath().list(place)) add(entry, belongs);
        } catch (const DiskError& error) {
            found_.out_of_reach.push_back(error);
        }
    }

    // What the lock sees, and the disk does not give, is told of by who goes through the lock.
    std::vector<Path> listed(const Path& place) try {
        return is_folder(place) ? locked_.beneath().list(place) : std::vector<Path>{};
    } catch (const DiskError&) {
        return {};
    }

    bool is_folder(const Path& place) try {
        return locked_.beneath().is_folder(place);
    } catch (const DiskError&) {
        return false;
    }

    LockedFileSystem& locked_;
    const Path& folder_;
    FoundPastLock found_;
};

bool begins_sealed(const LibraryKeys& keys, const Bytes& front) try {
    if (!begin_as_locked(front)) return false;
    bool opened = false;
    ContentsReader reader(keys, [&](std::span<const std::byte>) { opened = true; });
    reader.feed(front);
    if (!opened) reader.end();
    return opened;
} catch (const DamagedContents&) {
    return false;
}

}  // namespace

FoundPastLock files_past_lock(LockedFileSystem& locked, const Path& folder) {
    return LookPastLock(locked, folder).run();
}

std::vector<Path> sealed_past_lock(LockedFileSystem& locked, const Path& folder) {
    std::vector<Path> sealed;
    for (PastLock& file : files_past_lock(locked, folder).files) {
        if (file.sealed) sealed.push_back(std::move(file.lies));
    }
    std::ranges::sort(sealed);
    return sealed;
}

bool is_sealed(LockedFileSystem& locked, const Path& lies) try {
    if (std::filesystem::is_symlink(lies)) return false;
    FileSystem& disk = locked.beneath();
    return begin_as_locked(disk.read_front(lies, locked_size(0))) &&
           begins_sealed(locked.keys(), disk.read_front(lies, front_to_read(1)));
} catch (const DiskError&) {
    return false;
}

bool is_sealed(const LibraryKeys& keys, const Bytes& file) {
    const auto front = std::min<std::ptrdiff_t>(std::ssize(file), front_to_read(1));
    return begins_sealed(keys, Bytes(file.begin(), file.begin() + front));
}

Bytes bytes_sealed(LockedFileSystem& locked, const Path& lies) try {
    Bytes bytes;
    ContentsReader reader(locked.keys(), [&](std::span<const std::byte> piece) {
        bytes.insert(bytes.end(), piece.begin(), piece.end());
    });
    reader.feed(locked.beneath().read(lies, any_size));
    reader.end();
    return bytes;
} catch (const DamagedContents&) {
    throw disk_error(EBADMSG, lies, Doing::reading);
}

void give_name(LockedFileSystem& locked, const Path& folder, const Path& lies, const Path& plain) {
    FileSystem& disk = locked.beneath();
    NameFronts fronts(disk);
    const Path place = locked.place_of(plain);
    locked.make_folders(plain.parent_path());
    fronts.make(place);
    disk.rename_new(lies, place);
    fronts.sync(place);
    disk.sync_folder(place.parent_path());
    disk.sync_folder(lies.parent_path());
    drop_empty_folders(disk, folder, lies.lexically_relative(folder).parent_path());
}

}  // namespace quarterturn
