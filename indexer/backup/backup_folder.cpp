#include "indexer/backup/backup_folder.h"

#include <algorithm>
#include <set>

#include "indexer/backup/foreign_lock.h"
#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/library.h"
#include "indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

constexpr const char* unfinished_name = "unfinished";
constexpr std::string_view records_start = "records/records-";
constexpr std::string_view records_end = ".sqlite";
constexpr std::ptrdiff_t always_kept = 10;

constexpr std::string_view locked_read_me =
    "This folder is a backup of a locked library of Quarterturn: what lies in it is encrypted, "
    "and\n"
    "so are most of the names. Leave all of it as it is, lock.json too.\n"
    "\n"
    "To make a library of it again: qturn restore THIS-FOLDER --to A-NEW-FOLDER\n"
    "\n"
    "It asks for the passphrase that the library had when this backup was made last, or for its\n"
    "recovery key. Without one of the two nobody can read it, nor help.\n";

constexpr std::string_view read_me =
    "This folder is a backup of a library of Quarterturn, made of plain files.\n"
    "\n"
    "To get photos out without the program: they lie in photos/, in a folder for each sitting,\n"
    "under their own names. Copy what you need; leave this folder as it is.\n"
    "\n"
    "What lies here, as far as the library has it:\n"
    "\n"
    "  photos/           the photos as they were brought in\n"
    "  consents/         scans and messages that show what clients allowed\n"
    "  inspiration/      pictures that clients brought along\n"
    "  consent-form.txt  the wording of the consent form\n"
    "  recipe-rules.txt  what each rule of the recipe check weighs; what stood there before is in\n"
    "                    recipe-rules-before.txt\n"
    "  records/          clients, sittings, looks, recipes and tags as they were at each time\n"
    "                    (UTC) in its name: SQLite files, the newest last\n"
    "  checksums.sha256  all of these files with their SHA-256\n"
    "\n"
    "To check that all is whole, in this folder: sha256sum --check --quiet checksums.sha256\n"
    "To make a library of it again: qturn restore THIS-FOLDER --to A-NEW-FOLDER\n"
    "\n"
    "The photos show people. Keep this folder as carefully as the library itself.\n";

std::span<const std::byte> bytes_of_text(std::string_view text) {
    return std::as_bytes(std::span(text));
}

// Null where the folder has no lock.
std::shared_ptr<LockedFileSystem> unlocked(FileSystem& disk, const Path& folder) try {
    const auto lock = read_lock(disk, folder);
    if (!lock) return nullptr;
    KeysInHand keys = key_ring::with_mark(lock->mark);
    if (keys == nullptr) {
        throw LibraryLocked("The backup in " + folder.string() +
                            " is locked: give the passphrase of its library.");
    }
    key_ring::add(folder, keys);
    return std::make_shared<LockedFileSystem>(disk, folder, std::move(keys));
} catch (const LockError& error) {
    throw StoreError(error.what());
}

// The month in a name of records_path: "202611".
std::string month_of(const std::string& records) {
    constexpr std::size_t month_digits = 6;
    return records.substr(records_start.size(), month_digits);
}

}  // namespace

std::string text_of_file(FileSystem& disk, const Path& file) {
    const Bytes bytes = disk.read(file, any_size);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

BackupFolder::BackupFolder(FileSystem& disk, Path folder)
    : beneath_(&disk), folder_(std::move(folder)), locked_(unlocked(disk, folder_)) {}

std::string BackupFolder::manifest_text_there() const try {
    return text_of_file(disk(), file(manifest_name));
} catch (const DiskError& error) {
    if (locked_ && error.damaged()) refuse_lock_of_another(*beneath_, folder_, keys());
    throw;
}

std::optional<Manifest> BackupFolder::manifest() const {
    if (!disk().exists(file(manifest_name))) return std::nullopt;
    auto manifest = parse_manifest(manifest_text_there());
    if (manifest) return manifest;
    if (!locked_) refuse_lost_lock(*beneath_, folder_);
    throw StoreError("The list of files in " + folder_.string() + " (" + manifest_name +
                     ") is damaged: leave that folder as it is, and make a backup in a new one.");
}

void BackupFolder::replace_manifest(const Manifest& manifest) const {
    replace_file(disk(), file(manifest_name), bytes_of_text(manifest_text(manifest)));
}

std::vector<std::string> BackupFolder::unfinished() const {
    std::vector<std::string> paths;
    if (!disk().exists(file(unfinished_name))) return paths;
    const std::string text = text_of_file(disk(), file(unfinished_name));
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find('\0', begin), text.size());
        std::string path = text.substr(begin, end - begin);
        if (lies_in_backup(path)) paths.push_back(std::move(path));
        begin = end + 1;
    }
    return paths;
}

