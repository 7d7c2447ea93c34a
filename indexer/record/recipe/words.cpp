#include "indexer/record/recipe/words.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Wind, 3> wind_words{{{Wind::away, "away from the face"},
                                        {Wind::towards, "towards the face"},
                                        {Wind::alternating, "alternating"}}};
constexpr WordList<PartingSide, 4> parting_side_words{{{PartingSide::left, "left"},
                                                       {PartingSide::middle, "middle"},
                                                       {PartingSide::right, "right"},
                                                       {PartingSide::none, "none"}}};
constexpr WordList<StrokeKind, 2> stroke_kind_words{
    {{StrokeKind::parting, "parting"}, {StrokeKind::section, "section"}}};
constexpr WordList<PieceKind, 4> piece_kind_words{{{PieceKind::padding, "padding"},
                                                   {PieceKind::band, "band"},
                                                   {PieceKind::extension, "extension"},
                                                   {PieceKind::accessory, "accessory"}}};
constexpr WordList<Hold, 3> hold_words{
    {{Hold::light, "light"}, {Hold::regular, "regular"}, {Hold::strong, "strong"}}};
constexpr WordList<SeenIn, 3> seen_in_words{{{SeenIn::mirror, "mirror"},
                                             {SeenIn::photos, "photos"},
                                             {SeenIn::mirror_and_photos, "mirror and photos"}}};

}  // namespace

std::string_view word(Wind wind) {
    return find_word(wind_words, wind);
}
std::string_view word(PartingSide side) {
    return find_word(parting_side_words, side);
}
std::string_view word(StrokeKind kind) {
    return find_word(stroke_kind_words, kind);
}
std::string_view word(PieceKind kind) {
    return find_word(piece_kind_words, kind);
}
std::string_view word(Hold hold) {
    return find_word(hold_words, hold);
}
std::string_view word(SeenIn seen) {
    return find_word(seen_in_words, seen);
}

std::optional<Wind> parse_wind(std::string_view text) {
    return find_value(wind_words, text);
}
std::optional<PartingSide> parse_parting_side(std::string_view text) {
    return find_value(parting_side_words, text);
}
std::optional<StrokeKind> parse_stroke_kind(std::string_view text) {
    return find_value(stroke_kind_words, text);
}
std::optional<PieceKind> parse_piece_kind(std::string_view text) {
    return find_value(piece_kind_words, text);
}
std::optional<Hold> parse_hold(std::string_view text) {
    return find_value(hold_words, text);
}
std::optional<SeenIn> parse_seen_in(std::string_view text) {
    return find_value(seen_in_words, text);
}

}  // namespace quarterturn
