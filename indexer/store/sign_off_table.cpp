#include "indexer/store/sign_off_table.h"

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_sign_offs =
    "SELECT id, look, signed_at, recipe_sha256, reopened_at, reopened_because FROM sign_off ";

SignOff sign_off_in(const Statement& row) {
    SignOff sign_off;
    row.read(sign_off.id, sign_off.look, sign_off.signed_at, sign_off.seal.recipe_sha256,
             sign_off.reopened_at, sign_off.reopened_because);
    return sign_off;
}

SealedPhoto sealed_photo_in(const Statement& row) {
    SealedPhoto sealed;
    row.read(sealed.photo, sealed.name, sealed.sha256, sealed.tags);
    return sealed;
}

Waiver sealed_waiver_in(const Statement& row) {
    Waiver waiver;
    row.read(waiver.shot.stage, waiver.shot.angle, waiver.reason);
    return waiver;
}

// The seals of a look's few sign-offs.
void read_seals(Database& database, std::vector<SignOff>& sign_offs) {
    Statement photos(database,
                     "SELECT photo, name, sha256, tags FROM sealed_photo "
                     "WHERE sign_off = ? ORDER BY place");
    Statement waivers(database,
                      "SELECT stage, angle, reason FROM sealed_waiver "
                      "WHERE sign_off = ? ORDER BY place");
    for (SignOff& sign_off : sign_offs) {
        sign_off.seal.photos = photos.with(sign_off.id).rows(sealed_photo_in);
        sign_off.seal.waivers = waivers.with(sign_off.id).rows(sealed_waiver_in);
    }
}

void write_seal(Database& database, SignOffId id, const Seal& seal) {
    Statement add_photo(database,
                        "INSERT INTO sealed_photo (sign_off, place, photo, name, sha256, tags) "
                        "VALUES (?, ?, ?, ?, ?, ?)");
    int place = 0;
    for (const SealedPhoto& sealed : seal.photos) {
        add_photo.with(id, place++, sealed.photo, sealed.name, sealed.sha256, sealed.tags).run();
    }
    Statement add_waiver(database,
                         "INSERT INTO sealed_waiver (sign_off, place, stage, angle, reason) "
                         "VALUES (?, ?, ?, ?, ?)");
    place = 0;
    for (const Waiver& waiver : seal.waivers) {
        add_waiver.with(id, place++, waiver.shot.stage, waiver.shot.angle, waiver.reason).run();
    }
}

}  // namespace

SignOffId SignOffTable::add(const SignOff& sign_off) {
    Transaction transaction(*database_);
    if (standing(sign_off.look)) {
        throw StoreError("This look is signed off already: reopen it first, with the reason.");
    }
    const auto id = insert<SignOffId>(
        *database_, "INSERT INTO sign_off (look, signed_at, recipe_sha256) VALUES (?, ?, ?)",
        sign_off.look, sign_off.signed_at, sign_off.seal.recipe_sha256);
    write_seal(*database_, id, sign_off.seal);
    transaction.commit();
    return id;
}

void SignOffTable::reopen(LookId look, std::string_view because, LocalTime now) {
    refuse_unless_name("the reason why the look is reopened", because);
    update_one(*database_, "sign-off to reopen for this look",
               "UPDATE sign_off SET reopened_at = ?, reopened_because = ? "
               "WHERE look = ? AND reopened_at IS NULL",
               now, because, look);
}

std::optional<SignOff> SignOffTable::standing(LookId look) {
    auto found = Statement(*database_, select_sign_offs + "WHERE look = ? AND reopened_at IS NULL")
                     .with(look)
                     .rows(sign_off_in);
    read_seals(*database_, found);
    return first_of(std::move(found));
}

std::vector<SignOff> SignOffTable::all(LookId look) {
    auto found = Statement(*database_, select_sign_offs + "WHERE look = ? ORDER BY id")
                     .with(look)
                     .rows(sign_off_in);
    read_seals(*database_, found);
    return found;
}

std::optional<LookId> SignOffTable::sealed_in(PhotoId photo) {
    return Statement(*database_,
                     "SELECT look FROM sealed_photo JOIN sign_off ON sign_off.id = sign_off "
                     "WHERE photo = ? AND reopened_at IS NULL")
        .with(photo)
        .value<LookId>();
}

}  // namespace quarterturn
