#pragma once
// Names for folders and files that every file system takes, and that she can read.

#include <string>
#include <string_view>

#include "indexer/record/people.h"
#include "indexer/record/photo.h"

namespace quarterturn {

// A text as one part of a folder's name: without / \ : * ? " < > | and control characters, white
// space folded, no point or space at the end, at most `most_bytes` bytes of whole UTF-8 characters.
std::string as_folder_part(std::string_view text, std::size_t most_bytes = 80);

// The file's own name as UTF-8; bytes that are no UTF-8 become '_'.
std::string as_text(std::string_view file_name);

// "photos/2026/2026-11-07 Anna Berg trial"
std::string sitting_folder(const Sitting& sitting, const Client& client);
// "photos/2026/2026-11-07 not yet placed", or "photos/undated" when the moment is unknown.
std::string waiting_folder(const std::optional<LocalTime>& moment);

// "IMG_0001.jpg", 2 → "IMG_0001 (2).jpg"; 1 → the name itself. The stem is cut where the name would
// be longer than the 255 bytes that file systems allow.
std::string numbered_name(std::string_view name, int number);
// "IMG_0001 (changed).jpg", and from the second on numbered as well.
std::string changed_name(std::string_view name, int number);

}  // namespace quarterturn
