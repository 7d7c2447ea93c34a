#pragma once
// Draws one page with any painter: paper, pixels, screen or printer.

#include <QImage>
#include <QPainter>
#include <vector>

#include "indexer/sheet/page.h"
#include "ui/painter/picture.h"

namespace quarterturn {

// One picture for each photo of the page, in the order of its items, decoded two at a time for
// `dpi` dots per inch.
std::vector<BoxPicture> pictures_of(const Page& page, double dpi, Decoder& decoder,
                                    FileSystem& disk);

// Draws on a painter whose unit is 1/720 inch (see text.h), from the page's top left at (0, 0).
// `pictures` are those of this page.
void paint_page(QPainter& painter, const Page& page, const std::vector<BoxPicture>& pictures);

// The page on white paper, as sRGB.
QImage page_image(const Page& page, const std::vector<BoxPicture>& pictures, double dpi);

// How many pixels the page has so, and those of its rows that fit the image, from `first` on.
QSize pixels_of_paper(const Size& paper, double dpi);
void paint_page_rows(QImage& image, const Page& page, const std::vector<BoxPicture>& pictures,
                     double dpi, int first);

// A sentence for each photo that is not shown.
std::vector<std::string> problems_of(const Page& page, const std::vector<BoxPicture>& pictures);

}  // namespace quarterturn
