#include "indexer/intake/unfinished.h"

#include <utility>

#include "indexer/disk/checksum.h"

namespace quarterturn {
namespace {

Path list_file(const Library& library) {
    return library.incoming_folder() / "unfinished";
}

// Each path ends with a zero byte, the one thing that no path can hold.
std::vector<std::string> paths_in(const Bytes& bytes) {
    std::vector<std::string> paths;
    std::string path;
    for (const std::byte byte : bytes) {
        if (byte != std::byte{0}) {
            path += static_cast<char>(byte);
        } else {
            paths.push_back(std::exchange(path, {}));
        }
    }
    return paths;
}

}  // namespace

Unfinished::Unfinished(Library& library) : library_(library) {
    const Path file = list_file(library);
    if (library.disk().exists(file)) left_ = paths_in(library.disk().read(file, any_size));
}

void Unfinished::note(std::vector<std::string> paths) {
    noted_ = std::move(paths);
    write();
}

void Unfinished::forget() {
    noted_.clear();
}

void Unfinished::write() {
    std::string text;
    for (const auto& list : {left_, noted_, later_}) {
        for (const std::string& path : list) text += path + '\0';
    }
    replace_file(library_.disk(), list_file(library_), std::as_bytes(std::span{text}));
}

std::vector<Path> Unfinished::settle() {
    std::vector<Path> unrecorded;
    std::erase_if(left_, [&](const std::string& path) {
        const Path file = library_.folder() / path;
        const Left left = look_at(path, file);
        if (left == Left::unrecorded) unrecorded.push_back(file);
        return left == Left::nothing;
    });
    if (left_.empty() && noted_.empty() && later_.empty()) drop_list();
    return unrecorded;
}

void Unfinished::drop_list() try {
    if (library_.disk().exists(list_file(library_))) library_.disk().remove(list_file(library_));
} catch (const DiskError&) {
    // What is on it is settled; the next run finds that out.
}

Unfinished::Left Unfinished::look_at(const std::string& path, const Path& file) try {
    if (library_.photos().path_taken(path) || !library_.disk().exists(file)) return Left::nothing;
    if (!twin_of_recorded(file)) return Left::unrecorded;
    library_.disk().remove(file);
    return Left::nothing;
} catch (const DiskError&) {
    return Left::unreadable;
}

bool Unfinished::twin_of_recorded(const Path& file) {
    FileSystem& disk = library_.disk();
    const Bytes bytes = disk.read(file, any_size);
    const auto id = library_.photos().with_sha256(sha256(bytes));
    if (!id) return false;
    const Path recorded = library_.photo_file(*library_.photos().find_also_in_bin(*id));
    return disk.exists(recorded) && disk.read(recorded, any_size) == bytes;
}

}  // namespace quarterturn
