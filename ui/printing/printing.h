#pragma once

#include <vector>

#include "ui/painter/paint_page.h"

class QPrinter;

namespace quarterturn {

// Decoded for paper away from the window's thread; printers are drawn on from it.
struct PagesToPrint {
    Document document;
    std::vector<PagePictures> pictures;  // of each page
};

PagesToPrint pages_to_print(Document document, Decoder& decoder, FileSystem& disk);

// The document's own paper, without margins of the printer's: the page has its own.
void set_paper(QPrinter& printer, const Document& document);

// The pages the printer was asked for. Answers whether the printer took them.
bool print_pages(QPrinter& printer, const PagesToPrint& pages);

}  // namespace quarterturn
