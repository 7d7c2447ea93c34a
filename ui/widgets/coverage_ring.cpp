#include "ui/widgets/coverage_ring.h"

#include <QPainter>

#include "ui/painter/ring.h"
#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {

CoverageRing::CoverageRing(int side, QWidget* parent) : QWidget(parent) {
    setFixedSize(side, side);
    show_quarters(quarters_);
}

void CoverageRing::show_quarters(const std::array<Coverage, 4>& quarters) {
    quarters_ = quarters;
    setAccessibleName(coverage_sentence(quarters));
    setToolTip(accessibleName());
    update();
}

void CoverageRing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    draw_ring(painter, rect(), quarters_, {outline_colour(palette()), accent_colour(palette())});
}

}  // namespace quarterturn
