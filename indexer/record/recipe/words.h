#pragma once
// The fixed vocabularies of a recipe. `word(x)` answers the word that is shown and stored;
// `parse_x(text)` answers nothing for an unknown one, and takes no notice of case, '-' and '_'.

#include <array>
#include <optional>
#include <string_view>

namespace quarterturn {

enum class Wind { away, towards, alternating };  // of a curl, seen from the face
enum class PartingSide { left, middle, right, none };
enum class StrokeKind { parting, section };
enum class PieceKind { padding, band, extension, accessory };
enum class Hold { light, regular, strong };
enum class SeenIn { mirror, photos, mirror_and_photos };

inline constexpr std::array all_piece_kinds{PieceKind::padding, PieceKind::band,
                                            PieceKind::extension, PieceKind::accessory};

std::string_view word(Wind wind);  // "away from the face"
std::string_view word(PartingSide side);
std::string_view word(StrokeKind kind);
std::string_view word(PieceKind kind);
std::string_view word(Hold hold);
std::string_view word(SeenIn seen);  // "mirror and photos"

std::optional<Wind> parse_wind(std::string_view text);
std::optional<PartingSide> parse_parting_side(std::string_view text);
std::optional<StrokeKind> parse_stroke_kind(std::string_view text);
std::optional<PieceKind> parse_piece_kind(std::string_view text);
std::optional<Hold> parse_hold(std::string_view text);
std::optional<SeenIn> parse_seen_in(std::string_view text);

}  // namespace quarterturn
