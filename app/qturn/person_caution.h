#pragma once

#include "app/qturn/reply.h"

namespace quarterturn {

// Of what was written with a photo in it: that it shows a person. `caution` is "" without one.
void tell_caution(Reply& reply, bool shows_photos);

}  // namespace quarterturn
