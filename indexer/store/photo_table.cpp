#include "indexer/store/photo_table.h"

#include "indexer/store/photo_rows.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// A path that leads out of the library could make another job write there.
void refuse_unless_inside(const Path& path) {
    const bool leads_out = std::ranges::find(path, Path("..")) != path.end();
    if (path.empty() || path.is_absolute() || leads_out) {
        throw StoreError("The place \"" + path.string() +
                         "\" for a photo file is not inside the library: name one below its "
                         "photos folder.");
    }
}

void refuse_taken_path(Database& database, PhotoId id, std::string_view path) {
    const auto taken = Statement(database, "SELECT 1 FROM photo WHERE folded_path = ? AND id <> ?")
                           .with(folded(path), id)
                           .value<bool>();
    if (taken) {
        throw StoreError("Another photo of the library lies at \"" + std::string(path) +
                         "\" already: choose another name.");
    }
}

void write_suggestion(Database& database, PhotoId id, const Suggestion& suggestion) {
    update_one(database, "photo " + std::to_string(id.value),
               "UPDATE photo SET suggested_angle = ?, suggested_angle_source = ?, "
               "suggested_stage = ?, suggested_stage_source = ? WHERE id = ?",
               suggestion.angle, suggestion.angle_source, suggestion.stage, suggestion.stage_source,
               id);
}

template <class Member>
std::optional<bool> sign(const std::optional<HeadSigns>& signs, Member member) {
    return signs ? std::optional{*signs.*member} : std::nullopt;
}

void write_measured(Database& database, PhotoId id, const Measures& measures,
                    Fingerprint fingerprint, const std::optional<HeadSigns>& signs,
                    const std::vector<Flaw>& flaws) {
    update_one(database, "photo " + std::to_string(id.value),
               "UPDATE photo SET focus = ?, motion = ?, mean_light = ?, clipped_shadows = ?, "
               "clipped_highlights = ?, fingerprint = ?, frontal_face = ?, profile_to_left = ?, "
               "profile_to_right = ?, flaws = ? WHERE id = ?",
               measures.focus, measures.motion, measures.mean_light, measures.clipped_shadows,
               measures.clipped_highlights, static_cast<std::int64_t>(fingerprint),
               sign(signs, &HeadSigns::frontal_face), sign(signs, &HeadSigns::profile_to_left),
               sign(signs, &HeadSigns::profile_to_right), flaws, id);
}

PhotoId insert_file(Database& database, const FileFacts& file) {
    const auto local = file.taken ? std::optional{file.taken->local} : std::nullopt;
    const auto digits = file.taken ? std::optional{file.taken->fraction_digits} : std::nullopt;
    const auto offset = file.taken ? file.taken->utc_offset : std::nullopt;
    return insert<PhotoId>(
        database,
        "INSERT INTO photo (name, folded_name, path, folded_path, sha256, bytes, width, height, "
        "orientation, taken, fraction_digits, utc_offset, device) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        file.name, folded(file.name), file.path, folded(file.path), file.sha256, file.bytes,
        file.width, file.height, file.orientation, local, digits, offset, file.device);
}

bool is_hex(std::string_view text) {
    return text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

}  // namespace

PhotoId PhotoTable::add(const Photo& photo) {
    refuse_unless_inside(photo.file.path);
    Transaction transaction(*database_);
    if (with_sha256(photo.file.sha256)) {
        throw StoreError(photo.file.name + " is in the library already, and was not added again.");
    }
    refuse_taken_path(*database_, PhotoId{}, photo.file.path);
    const PhotoId id = insert_file(*database_, photo.file);
    write_moments(*database_, "id = ?", id);
    write_suggestion(*database_, id, photo.suggestion);
    write_measured(*database_, id, photo.measures, photo.fingerprint, photo.head_signs,
                   photo.flaws);
    write_tags(*database_, id, photo.tags);
    transaction.commit();
    return id;
}

std::optional<Photo> PhotoTable::find(PhotoId id) {
    return first_of(select_photos(*database_, "photo.id = ?", id));
}

std::optional<PhotoId> PhotoTable::with_sha256(std::string_view sha256) {
    return Statement(*database_, "SELECT id FROM photo WHERE sha256 = ?")
        .with(sha256)
        .value<PhotoId>();
}

std::vector<Photo> PhotoTable::named(std::string_view original_name) {
    return select_photos(*database_, "folded_name = ?", folded(original_name));
}

std::vector<Photo> PhotoTable::sha256_starting(std::string_view hex) {
    const std::string start = folded(hex);
    if (!is_hex(start)) return {};
    return select_photos(*database_, "sha256 >= ? AND sha256 < ?", start, start + 'g');
}

std::vector<Photo> PhotoTable::these(std::span<const PhotoId> ids) {
    return select_photos(*database_, "photo.id IN (SELECT value FROM json_each(?))",
                         json_list(ids));
}

std::optional<Photo> PhotoTable::find_also_in_bin(PhotoId id) {
    return first_of(select_all_photos(*database_, "photo.id = ?", id));
}

std::vector<Photo> PhotoTable::these_also_in_bin(std::span<const PhotoId> ids) {
    return select_all_photos(*database_, "photo.id IN (SELECT value FROM json_each(?))",
                             json_list(ids));
}

std::vector<StoredFile> PhotoTable::stored_files() {
    return Statement(*database_, "SELECT id, sha256, path, bytes FROM photo ORDER BY id")
        .rows([](const Statement& row) {
            StoredFile file;
            row.read(file.id, file.sha256, file.path, file.bytes);
            return file;
        });
}

std::vector<Photo> PhotoTable::all() {
    return select_photos(*database_, "TRUE");
}

std::vector<Photo> PhotoTable::of_sitting(SittingId sitting) {
    return select_photos(*database_, "sitting = ?", sitting);
}

std::vector<Photo> PhotoTable::around_look(const Look& look) {
    return select_photos(
        *database_,
        "look = ? OR sitting IN (SELECT sitting FROM look_sitting WHERE look_sitting.look = ?)",
        look.id, look.id);
}

std::vector<Photo> PhotoTable::of_device(DeviceId device) {
    return select_photos(*database_, "device = ?", device);
}

std::vector<Photo> PhotoTable::in_no_sitting() {
    return select_photos(*database_, "sitting IS NULL");
}

void PhotoTable::set_path(PhotoId id, std::string_view path) {
    refuse_unless_inside(path);
    Transaction transaction(*database_);
    refuse_taken_path(*database_, id, path);
    update_one(*database_, "photo " + std::to_string(id.value),
               "UPDATE photo SET path = ?, folded_path = ? WHERE id = ?", path, folded(path), id);
    transaction.commit();
}

bool PhotoTable::path_taken(std::string_view path) {
    return Statement(*database_, "SELECT 1 FROM photo WHERE folded_path = ?")
        .with(folded(path))
        .value<bool>()
        .has_value();
}

void PhotoTable::set_sitting_by_time(PhotoId id, std::optional<SittingId> sitting) {
    run(*database_, "UPDATE photo SET sitting = ? WHERE id = ? AND NOT placed_by_hand", sitting,
        id);
}

void PhotoTable::set_suggestion(PhotoId id, const Suggestion& suggestion) {
    write_suggestion(*database_, id, suggestion);
}

void PhotoTable::set_measured(PhotoId id, const Measures& measures, Fingerprint fingerprint,
                              const HeadSigns& signs, const std::vector<Flaw>& flaws) {
    write_measured(*database_, id, measures, fingerprint, signs, flaws);
}

}  // namespace quarterturn
