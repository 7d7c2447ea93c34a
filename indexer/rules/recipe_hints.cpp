#include "indexer/rules/recipe_hints.h"

#include <algorithm>
#include <cctype>
#include <optional>
#include <ranges>

#include "indexer/record/recipe_text.h"

namespace quarterturn {
namespace {

// Without what does not change the meaning.
std::string bare(std::string_view words) {
    std::string bare;
    for (const char letter : words) {
        const auto code = static_cast<unsigned char>(letter);
        if (std::isspace(code) == 0) {
            bare += static_cast<char>(std::tolower(code));
        } else if (!bare.empty() && bare.back() != ' ') {
            bare += ' ';
        }
    }
    while (!bare.empty() && (bare.back() == ' ' || bare.back() == '.')) bare.pop_back();
    return bare;
}

// "none" and nothing written differ, so nothing is left as it is.
bool differ(const std::string& one, const std::string& other) {
    return !bare(one).empty() && !bare(other).empty() && bare(one) != bare(other);
}

std::string without_stop(std::string words) {
    while (!words.empty() && (words.back() == '.' || words.back() == ' ')) words.pop_back();
    return words;
}

// A middle or no parting has no distance from the centre.
PartingLine told_line(PartingLine line) {
    if (line.side == PartingSide::middle || line.side == PartingSide::none) {
        line.from_centre_cm.reset();
    }
    return line;
}

bool parted_elsewhere(const PartingLine& agreed, const PartingLine& today) {
    if (!agreed.side || !today.side) return false;
    if (agreed.side != today.side) return true;
    return agreed.from_centre_cm && today.from_centre_cm &&
           agreed.from_centre_cm != today.from_centre_cm;
}

std::string place_of(const PartingLine& line) {
    if (line.side == PartingSide::middle) return "the middle";
    if (line.side == PartingSide::none) return "no parting";
    return line.from_centre_cm ? parting_text(line) : "her " + parting_text(line);
}

std::string parts_words(const PartingLine& line) {
    if (line.side == PartingSide::middle) return "parts in the middle";
    if (line.side == PartingSide::none) return "has no parting";
    return (line.from_centre_cm ? "parts " : "parts on ") + place_of(line);
}

void add_parting(std::vector<std::string>& hints, const PartingLine& agreed,
                 const PartingLine& today) {
    if (!parted_elsewhere(agreed, today)) return;
    hints.push_back("The recipe of today " + parts_words(today) + "; agreed was " +
                    place_of(agreed) + ".");
}

const Piece* accessory_named(const std::vector<Piece>& pieces, const std::string& what) {
    const auto found = std::ranges::find_if(pieces, [&](const Piece& piece) {
        return piece.kind == PieceKind::accessory && bare(piece.what) == bare(what);
    });
    return found == pieces.end() ? nullptr : &*found;
}

void add_pieces(std::vector<std::string>& hints, const Recipe& agreed, const Recipe& today) {
    for (const Piece& piece : today.pieces) {
        if (piece.kind != PieceKind::accessory) continue;
        const Piece* before = accessory_named(agreed.pieces, piece.what);
        if (!before || !differ(before->where, piece.where)) continue;
        hints.push_back("The place of the " + piece.what +
                        " in the recipe of today: " + without_stop(piece.where) +
                        "; agreed was: " + without_stop(before->where) + ".");
    }
}

}  // namespace

std::vector<std::string> recipe_hints(const Recipe& agreed, const Recipe& today) {
    std::vector<std::string> hints;
    add_parting(hints, told_line(agreed.parting_line), told_line(today.parting_line));
    add_pieces(hints, agreed, today);
    if (differ(agreed.accessory, today.accessory)) {
        hints.push_back("The accessory in the recipe of today: " + without_stop(today.accessory) +
                        "; agreed was: " + without_stop(agreed.accessory) + ".");
    }
    return hints;
}

}  // namespace quarterturn
