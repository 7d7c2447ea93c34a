#pragma once
// The fixed vocabularies: each value has one word, the same on screen, in commands and in the
// database. `word(x)` answers it; `parse_x(text)` answers nothing for an unknown word.
// Left and right are always the client's own.

#include <array>
#include <optional>
#include <string_view>

namespace quarterturn {

enum class Angle {
    front,
    left,
    right,
    back,
    crown,
    left_three_quarter,
    right_three_quarter,
    detail
};
enum class Stage { before, during, after };
enum class SittingKind { consultation, trial, wedding_day, model_shoot };
enum class Worn { ceremony, evening, other };
enum class Need { required, nice_to_have };
enum class Coverage { covered, weak, missing, waived };
enum class Quarter { covered, weak, partly, missing, waived };  // of the coverage ring
enum class Flaw { out_of_focus, moved, too_dark, blown_out, too_small };

// A row of angles reads left, front, right, back; the further angles follow.
inline constexpr std::array quarter_angles{Angle::left, Angle::front, Angle::right, Angle::back};
using Ring = std::array<Quarter, 4>;  // in the order of quarter_angles
inline constexpr std::array further_angles{Angle::crown, Angle::left_three_quarter,
                                           Angle::right_three_quarter, Angle::detail};
inline constexpr std::array all_angles{Angle::left,
                                       Angle::front,
                                       Angle::right,
                                       Angle::back,
                                       Angle::crown,
                                       Angle::left_three_quarter,
                                       Angle::right_three_quarter,
                                       Angle::detail};
inline constexpr std::array all_stages{Stage::before, Stage::during, Stage::after};

std::string_view word(Angle angle);  // "left three-quarter"
std::string_view word(Stage stage);
std::string_view word(SittingKind kind);  // "wedding day"
std::string_view word(Worn worn);
std::string_view word(Need need);  // "nice to have"
std::string_view word(Coverage coverage);
std::string_view word(Quarter quarter);
std::string_view word(Flaw flaw);  // "out of focus"

// Case does not matter, and '-', '_' and ' ' are the same.
std::optional<Angle> parse_angle(std::string_view text);
std::optional<Stage> parse_stage(std::string_view text);
std::optional<SittingKind> parse_sitting_kind(std::string_view text);
std::optional<Worn> parse_worn(std::string_view text);
std::optional<Need> parse_need(std::string_view text);
std::optional<Flaw> parse_flaw(std::string_view text);

// The angle on the other side of the head; front, back, crown and detail are their own.
Angle mirrored(Angle angle);

}  // namespace quarterturn
