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

// Of the version, and as the photo is shown now.
const std::string that_hold = "version = ? AND hair_look.mirrored = photo.mirrored";

struct HexShares {
    std::optional<std::string> colour, texture, shape;

    HairLook look() const {
        if (!shape) return {};
        return {shares_from_hex(*colour), shares_from_hex(*texture), shares_from_hex(*shape)};
    }
};

}  // namespace

void HairLookTable::keep(const Photo& photo, const HairLook& look) {
    run(*database_,
        "INSERT OR REPLACE INTO hair_look (photo, version, mirrored, colour, texture, shape) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        photo.id, version_, photo.tags.mirrored, shares_as_hex(look.colour),
        shares_as_hex(look.texture), shares_as_hex(look.shape));
}

HairLook HairLookTable::of(PhotoId photo) {
    return Statement(*database_,
                     "SELECT colour, texture, shape FROM hair_look JOIN photo ON photo.id = "
                     "hair_look.photo WHERE " +
                         that_hold + " AND binned IS NULL AND photo = ?")
        .with(version_, photo)
        .first([](const Statement& row) {
            HexShares hex;
            row.read(hex.colour, hex.texture, hex.shape);
            return hex.look();
        })
        .value_or(HairLook{});
}

std::vector<PairHair> HairLookTable::of_pairs(std::optional<Angle> angle) {
    Statement rows(*database_,
                   "SELECT pair.id, pair.look, colour, texture, shape FROM pair "
                   "CROSS JOIN photo ON photo.id = second LEFT JOIN hair_look ON "
                   "hair_look.photo = second AND " +
                       that_hold +
                       " WHERE NOT refused AND pair.angle = coalesce(?, pair.angle) AND "
                       "photo.binned IS NULL AND first NOT IN (SELECT id FROM photo WHERE binned "
                       "IS NOT NULL) ORDER BY worn_on DESC, pair.id DESC");
    return rows.with(version_, angle).rows([](const Statement& row) {
        PairHair pair;
        HexShares hex;
        row.read(pair.pair, pair.look, hex.colour, hex.texture, hex.shape);
        pair.hair = hex.look();
        return pair;
    });
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
