#include "ui/printing/printing.h"

#include <QPageSize>
#include <QPrinter>

#include "ui/painter/text.h"

namespace quarterturn {
namespace {

// From the first page to the last that she chose in the dialog; 0 stands for all.
bool wanted(const QPrinter& printer, int number) {
    if (printer.fromPage() == 0) return true;
    return number >= printer.fromPage() && number <= printer.toPage();
}

}  // namespace

PagesToPrint pages_to_print(Document document, Decoder& decoder, FileSystem& disk) {
    PagesToPrint pages{std::move(document), {}};
    for (const Page& page : pages.document.pages) {
        pages.pictures.push_back(pictures_of(page, print_dpi, decoder, disk));
        pages.pictures.back().wait();
    }
    return pages;
}

void set_paper(QPrinter& printer, const Document& document) {
    printer.setDocName(QString::fromStdString(document.title));
    printer.setFullPage(true);
    if (document.pages.empty()) return;
    const Size size = document.pages.front().size;
    const bool lies = size.width > size.height;
    printer.setPageSize(
        QPageSize(QSizeF(std::min(size.width, size.height), std::max(size.width, size.height)),
                  QPageSize::Millimeter, {}, QPageSize::FuzzyMatch));
    printer.setPageOrientation(lies ? QPageLayout::Landscape : QPageLayout::Portrait);
}

bool print_pages(QPrinter& printer, const PagesToPrint& pages) {
    QPainter painter;
    for (std::size_t i = 0; i < pages.document.pages.size(); ++i) {
        if (!wanted(printer, static_cast<int>(i) + 1)) continue;
        if (painter.isActive() ? !printer.newPage() : !painter.begin(&printer)) return false;
        painter.save();
        const double scale = static_cast<double>(printer.resolution()) / dots_per_inch;
        painter.scale(scale, scale);
        paint_page(painter, pages.document.pages[i], pages.pictures[i]);
        painter.restore();
    }
    return painter.end();
}

}  // namespace quarterturn
