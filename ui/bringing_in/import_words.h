#pragma once
// What bringing photos in would do, and what it did, in words.

#include "indexer/intake/preview.h"
#include "ui/bringing_in/fact_list.h"

namespace quarterturn {

// What came of bringing photos in, with where they fell.
struct ImportOutcome {
    ImportReport report;
    std::vector<PhotosOfSitting> sittings;
};

QString preview_heading(const ImportPreview& preview);
std::vector<ImportFact> preview_facts(Library& library, const ImportPreview& preview);

QString report_heading(const ImportReport& report);
std::vector<ImportFact> report_facts(Library& library, const ImportOutcome& outcome);

// "Trial of Mira Okonjo-Lindqvist, 7 Nov 2026, 10:00 to 12:00"
QString sitting_shown(Library& library, const Sitting& sitting);

}  // namespace quarterturn
