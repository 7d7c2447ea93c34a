#include "indexer/store/photo_rows.h"

#include "indexer/store/search_words.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// Some columns of a record are there all together or not at all.
struct TakenColumns {
    std::optional<LocalTime> local;
    std::optional<int> fraction_digits;
    std::optional<std::chrono::minutes> utc_offset;

    std::optional<CaptureTime> record() const {
        if (!local) return std::nullopt;
        return CaptureTime{*local, fraction_digits.value_or(0), utc_offset};
    }
};

struct HeadColumns {
    std::optional<bool> frontal_face;
    std::optional<bool> profile_to_left;
    std::optional<bool> profile_to_right;

    std::optional<HeadSigns> record() const {
        if (!frontal_face) return std::nullopt;
        return HeadSigns{*frontal_face, profile_to_left.value_or(false),
                         profile_to_right.value_or(false)};
    }
};

// One row for each client shown, or one without a client.
Photo photo_in(const Statement& row, std::optional<ClientId>& shown) {
    Photo photo;
    FileFacts& file = photo.file;
    Measures& measures = photo.measures;
    Suggestion& suggestion = photo.suggestion;
    Tags& tags = photo.tags;
    TakenColumns taken;
    HeadColumns head;
    std::int64_t fingerprint = 0;
    row.read(photo.id, file.name, file.path, file.sha256, file.bytes, file.width, file.height,
             file.orientation, taken.local, taken.fraction_digits, taken.utc_offset, file.device,
             photo.moment, measures.focus, measures.motion, measures.mean_light,
             measures.clipped_shadows, measures.clipped_highlights, fingerprint, head.frontal_face,
             head.profile_to_left, head.profile_to_right, photo.flaws, suggestion.angle,
             suggestion.angle_source, suggestion.stage, suggestion.stage_source, tags.sitting,
             tags.placed_by_hand, tags.look, tags.stage, tags.angle, tags.mirrored, tags.note,
             tags.accepted_because, shown);
    file.taken = taken.record();
    photo.head_signs = head.record();
    photo.fingerprint = static_cast<Fingerprint>(fingerprint);
    return photo;
}

}  // namespace

std::string photos_sql(const std::string& where) {
    return "SELECT photo.id, name, path, sha256, bytes, width, height, orientation, taken, "
           "fraction_digits, utc_offset, device, moment, focus, motion, mean_light, "
           "clipped_shadows, clipped_highlights, fingerprint, frontal_face, profile_to_left, "
           "profile_to_right, flaws, suggested_angle, suggested_angle_source, suggested_stage, "
           "suggested_stage_source, sitting, placed_by_hand, look, stage, angle, mirrored, note, "
           "accepted_because, photo_shown.client "
           "FROM photo LEFT JOIN photo_shown ON photo_shown.photo = photo.id WHERE " +
           where + " ORDER BY moment IS NULL, moment, photo.id, photo_shown.place";
}

std::vector<Photo> photos_in(Statement& statement) {
    std::vector<Photo> photos;
    while (statement.step()) {
        std::optional<ClientId> shown;
        Photo photo = photo_in(statement, shown);
        if (photos.empty() || photos.back().id != photo.id) photos.push_back(std::move(photo));
        if (shown) photos.back().tags.shown.push_back(*shown);
    }
    return photos;
}

void remove_repeats(std::vector<ClientId>& clients) {
    auto end = clients.begin();
    for (const ClientId client : clients) {
        if (std::find(clients.begin(), end, client) == end) *end++ = client;
    }
    clients.erase(end, clients.end());
}

void write_tags(Database& database, PhotoId id, const Tags& tags) {
    refuse_unless_text("the photo's note", tags.note);
    refuse_unless_text("the reason for using the photo", tags.accepted_because);
    update_one(database, "photo " + std::to_string(id.value),
               "UPDATE photo SET sitting = ?, placed_by_hand = ?, look = ?, stage = ?, angle = ?, "
               "mirrored = ?, note = ?, accepted_because = ? WHERE id = ?",
               tags.sitting, tags.placed_by_hand, tags.look, tags.stage, tags.angle, tags.mirrored,
               tags.note, tags.accepted_because, id);
    run(database, "DELETE FROM photo_shown WHERE photo = ?", id);
    Statement add(database, "INSERT INTO photo_shown (photo, place, client) VALUES (?, ?, ?)");
    std::vector<ClientId> shown = tags.shown;
    remove_repeats(shown);
    int place = 0;
    for (const ClientId client : shown) add.with(id, place++, client).run();
    index_words(database, WordsOf::photo, id);
}

}  // namespace quarterturn
