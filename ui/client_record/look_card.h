#pragma once

#include <QFrame>

#include "indexer/sheet/client_content.h"

namespace quarterturn {

// A card with a heading and a line for each of the section's.
QFrame* make_facts_card(const TextSection& section);

// A look: where it was worked on, how it stands, its recipe and what changed in it.
// The button stands at its end.
QFrame* make_look_card(const LookSection& section, QWidget& button);

}  // namespace quarterturn
