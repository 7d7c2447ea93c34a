#include "indexer/store/hair_look_table.h"

#include <algorithm>

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

constexpr std::string_view hex_digits = "0123456789abcdef";

constexpr int value_of_digit(char digit) {
    return digit <= '9' ? digit - '0' : digit - 'a' + 10;
}

std::string shares_as_hex(const HairLook::Shares& shares) {
    std::string text;
    text.reserve(2 * shares.size());
    for (const std::uint8_t share : shares) {
        text += hex_digits[share >> 4U];
        text += hex_digits[share & 15U];
    }
    return text;
}

HairLook::Shares shares_from_hex(const std::string& text) {
    HairLook::Shares shares;
    shares.reserve(text.size() / 2);
    for (std::size_t at = 0; at + 1 < text.size(); at += 2) {
        shares.push_back(static_cast<std::uint8_t>(value_of_digit(text[at]) * 16 +
                                                   value_of_digit(text[at + 1])));
    }
    return shares;
}

const std::string select_hair_looks =
    "SELECT photo, colour, texture, shape FROM hair_look JOIN photo ON photo.id = "
    "hair_look.photo WHERE version = ? AND photo.mirrored = hair_look.mirrored "
    "AND photo.binned IS NULL";

std::map<PhotoId, HairLook> hair_looks_in(Statement& rows) {
    std::map<PhotoId, HairLook> looks;
    while (rows.step()) {
        PhotoId photo;
        std::string colour, texture, shape;
        rows.read(photo, colour, texture, shape);
        looks.emplace(photo, HairLook{shares_from_hex(colour), shares_from_hex(texture),
                                      shares_from_hex(shape)});
    }
    return looks;
}

}  // namespace

void HairLookTable::keep(const Photo& photo, const HairLook& look) {
    run(*database_,
        "INSERT OR REPLACE INTO hair_look (photo, version, mirrored, colour, texture, shape) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        photo.id, version_, photo.tags.mirrored, shares_as_hex(look.colour),
        shares_as_hex(look.texture), shares_as_hex(look.shape));
}

std::map<PhotoId, HairLook> HairLookTable::all() {
    Statement rows(*database_, select_hair_looks);
    return hair_looks_in(rows.with(version_));
}

std::map<PhotoId, HairLook> HairLookTable::of_pairs_from(Angle angle) {
    Statement rows(*database_,
                   select_hair_looks + " AND photo IN (SELECT second FROM pair WHERE angle = ?)");
    return hair_looks_in(rows.with(version_, angle));
}

std::vector<PhotoId> HairLookTable::still_to_measure() {
    Statement rows(*database_,
                   "SELECT DISTINCT second FROM pair JOIN photo ON photo.id = second "
                   "LEFT JOIN hair_look ON hair_look.photo = second AND version = ? "
                   "AND hair_look.mirrored = photo.mirrored WHERE hair_look.photo IS NULL "
                   "AND photo.binned IS NULL ORDER BY second");
    return rows.with(version_).rows([](const Statement& row) {
        PhotoId photo;
        row.read(photo);
        return photo;
    });
}

}  // namespace quarterturn
