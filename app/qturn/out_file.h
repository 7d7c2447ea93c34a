#pragma once
// Where a command is told to write. Each throws WrongUse when the file cannot be written there.

#include "indexer/disk/file_system.h"

namespace quarterturn {

bool is_pdf(const Path& file);  // by its ending, whatever its case
bool is_html(const Path& file);

void refuse_missing_folder(const Path& file);
void refuse_to_replace(const Path& file);  // when it is there already

// Its ending is .pdf, its folder is there, and it is new unless it may be written over.
void refuse_bad_pdf(const Path& file, bool replace);

}  // namespace quarterturn