void BackupFolder::note_unfinished(const std::vector<std::string>& paths) const {
    std::string text;
    for (const std::string& path : paths) text.append(path) += '\0';
    replace_file(disk(), file(unfinished_name), bytes_of_text(text));
}

void BackupFolder::forget_unfinished() const {
    const Path moving = file(moving_name);
    if (disk().exists(moving) && disk().list(moving).empty()) disk().remove_empty_folder(moving);
    if (!disk().exists(file(unfinished_name))) return;
    disk().remove(file(unfinished_name));
    disk().sync_folder(folder_);
}

void BackupFolder::write_read_me() const {
    const Path text = file(read_me_name);
    const std::string_view words = locked_ ? locked_read_me : read_me;
    if (beneath_->exists(text) && text_of_file(*beneath_, text) == words) return;
    replace_file(*beneath_, text, bytes_of_text(words));
}

bool BackupFolder::remove(const std::string& path) const {
    make_way(path);
    if (!disk().exists(file(path))) return false;
    disk().remove(file(path));
    disk().sync_folder(file(path).parent_path());
    return true;
}

void BackupFolder::drop_empty_folders_of(const std::string& path) const {
    drop_empty_folders(disk(), folder_, Path(path).parent_path());
}

void BackupFolder::make_way(const std::string& path) const {
    const Path left = unseen_name(file(path));
    if (disk().exists(left)) disk().remove(left);
}

std::string records_path(std::chrono::sys_seconds utc) {
    const auto day = std::chrono::floor<std::chrono::days>(utc);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss time(utc - day);
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d%02u%02uT%02d%02d%02dZ",
                  static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                  static_cast<unsigned>(date.day()), static_cast<int>(time.hours().count()),
                  static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return std::string(records_start) + text.data() + std::string(records_end);
}

std::optional<std::chrono::sys_seconds> time_of_records(const std::string& path) {
    if (!path.starts_with(records_start)) return std::nullopt;
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    int hours = 0;
    int minutes = 0;
    int seconds = 0;
    constexpr int parts = 6;
    if (std::sscanf(path.c_str() + records_start.size(), "%4d%2u%2uT%2d%2d%2dZ", &year, &month,
                    &day, &hours, &minutes, &seconds) != parts) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                           std::chrono::day(day)};
    if (!date.ok()) return std::nullopt;
    const std::chrono::sys_seconds utc = std::chrono::sys_days(date) + std::chrono::hours(hours) +
                                         std::chrono::minutes(minutes) +
                                         std::chrono::seconds(seconds);
    return records_path(utc) == path ? std::optional(utc) : std::nullopt;
}

bool is_records_path(const std::string& path) {
    return time_of_records(path).has_value();
}

std::vector<std::string> records_in(const Manifest& manifest) {
    std::vector<std::string> records;
    for (const auto& [path, checksum] : manifest.files) {
        if (is_records_path(path)) records.push_back(path);
    }
    return records;
}

std::vector<std::string> records_to_keep(const std::vector<std::string>& records) {
    std::vector<std::string> kept;
    std::set<std::string> months;
    std::ptrdiff_t number = 0;
    for (auto path = records.rbegin(); path != records.rend(); ++path) {
        const bool first_of_month = months.insert(month_of(*path)).second;
        if (number++ < always_kept || first_of_month) kept.push_back(*path);
    }
    std::ranges::reverse(kept);
    return kept;
}

}  // namespace quarterturn
