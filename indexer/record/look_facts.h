#pragma once
// What a look and its hair can be found by, in few plain words each.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

// The first seven are of the look, read out of its recipe or said by her. The others follow from
// the records.
enum class Fact {
    length,
    texture,
    density,
    colour,
    family,  // low bun, plait: her own list, see library_settings.h
    parting,
    accessory,
    worn,
    season,
    year,
    angle,
    kind,  // of pair
    use    // that both photos may go for, as consent and licence stand today
};

inline constexpr std::array facts_of_look{Fact::length, Fact::texture, Fact::density,  Fact::colour,
                                          Fact::family, Fact::parting, Fact::accessory};
inline constexpr std::array all_facts{Fact::family, Fact::length,  Fact::texture,   Fact::density,
                                      Fact::colour, Fact::parting, Fact::accessory, Fact::worn,
                                      Fact::season, Fact::year,    Fact::angle,     Fact::kind,
                                      Fact::use};

std::string_view word(Fact fact);
std::optional<Fact> parse_fact(std::string_view text);  // as the parse functions of words.h

// A look may have several values of one fact: a plait and a low bun.
struct LookFact {
    Fact fact = Fact::length;
    std::string value;
    bool said = false;  // by her, and not read out of the recipe

    auto operator<=>(const LookFact&) const = default;
};
using LookFacts = std::vector<LookFact>;

inline constexpr std::array<std::string_view, 7> usual_look_families{
    "low ponytail", "low bun", "high bun", "half up", "down", "plait", "waves"};

}  // namespace quarterturn
