#include "indexer/backup/restored_records.h"

#include <algorithm>
#include <cctype>

#include "indexer/disk/checksum.h"
#include "indexer/disk/reads_back.h"
#include "indexer/erasure/erase.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/records_file.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

std::string digits_of(const std::string& text) {
    std::string digits;
    for (const char c : text) {
        if (std::isdigit(static_cast<unsigned char>(c)) != 0) digits += c;
    }
    return digits;
}

void clear(FileSystem& disk, const Path& folder) {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
        const Path file = folder / (std::string(records_file_name) + ending);
        if (disk.exists(file)) disk.remove(file);
    }
}

Client client_called(Library& library, const std::string& name) {
    const auto clients = library.clients().all();
    const auto found = std::ranges::find_if(
        clients, [&](const Client& client) { return folded(client.name) == folded(name); });
    if (found != clients.end()) return *found;
    throw StoreError("That backup knows no client " + name +
                     ": write her name as it is recorded, or name older records.");
}

}  // namespace

std::string records_time(const std::string& path) {
    const std::string d = digits_of(path);
    return d.substr(0, 4) + '-' + d.substr(4, 2) + '-' + d.substr(6, 2) + ' ' + d.substr(8, 2) +
           ':' + d.substr(10, 2) + ':' + d.substr(12, 2);
}

std::string chosen_records(const BackupFolder& backup, const Manifest& listed,
                           const std::string& time) {
    const auto all = records_in(listed);
    const std::string wanted = digits_of(time);
    const auto found = std::find_if(all.rbegin(), all.rend(), [&](const std::string& path) {
        return digits_of(path).substr(0, wanted.size()) <= wanted;
    });
    constexpr std::size_t digits_of_year = 4;
    const bool is_time = time.empty() || wanted.size() >= digits_of_year;
    if (found != all.rend() && is_time) return *found;
    std::string known;
    for (const std::string& path : all) known += (known.empty() ? "" : ", ") + records_time(path);
    throw StoreError(known.empty()
                         ? backup.folder().string() +
                               " holds no records yet: the backup was never whole. Its photos can "
                               "be copied from there by hand."
                         : "There are no records of " + time + " or before in " +
                               backup.folder().string() + ". There are those of (UTC): " + known +
                               ".");
}

Library open_copy(const BackupFolder& backup, const Manifest& listed, const std::string& records,
                  FileSystem& disk, const Path& folder) {
    const Bytes bytes = backup.disk().read(backup.file(records), any_size);
    if (sha256(bytes) != listed.files.at(records)) {
        throw StoreError(backup.file(records).string() +
                         " is damaged: name older records. There are those of (UTC): " +
                         records_time(records_in(listed).front()) + " and later.");
    }
    disk.make_folders(folder);
    clear(disk, folder);
    disk.write_new(folder / records_file_name, bytes);
    disk.sync_file(folder / records_file_name);
    if (!reads_back_as(disk, folder / records_file_name, bytes)) {
        throw StoreError("The records do not read back as they were written to " + folder.string() +
                         ": the disk may be failing. Choose another.");
    }
    Library library = Library::open(folder, disk);
    forget_intake(library);
    return library;
}

void leave_client(Library& library, const std::string& name, Date today) {
    const Client kept = client_called(library, name);
    std::vector<ToErase> others;
    std::set<PhotoId> gone;
    for (const Client& other : library.clients().all()) {
        if (other.id == kept.id) continue;
        const ErasurePlan plan = plan_erasure(library, other.id, SharedPhotos::stay);
        ToErase what;
        what.client = other;
        what.name_is_hers_alone = folded(other.name) != folded(kept.name);
        what.on = today;
        for (const Photo& photo : plan.photos) {
            what.photos.push_back(photo.id);
            gone.insert(photo.id);
        }
        others.push_back(std::move(what));
    }
    std::vector<PhotoId> hers;
    PhotoSearch wanted;
    wanted.client = kept.id;
    for (const bool binned : {false, true}) {
        wanted.binned = binned;
        for (const FoundPhoto& found : library.search().find(wanted)) {
            if (!gone.contains(found.id)) hers.push_back(found.id);
        }
    }
    ErasureTable(library.database()).leave_one(others, hers);
    library.backups().forget_all();
    ErasureTable(library.database()).finish({});
}

}  // namespace quarterturn
