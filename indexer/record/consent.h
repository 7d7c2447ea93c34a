#pragma once
// What a client allows: one thing she said, for one use, on one day. What counts is worked out in
// rules/consent.h; nothing recorded means no.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

using ConsentId = Id<struct ConsentRow>;
using ConsentPaperId = Id<struct ConsentPaperRow>;

enum class Use { own_record, consultation, website, social_media, print, competition, teaching };
inline constexpr std::array all_uses{Use::own_record,   Use::consultation, Use::website,
                                     Use::social_media, Use::print,        Use::competition,
                                     Use::teaching};

enum class ConsentSaid { granted, declined, withdrawn };
enum class ShownAs { with_her_face, hair_only };
enum class HowGiven { signed_form, message, spoken };
enum class ConsentGiver { herself, guardian };

// How old she is, as far as it was told. A child is anybody under 18; local law may ask her own
// word too, or count otherwise.
enum class AgeBand { up_to_14, at_15, at_16, at_17, from_18, from_25 };
inline constexpr std::array all_age_bands{AgeBand::up_to_14, AgeBand::at_15,   AgeBand::at_16,
                                          AgeBand::at_17,    AgeBand::from_18, AgeBand::from_25};
constexpr bool is_child(AgeBand age) {
    return age < AgeBand::from_18;
}

std::string_view word(Use use);  // "shown in consultation"
std::string_view word(ConsentSaid said);
std::string_view word(ShownAs shown);  // "with her face", "hair only"
std::string_view word(HowGiven how);   // "signed form", "message", "spoken"
std::string_view word(ConsentGiver giver);
std::string_view word(AgeBand age);  // "14 or under", "15", "18 or over"

std::string_view in_words(Use use);  // "on a website", after "shown"

// As the parse functions of words.h.
std::optional<Use> parse_use(std::string_view text);
std::optional<ConsentSaid> parse_consent_said(std::string_view text);
std::optional<ShownAs> parse_shown_as(std::string_view text);
std::optional<HowGiven> parse_how_given(std::string_view text);
std::optional<ConsentGiver> parse_consent_giver(std::string_view text);
std::optional<AgeBand> parse_age_band(std::string_view text);

// A scan or a message as a file in the library.
struct ConsentPaper {
    ConsentPaperId id;
    std::string name;    // the original file name
    std::string path;    // in the library, relative to its folder
    std::string sha256;  // lower-case hex
    std::int64_t bytes = 0;
    LocalTime added_at{};

    bool operator==(const ConsentPaper&) const = default;
};

struct ConsentEntry {
    ConsentId id;
    ClientId client;
    Use use = Use::own_record;
    ConsentSaid said = ConsentSaid::declined;
    Date said_on{};                      // the day it was said
    ShownAs shown = ShownAs::hair_only;  // of what was granted
    std::optional<Date> from;            // the first day it holds, of what was granted
    std::optional<Date> until;           // the last
    HowGiven how = HowGiven::signed_form;
    ConsentGiver giver = ConsentGiver::herself;
    std::string guardian;        // her parent's or guardian's name
    std::string witness;         // of what was only spoken
    std::optional<AgeBand> age;  // of the client on that day; nothing: not told
    std::string note;
    LocalTime recorded_at{};
    std::vector<ConsentPaper> papers;

    bool operator==(const ConsentEntry&) const = default;
};

}  // namespace quarterturn
