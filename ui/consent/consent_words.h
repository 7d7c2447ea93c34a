#pragma once
// The words of consent as they stand on screen.

#include <QString>
#include <vector>

#include "indexer/looks/consents.h"

namespace quarterturn {

QString shown(Use use);  // "social media"
QString shown(Standing standing);
QString shown(ConsentSaid said);
QString shown(ShownAs as);
QString shown(HowGiven how);
QString shown(AgeBand age);

QString where_words(Use use);  // "on a website", after "shown"

// "with her face, until 7 November 2028": of what was granted.
QString how_far_words(const ConsentEntry& entry);
// "signed form, by her parent or guardian Ines Berg, 7 November 2026"
QString told_words(const ConsentEntry& entry);
// One line of the history.
QString history_words(const ConsentEntry& entry);

QString uses_in_a_row(const std::vector<Use>& uses);  // "website, print"

// What stands beside every question of consent: no law office.
QString consent_caution_words();

}  // namespace quarterturn
