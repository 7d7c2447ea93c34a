#pragma once
// Draws one page with any painter: paper, pixels, screen or printer.

#include <QImage>
#include <QPainter>
#include <vector>

#include "indexer/sheet/page.h"
#include "ui/painter/page_pictures.h"
#include "ui/painter/picture.h"
#include "ui/painter/text.h"

namespace quarterturn {

// Draws on a painter whose unit is 1/720 inch (see text.h), from the page's top left at (0, 0).
// `pictures` are those of this page.
void paint_page(QPainter& painter, const Page& page, const PagePictures& pictures);

// The page on white paper, as sRGB.
QImage page_image(const Page& page, const PagePictures& pictures, double dpi);

// How many pixels the page has so, and those of its rows that fit the image, from `first` on. Words
// are laid out once for all rows of a page: `texts` are those of this one.
QSize pixels_of_paper(const Size& paper, double dpi);
void paint_page_rows(QImage& image, const Page& page, const PagePictures& pictures,
                     LaidTexts& texts, double dpi, int first);

// Whether nothing is drawn on so many of these rows.
bool is_white(const Page& page, double dpi, int first, int count);

}  // namespace quarterturn
