#pragma once
// What a sheet says, in words.

#include <string>

#include "indexer/looks/look_state.h"
#include "indexer/record/date_words.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

std::string capitalised(std::string_view word);

// Whether the time is unknown, flaws, the reason for which the photo is accepted, and whether it
// was turned the right way round: "too dark · accepted: the evening light · mirrored, turned".
// Empty when there is nothing to say.
std::string photo_note(const Photo& photo);

// "Front, after, taken 12:40", for those who cannot see the picture.
std::string described(const Photo& photo);

// "Signed off 7 November 2026", "Signed off 7 November 2026, changed since", "Not signed off".
std::string sign_off_words(const LookState& state);

// "Evening look, worn in the evening".
std::string look_words(const Look& look);

// A line for its name, and one for the day and the place: "12 June 2027, the Old Mill".
std::vector<std::string> wedding_words(const std::optional<Wedding>& wedding);

// "Trial, 7 November 2026, 10:00 to 12:00".
std::string sitting_words(const Sitting& sitting);

// What the empty frame of a shot says.
std::string missing_words(const Shot& shot, Need need);
std::string waived_words(const Shot& shot, std::string_view reason);

// The recipe in short, cautions first.
SheetRecipe recipe_words(const RecipeRevision& revision);

}  // namespace quarterturn
