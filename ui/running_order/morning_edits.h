#pragma once

#include "indexer/record/morning.h"
#include "ui/shell/edits.h"

class QString;

namespace quarterturn {

// `said` as in "moved Ada Lindqvist in the running order".
Edit change_morning(WeddingId wedding, const Morning& after, const QString& said);

}  // namespace quarterturn
