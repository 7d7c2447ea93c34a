#include "indexer/intake/incoming.h"

#include <cerrno>

#include "indexer/disk/reads_back.h"

namespace quarterturn {

Incoming::Incoming(Library& library) : disk_(library.disk()), folder_(library.incoming_folder()) {
    disk_.make_folders(folder_);
    clear();
}

Incoming::~Incoming() {
    try {
        clear();
    } catch (const std::exception&) {
        return;
    }
}

Path Incoming::part(const std::string& sha256) const {
    return folder_ / (sha256 + ".part");
}

void Incoming::put(const std::string& sha256, std::span<const std::byte> bytes) {
    const Path file = part(sha256);
    disk_.write_new(file, bytes);
    disk_.sync_file(file);
    if (reads_back_as(disk_, file, bytes)) return;
    throw DiskError("What was written to " + file.string() +
                        " reads back different: this disk cannot be trusted with photos; use "
                        "another one and keep the card.",
                    file, EIO);
}

void Incoming::clear() {
    for (const Path& file : disk_.list(folder_)) {
        const bool waiting =
            file.extension() == ".part" || file.filename().native().starts_with(".writing-");
        if (waiting) disk_.remove(file);
    }
}

}  // namespace quarterturn
