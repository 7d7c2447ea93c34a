#pragma once

#include "app/qturn/reply.h"
#include "indexer/intake/preview.h"

namespace quarterturn {

// What bringing photos in would do, for `qturn import --preview`.
Reply preview_reply(Library& library, const ImportPreview& preview);

}  // namespace quarterturn
