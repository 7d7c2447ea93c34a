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
    if (reads_back(file, bytes)) return;
    trusted_ = false;
    throw DiskError("What was written to " + file.string() +
                        " reads back different: this disk cannot be trusted with photos; use "
                        "another one and keep the card.",
                    file, EIO);
}

// Of a locked library, what differs does not open.
bool Incoming::reads_back(const Path& file, std::span<const std::byte> bytes) try {
    return reads_back_as(disk_, file, bytes);
} catch (const DiskError& error) {
    if (!error.damaged()) throw;
    return false;
}

bool Incoming::goes_on_after(const DiskError& error) try {
    if (error.disk_full() || !trusted_) return false;
    const Path probe = part("probe");
    if (disk_.exists(probe)) disk_.remove(probe);
    disk_.write_new(probe, {});
    disk_.sync_file(probe);
    disk_.remove(probe);
    return true;
} catch (const DiskError&) {
    return false;
}

void Incoming::clear() {
    for (const Path& file : disk_.list(folder_)) {
        const bool waiting =
            file.extension() == ".part" || file.filename().native().starts_with(".writing-");
        if (waiting) disk_.remove(file);
    }
}

}  // namespace quarterturn
