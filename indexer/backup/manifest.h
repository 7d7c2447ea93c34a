#pragma once
// The list of all files of a backup with their SHA-256, as the command sha256sum of GNU coreutils
// writes and checks it. Lines that begin with '#' are remarks to that command; here they say which
// backup it is.

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "indexer/record/erasure.h"

namespace quarterturn {

struct Manifest {
    std::string mark;        // tells this backup from every other
    ErasureId last_erasure;  // of the library: nobody erased up to this one is in it
    std::map<std::string, std::string> files;  // path in the backup → SHA-256, lower-case hex

    bool lists(const std::string& path, const std::string& sha256) const {
        const auto listed = files.find(path);
        return listed != files.end() && listed->second == sha256;
    }

    bool operator==(const Manifest&) const = default;
};

// Whether a path is relative and leads nowhere above the backup.
bool lies_in_backup(const std::string& path);

std::string manifest_text(const Manifest& manifest);
// Nothing when it is no such list, or a line of it is damaged.
std::optional<Manifest> parse_manifest(std::string_view text);

}  // namespace quarterturn
