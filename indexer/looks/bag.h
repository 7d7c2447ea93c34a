#pragma once
// A folder that carries its own checksums: BagIt 1.0 (RFC 8493), with SHA-256 manifests.

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Lines of bag-info.txt (RFC 8493, 2.2.2), in this order; those with an empty value are left out.
using BagInfo = std::vector<std::pair<std::string, std::string>>;

// All functions throw DiskError. What is written is synced and read back equal.
class BagWriter {
  public:
    // Makes the folder, which must not be there.
    BagWriter(FileSystem& disk, Path folder);

    // A payload file; `path` is UTF-8 below data/, with '/' between its parts.
    void add(const std::string& path, std::span<const std::byte> bytes);
    void add(const std::string& path, std::string_view text);
    // The tag files; nothing may be added after it. Payload-Oxum is counted here and goes last.
    void finish(BagInfo info);
    // Takes away what was written, as far as the disk lets us. Never throws.
    void abandon() noexcept;

  private:
    using Manifest = std::map<std::string, std::string>;  // path → checksum

    void make_folder(const Path& folder);
    void write(const Path& file, std::span<const std::byte> bytes);
    void write_tag_file(const std::string& name, std::string_view text);

    FileSystem* disk_;
    Path folder_;
    std::vector<Path> files_;
    std::vector<Path> folders_;
    std::int64_t payload_bytes_ = 0;
    Manifest payload_;
    Manifest tags_;
};

}  // namespace quarterturn
