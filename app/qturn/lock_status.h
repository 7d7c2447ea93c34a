#pragma once

#include "app/qturn/reply.h"
#include "app/qturn/session.h"

namespace quarterturn {

// Whether the library is locked, and what of it is not as the rest is. Throws as Session does.
Reply lock_status(Session& session);

}  // namespace quarterturn
