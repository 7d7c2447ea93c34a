#include "indexer/store/backup_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string select_backups =
    "SELECT id, mark, folder, volume, newest_records, finished_at, photos, last_photo, "
    "last_erasure FROM backup ";

Backup backup_in(const Statement& row) {
    Backup backup;
    std::string folder;
    row.read(backup.id, backup.mark, folder, backup.volume, backup.newest_records, backup.at,
             backup.photos, backup.last_photo, backup.last_erasure);
    backup.folder = folder;
    return backup;
}

PhotoId photo_number_in(const Statement& row) {
    PhotoId photo;
    row.read(photo);
    return photo;
}

std::string name_of(const Backup& backup) {
    return "backup in " + backup.folder.string();
}

}  // namespace

BackupId BackupTable::add(const Backup& backup) {
    return insert<BackupId>(
        *database_,
        "INSERT INTO backup (mark, folder, volume, newest_records, finished_at, photos, "
        "last_photo, last_erasure) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        backup.mark, backup.folder.string(), backup.volume, backup.newest_records, backup.at,
        backup.photos, backup.last_photo, backup.last_erasure);
}

std::optional<Backup> BackupTable::marked(std::string_view mark) {
    return Statement(*database_, select_backups + "WHERE mark = ?").with(mark).first(backup_in);
}

std::vector<Backup> BackupTable::all() {
    return Statement(*database_, select_backups + "ORDER BY id").rows(backup_in);
}

std::vector<Backup> BackupTable::before_erasure(ErasureId erasure) {
    return Statement(*database_, select_backups + "WHERE last_erasure < ? ORDER BY id")
        .with(erasure)
        .rows(backup_in);
}

void BackupTable::begin(const Backup& backup) {
    update_one(*database_, name_of(backup),
               "UPDATE backup SET folder = ?, volume = ?, newest_records = ? WHERE mark = ?",
               backup.folder.string(), backup.volume, backup.newest_records, backup.mark);
}

void BackupTable::finish(const Backup& backup, std::span<const PhotoId> lacks) {
    Transaction transaction(*database_);
    update_one(*database_, name_of(backup),
               "UPDATE backup SET newest_records = ?, finished_at = ?, photos = ?, "
               "last_photo = ?, last_erasure = ? WHERE mark = ?",
               backup.newest_records, backup.at, backup.photos, backup.last_photo,
               backup.last_erasure, backup.mark);
    run(*database_,
        "DELETE FROM backup_lack WHERE backup IN (SELECT id FROM backup WHERE mark = ?)",
        backup.mark);
    Statement lack(*database_,
                   "INSERT INTO backup_lack (backup, photo) SELECT id, ? FROM backup WHERE "
                   "mark = ?");
    for (const PhotoId photo : lacks) lack.with(photo, backup.mark).run();
    transaction.commit();
}

void BackupTable::forget(BackupId id) {
    update_one(*database_, "backup " + std::to_string(id.value), "DELETE FROM backup WHERE id = ?",
               id);
}

void BackupTable::forget_all() {
    run(*database_, "DELETE FROM backup");
}

std::set<PhotoId> BackupTable::photos_in(const Backup& backup) {
    if (!backup.at) return {};
    const auto photos = Statement(*database_,
                                  "SELECT id FROM photo WHERE id <= ? AND id NOT IN "
                                  "(SELECT photo FROM backup_lack WHERE backup = ?)")
                            .with(backup.last_photo, backup.id)
                            .rows(photo_number_in);
    return {photos.begin(), photos.end()};
}

std::int64_t BackupTable::photos_after(PhotoId photo) {
    // All are counted by an index, which is a tenth of the photos themselves.
    if (!photo)
        return Statement(*database_, "SELECT count(*) FROM photo")
            .value<std::int64_t>()
            .value_or(0);
    return Statement(*database_, "SELECT count(*) FROM photo WHERE id > ?")
        .with(photo)
        .value<std::int64_t>()
        .value_or(0);
}

std::optional<Verification> VerificationTable::reached() {
    return Statement(*database_, "SELECT last_photo, finished_at, problems FROM verification")
        .first([](const Statement& row) {
            Verification reached;
            row.read(reached.last_photo, reached.finished_at, reached.problems);
            return reached;
        });
}

std::vector<PhotoId> VerificationTable::problems() {
    return Statement(*database_, "SELECT photo FROM verification_problem ORDER BY photo")
        .rows(photo_number_in);
}

void VerificationTable::begin() {
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM verification_problem");
    run(*database_,
        "INSERT INTO verification (id, last_photo, finished_at, problems) VALUES (1, 0, NULL, 0) "
        "ON CONFLICT (id) DO UPDATE SET last_photo = 0");
    transaction.commit();
}

void VerificationTable::reach(PhotoId last, std::span<const PhotoId> problems) {
    Transaction transaction(*database_);
    run(*database_, "UPDATE verification SET last_photo = ?", last);
    Statement problem(*database_, "INSERT OR IGNORE INTO verification_problem VALUES (?)");
    for (const PhotoId photo : problems) problem.with(photo).run();
    transaction.commit();
}

void VerificationTable::finish(LocalTime at, std::int64_t problems) {
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM verification_problem");
    run(*database_, "UPDATE verification SET last_photo = 0, finished_at = ?, problems = ?", at,
        problems);
    transaction.commit();
}

}  // namespace quarterturn
