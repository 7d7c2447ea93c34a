#include "indexer/store/photos_at_gate.h"

#include <algorithm>
#include <map>

#include "indexer/store/credit_table.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

// "SELECT photo, what FROM …", in the order of photos.
template <class What>
std::map<PhotoId, std::vector<What>> all_by_photo(Database& database, const std::string& sql) {
    std::map<PhotoId, std::vector<What>> all;
    Statement rows(database, sql);
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

}  // namespace

void each_photo_of_pairs(Database& database, const std::function<void(const PhotoAtGate&)>& see) {
    const auto shown = all_by_photo<ClientId>(
        database, "SELECT photo, client FROM photo_shown ORDER BY photo, place");
    const auto seen = CreditTable(database).all_seen();
    const auto licensed =
        all_by_photo<Use>(database, "SELECT photo, use FROM photo_licence ORDER BY photo");
    Statement rows(
        database,
        "SELECT photo.id, look, sitting, angle, mirrored, frontal_face, profile_to_left, "
        "profile_to_right, whose, photo_credit.name, valid_until, line "
        "FROM photo_credit CROSS JOIN photo ON photo.id = photo_credit.photo "
        "WHERE photo_credit.photo IN (SELECT first FROM pair UNION ALL SELECT second FROM pair) "
        "AND photo.binned IS NULL AND photo.sha256 NOT IN (SELECT sha256 FROM inspiration) ORDER "
        "BY photo_credit.photo");
    PhotoAtGate at_gate;
    while (rows.step()) {
        read_photo(rows, at_gate);
        at_gate.photo.tags.shown = of(at_gate.photo.id, shown);
        at_gate.seen = of(at_gate.photo.id, seen);
        at_gate.credit.licensed = of(at_gate.photo.id, licensed);
        std::ranges::sort(at_gate.credit.licensed);
        see(at_gate);
    }
}

}  // namespace quarterturn
