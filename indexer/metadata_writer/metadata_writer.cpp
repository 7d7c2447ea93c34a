#include <libheif/heif.h>

#include "indexer/metadata/blocks.h"
#include "indexer/metadata/write.h"

namespace quarterturn {
namespace {

const std::string plus_vocabulary = "http://ns.useplus.org/ldf/vocab/";

std::string age_disclosure(std::optional<AgeBand> youngest) {
    if (!youngest) return "AG-UNK";
    switch (*youngest) {
        case AgeBand::up_to_14:
            return "AG-U14";
        case AgeBand::at_15:
            return "AG-A15";
        case AgeBand::at_16:
            return "AG-A16";
        case AgeBand::at_17:
            return "AG-A17";
        case AgeBand::from_25:
            return "AG-A25";
        case AgeBand::from_18:
            break;  // the standard names each year from 18 to 24
    }
    return "AG-UNK";
}

// A text in no named language.
void set_text(Exiv2::XmpData& xmp, const char* key, const std::string& text) {
    if (text.empty()) return;
    Exiv2::LangAltValue value;
    value.read("lang=x-default " + text);
    xmp.add(Exiv2::XmpKey(key), &value);
}

Exiv2::XmpData xmp_of(const ExportMetadata& metadata) {
    Exiv2::XmpData xmp;
    if (!metadata.creators.empty()) {
        Exiv2::XmpArrayValue creators(Exiv2::xmpSeq);
        for (const std::string& creator : metadata.creators) creators.read(creator);
        xmp.add(Exiv2::XmpKey("Xmp.dc.creator"), &creators);
    }
    set_text(xmp, "Xmp.dc.rights", metadata.copyright);
    set_text(xmp, "Xmp.dc.description", metadata.caption);
    if (!metadata.credit_line.empty()) xmp["Xmp.photoshop.Credit"] = metadata.credit_line;
    xmp["Xmp.plus.ModelReleaseStatus"] =
        plus_vocabulary + (metadata.shows_people ? "MR-LMR" : "MR-NAP");
    if (metadata.shows_people) {
        xmp["Xmp.plus.MinorModelAgeDisclosure"] =
            plus_vocabulary + age_disclosure(metadata.youngest);
    }
    if (metadata.no_data_mining) {
        xmp["Xmp.plus.DataMining"] = plus_vocabulary + "DMI-PROHIBITED-AIMLTRAINING";
    }
    return xmp;
}

std::vector<std::byte> written(std::span<const std::byte> jpeg, const ExportMetadata& metadata,
                               std::span<const std::byte> icc) {
    const auto image = open_image(jpeg);
    image->clearMetadata();
    Exiv2::DataBuf profile(reinterpret_cast<const Exiv2::byte*>(icc.data()),
                           static_cast<long>(icc.size()));
    if (!icc.empty()) image->setIccProfile(profile);
    image->setXmpData(xmp_of(metadata));
    image->writeMetadata();
    Exiv2::BasicIo& io = image->io();
    io.open();
    const auto* first = reinterpret_cast<const std::byte*>(io.mmap());
    std::vector<std::byte> bytes(first, first + io.size());
    io.munmap();
    io.close();
    return bytes;
}

}  // namespace
}  // namespace quarterturn

extern "C" void quarterturn_write_metadata(std::span<const std::byte> jpeg,
                                           const quarterturn::ExportMetadata& metadata,
                                           std::span<const std::byte> icc,
                                           std::vector<std::byte>& whole) {
    whole = quarterturn::written(jpeg, metadata, icc);
}

extern "C" void quarterturn_metadata_versions(quarterturn::MetadataVersions& versions) {
    versions = {Exiv2::versionString(), heif_get_version()};
}
