#include "ui/painter/exact_paper.h"

#include <QPageSize>

namespace quarterturn {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr QByteArrayView box_start = "/MediaBox [0 0 ";

QByteArray box_text(double width, double height) {
    return QByteArray::number(width, 'f', 6) + ' ' + QByteArray::number(height, 'f', 6) + ']';
}

QSize whole_points(const Size& paper) {
    return page_layout(paper).fullRectPoints().size();
}

}  // namespace

QPageLayout page_layout(const Size& paper) {
    const QPageSize size(
        QSizeF(std::min(paper.width, paper.height), std::max(paper.width, paper.height)),
        QPageSize::Millimeter, {}, QPageSize::ExactMatch);
    const auto way = paper.width > paper.height ? QPageLayout::Landscape : QPageLayout::Portrait;
    return {size, way, QMarginsF(0, 0, 0, 0)};
}

double points_below_top(const Size& paper) {
    return paper.height * points_per_mm - whole_points(paper).height();
}

void set_exact_papers(QByteArray& pdf, const std::vector<Page>& pages) {
    qsizetype at = 0;
    for (const Page& page : pages) {
        at = pdf.indexOf(box_start, at);
        if (at < 0) return;
        at += box_start.size();
        const QSize rounded = whole_points(page.size);
        const QByteArray inexact = box_text(rounded.width(), rounded.height());
        const QByteArray exact =
            box_text(page.size.width * points_per_mm, page.size.height * points_per_mm);
        const bool fits = exact.size() == inexact.size() && pdf.mid(at, inexact.size()) == inexact;
        if (fits) pdf.replace(at, inexact.size(), exact);
    }
}

}  // namespace quarterturn
