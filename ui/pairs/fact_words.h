#pragma once
// Facts, kinds of pairs and their values as they stand on screen.

#include <QString>

#include "indexer/record/consent.h"
#include "indexer/record/pair.h"

namespace quarterturn {

QString shown(Fact fact);      // "Look family"
QString shown(PairKind kind);  // "trial and wedding day"
QString use_words(Use use);    // "shown in consultation"

// A value as the records spell it: words of ours through translation, her own as they are.
QString shown_value(Fact fact, const std::string& value);

// What stands at the left and at the right: "Before", "After"; "First trial", "Second trial".
QString first_words(const PairPlace& place);
QString second_words(const PairPlace& place);

}  // namespace quarterturn
