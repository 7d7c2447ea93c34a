#include "ui/widgets/coverage_ring.h"

#include <QPainter>

#include "ui/painter/ring.h"
#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {

CoverageRing::CoverageRing(int side, QWidget* parent) : QWidget(parent) {
    setFixedSize(side, side);
    show_ring(ring_);
}

void CoverageRing::show_ring(const Ring& ring) {
    ring_ = ring;
    setAccessibleName(coverage_sentence(ring));
    setToolTip(accessibleName());
    update();
}

void CoverageRing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    draw_ring(painter, rect(), ring_, {outline_colour(palette()), accent_colour(palette())});
}

}  // namespace quarterturn
