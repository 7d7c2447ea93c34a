#pragma once
// Qt rounds a PDF's pages to whole points; ISO 216 papers are none. The rounded numbers are written
// as "/MediaBox [0 0 595.000000 842.000000]", so exact ones of the same length can take their place
// without anything in the file moving.

#include <QByteArray>
#include <QPageLayout>

#include "indexer/sheet/page.h"

namespace quarterturn {

QPageLayout page_layout(const Size& paper);  // no margins

// How far down Qt's own top edge lies from the paper's, in points.
double points_below_top(const Size& paper);

// Puts the exact size of each page in its place, in the order of the pages.
void set_exact_papers(QByteArray& pdf, const std::vector<Page>& pages);

}  // namespace quarterturn
