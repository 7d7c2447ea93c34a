#include "indexer/metadata/write.h"

#include "indexer/parts/part.h"

namespace quarterturn {
namespace {

constexpr const char* part = "metadata-writer";

using Write = void(std::span<const std::byte>, const ExportMetadata&, std::span<const std::byte>,
                   std::vector<std::byte>&);

}  // namespace

std::vector<std::byte> with_metadata(std::span<const std::byte> jpeg,
                                     const ExportMetadata& metadata,
                                     std::span<const std::byte> icc) {
    std::vector<std::byte> whole;
    part_function<Write>(part, "quarterturn_write_metadata")(jpeg, metadata, icc, whole);
    return whole;
}

MetadataVersions metadata_versions() {
    MetadataVersions versions;
    part_function<void(MetadataVersions&)>(part, "quarterturn_metadata_versions")(versions);
    return versions;
}

}  // namespace quarterturn
