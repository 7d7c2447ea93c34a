#pragma once

#include "app/qturn/reply.h"
#include "indexer/record/people.h"

namespace quarterturn {

// Where nobody is in the party: says so with the next step, alike in every command, and that it
// needs attention. Else adds nothing.
void tell_empty_party(Reply& reply, const Wedding& wedding);

}  // namespace quarterturn
