#pragma once
// What an exported picture says of itself: IPTC Photo Metadata Standard 2025.1 and PLUS, as XMP.

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/consent.h"

namespace quarterturn {

// Empty texts are left out.
struct ExportMetadata {
    std::vector<std::string> creators;  // dc:creator
    std::string copyright;              // dc:rights
    std::string credit_line;            // photoshop:Credit
    std::string caption;                // dc:description
    // plus:ModelReleaseStatus: MR-LMR when people are shown, since consent is for a use and can be
    // withdrawn, so that it is never unlimited; MR-NAP when nobody is.
    bool shows_people = true;
    // plus:MinorModelAgeDisclosure, of the youngest; AG-UNK when it was not told to the year.
    std::optional<AgeBand> youngest;
    bool no_data_mining = false;  // plus:DataMining, DMI-PROHIBITED-AIMLTRAINING
};

// The JPEG with this and the colour profile, and without any other metadata. Throws
// std::runtime_error for bytes that are no JPEG.
std::vector<std::byte> with_metadata(std::span<const std::byte> jpeg,
                                     const ExportMetadata& metadata,
                                     std::span<const std::byte> icc);

struct MetadataVersions {
    std::string exiv2;
    std::string libheif;
};
MetadataVersions metadata_versions();

}  // namespace quarterturn
