#include "indexer/store/photos_at_gate.h"

#include <algorithm>
#include <map>

#include "indexer/store/credit_table.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

// Of "SELECT photo, what FROM …", in the order of photos.
template <class What>
std::map<PhotoId, std::vector<What>> by_photo(Statement& rows) {
    std::map<PhotoId, std::vector<What>> all;
    while (rows.step()) {
        PhotoId photo;
        What what{};
        rows.read(photo, what);
        all[photo].push_back(what);
    }
    return all;
}

template <class What>
What of(PhotoId photo, const std::map<PhotoId, What>& all) {
    const auto found = all.find(photo);
    return found == all.end() ? What{} : found->second;
}

void read_photo(const Statement& row, PhotoAtGate& at_gate) {
    Photo& photo = at_gate.photo;
    Tags& tags = photo.tags;
    Credit& credit = at_gate.credit;
    std::optional<bool> front, left, right;
    row.read(photo.id, tags.look, tags.sitting, tags.angle, tags.mirrored, front, left, right,
             credit.whose, credit.name, credit.until, credit.line);
    photo.head_signs.reset();
    if (front) photo.head_signs = {*front, left.value_or(false), right.value_or(false)};
}

// What lies beside the photos themselves, of all or of some.
struct BesidePhotos {
    std::map<PhotoId, std::vector<ClientId>> shown;
    std::map<PhotoId, Seen> seen;
    std::map<PhotoId, std::vector<Use>> licensed;
};

const std::string some_of_them = "WHERE photo IN (SELECT value FROM json_each(?)) ";

std::string select_shown(const std::string& of) {
    return "SELECT photo, client FROM photo_shown " + of + "ORDER BY photo, place";
}

std::string select_licensed(const std::string& of) {
    return "SELECT photo, use FROM photo_licence " + of + "ORDER BY photo";
}

std::string select_at_gate(const std::string& photos) {
    return "SELECT photo.id, look, sitting, angle, mirrored, frontal_face, profile_to_left, "
           "profile_to_right, whose, photo_credit.name, valid_until, line "
           "FROM photo_credit CROSS JOIN photo ON photo.id = photo_credit.photo "
           "WHERE photo_credit.photo IN (" +
           photos +
           ") AND photo.binned IS NULL AND photo.sha256 NOT IN (SELECT sha256 FROM inspiration) "
           "ORDER BY photo_credit.photo";
}

void see_each(Statement& rows, const BesidePhotos& beside,
              const std::function<void(const PhotoAtGate&)>& see) {
    PhotoAtGate at_gate;
    while (rows.step()) {
        read_photo(rows, at_gate);
        at_gate.photo.tags.shown = of(at_gate.photo.id, beside.shown);
        at_gate.seen = of(at_gate.photo.id, beside.seen);
        at_gate.credit.licensed = of(at_gate.photo.id, beside.licensed);
        std::ranges::sort(at_gate.credit.licensed);
        see(at_gate);
    }
}

}  // namespace

void each_photo_of_pairs(Database& database, const std::function<void(const PhotoAtGate&)>& see) {
    Statement shown(database, select_shown(""));
    Statement licensed(database, select_licensed(""));
    const BesidePhotos beside{by_photo<ClientId>(shown), CreditTable(database).all_seen(),
                              by_photo<Use>(licensed)};
    Statement rows(database,
                   select_at_gate("SELECT first FROM pair UNION ALL SELECT second FROM pair"));
    see_each(rows, beside, see);
}

std::vector<PhotoAtGate> photos_at_gate(Database& database, std::span<const PhotoId> photos) {
    const std::string list = json_list(photos);
    Statement shown(database, select_shown(some_of_them));
    Statement licensed(database, select_licensed(some_of_them));
    const BesidePhotos beside{by_photo<ClientId>(shown.with(list)),
                              SomeRecords(database).seen(photos),
                              by_photo<Use>(licensed.with(list))};
    Statement rows(database, select_at_gate("SELECT value FROM json_each(?)"));
    std::vector<PhotoAtGate> at_gate;
    see_each(rows.with(list), beside, [&](const PhotoAtGate& photo) { at_gate.push_back(photo); });
    return at_gate;
}

}  // namespace quarterturn
