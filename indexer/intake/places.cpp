#include "indexer/intake/places.h"

#include "indexer/disk/checksum.h"
#include "indexer/intake/file_names.h"

namespace quarterturn {

Places::Places(Library& library)
    : library_(library), sittings_(library.sittings().all()), hours_(sittings_) {
    std::unordered_map<ClientId, Client> clients;
    for (Client& client : library.clients().all()) clients.emplace(client.id, std::move(client));
    for (const Sitting& sitting : sittings_) {
        folders_.emplace(sitting.id, sitting_folder(sitting, clients[sitting.client]));
    }
}

std::optional<SittingId> Places::sitting_at(const std::optional<LocalTime>& moment) const {
    if (!moment) return std::nullopt;
    const std::vector<SittingId> fits = hours_.at(*moment);
    return fits.size() == 1 ? std::optional{fits.front()} : std::nullopt;
}

std::string Places::folder(const Photo& photo) const {
    if (photo.tags.sitting) {
        const auto found = folders_.find(*photo.tags.sitting);
        if (found != folders_.end()) return found->second;
    }
    return waiting_folder(photo.moment);
}

std::string Places::free_path(const std::string& folder, const FileFacts& file) {
    const std::string name = as_text(file.name);
    for (int number = 1;; ++number) {
        std::string path = folder + '/' + numbered_name(name, number);
        if (free_for(path, file)) return path;
    }
}

bool Places::free_for(const std::string& path, const FileFacts& file) {
    FileSystem& disk = library_.disk();
    if (library_.photos().path_taken(path)) return false;
    const Path there = library_.folder() / path;
    if (!disk.exists(there)) return true;
    return holds(disk, there, file.bytes, file.sha256);
}

}  // namespace quarterturn
