#pragma once
// What all pictures on their way out have in common: where they may not go, what they say of
// themselves, and the ledger. All functions throw StoreError.

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/looks/photo_gate.h"
#include "indexer/metadata/write.h"

namespace quarterturn {

// Copies and originals never mix.
void refuse_inside_library(Library& library, const Path& folder);

// What is for everybody to read names nobody who is shown: not by one word of three letters.
// `what`: "caption", "title of the page".
void refuse_names(Library& library, std::span<const Photo> photos, std::string_view what,
                  const std::string& words);

// Who took it, whose it is, and who is shown. Throws for a photo of her own while nothing tells who
// she is (the setting "business name").
ExportMetadata told_of(Library& library, const Photo& photo, const PhotoToShow& shown, Date on);

// Of two photos in one picture: everybody who took one, and the youngest who is shown.
ExportMetadata told_of_both(const ExportMetadata& one, const ExportMetadata& other);

// "low bun, plait, back": nothing of her.
std::string usual_caption(Library& library, const Tags& tags);

// As it goes into the ledger; the file and its checksum are not known yet.
Exported entry_of(const Photo& photo, Use use, const Verdict& verdict, LocalTime now);

enum class IfThere { refuse, replace };

// An entry for each photo in the picture first, since a file out there that the ledger does not
// know could never be taken down; then the file. `file` names it by the first entry's number.
// Answers the entries as they stand. Throws DiskError when it cannot be written; then they say that
// it never was.
std::vector<Exported> write_into_ledger(Library& library, std::vector<Exported> entries,
                                        const std::function<Path(ExportId)>& file,
                                        std::span<const std::byte> bytes,
                                        IfThere there = IfThere::refuse);

}  // namespace quarterturn
