#pragma once
// What of all that a client said counts on a day.

#include <span>

#include "indexer/record/consent.h"

namespace quarterturn {

enum class Standing { not_asked, granted, not_yet, ended, declined, withdrawn };
std::string_view word(Standing standing);  // "not asked", "granted", "not yet", …

struct StandingConsent {
    Standing standing = Standing::not_asked;
    const ConsentEntry* entry = nullptr;  // the one that counts; nothing when she was not asked
};

// What she said last for the use, up to and including the day: the latest day on which she said
// something, and of several on one day what was recorded last. What she said replaces all that she
// had said before, also where it holds only from a later day. A no stands against every yes that
// was recorded before it, whatever days they name, since a clock or a day can be wrong; a yes
// counts after a no when it was both said and recorded later. The days from and until which it
// holds are themselves included.
StandingConsent consent_on(std::span<const ConsentEntry> entries, Use use, Date on);

// Her age as it was told last, up to and including the day; nothing when it was not told.
std::optional<AgeBand> age_on(std::span<const ConsentEntry> entries, Date on);

// Whether she counts as a child: by the age told last, or because she still was one later.
bool is_child_on(std::span<const ConsentEntry> entries, Date on);

// "granted, with her face, from 2026-11-07 until 2027-11-07", "declined on 2026-11-07", "not
// asked".
std::string standing_words(const StandingConsent& consent);

// "2026-11-07, website: granted, with her face, until 2028-11-07; signed form, by her parent or
// guardian Ines Berg, aged 15".
std::string said_words(const ConsentEntry& entry);

}  // namespace quarterturn
