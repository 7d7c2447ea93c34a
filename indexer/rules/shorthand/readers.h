#pragma once
// Each reads one kind of field from a phrase: takes the words it understands, as often as they
// come, and leaves the rest.

#include "indexer/record/recipe/build.h"
#include "indexer/rules/shorthand/tokens.h"

namespace quarterturn::shorthand {

void read_products(Phrase& phrase, Step& step);
void read_backcombing(Phrase& phrase, Step& step);
void read_root_lift(Phrase& phrase, Step& step);
void read_pins(Phrase& phrase, Step& step);
void read_tool(Phrase& phrase, Step& step);   // and its barrel
void read_sizes(Phrase& phrase, Step& step);  // sections, a barrel without its tool, degrees
void read_times(Phrase& phrase, Step& step);
void read_wind(Phrase& phrase, Step& step);
void read_setting(Phrase& phrase, Step& step);

// "with", "at" and the like, where they lead to something that was understood.
void use_joining_words(Phrase& phrase);

}  // namespace quarterturn::shorthand
