#pragma once
// Where a command is told to write. Each throws WrongUse when the file cannot be written there.

#include "app/qturn/session.h"

namespace quarterturn {

bool is_pdf(const Path& file);  // by its ending, whatever its case
bool is_html(const Path& file);

// A file or folder that lies in the library's own folder, among what is hers.
void refuse_in_library(const Session& session, const Path& file);
void refuse_to_replace(const Path& file);  // when it is there already

// Its folder is there and not the library's, and it is new unless it may be written over.
void refuse_bad_place(const Session& session, const Path& file, bool replace);
// The same, and its ending is .pdf.
void refuse_bad_pdf(const Session& session, const Path& file, bool replace);

}  // namespace quarterturn
