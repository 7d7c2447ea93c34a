#include "ui/recipe/head_sketch.h"

#include <QPainter>

#include "ui/drawing_board/drawing_colours.h"
#include "ui/drawing_board/drawing_words.h"

namespace quarterturn {
namespace {

constexpr int sketch_steps = 50;

}  // namespace

HeadSketch::HeadSketch(const HeadDrawing& drawing, QWidget* parent)
    : QWidget(parent), drawing_(drawing) {
    setFixedSize(space(sketch_steps), space(sketch_steps));
    setAccessibleName(drawing_words(drawing_));
    setToolTip(accessibleName());
}

void HeadSketch::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw_head_drawing(painter, rect(), drawing_, drawing_colours(palette()));
}

}  // namespace quarterturn
