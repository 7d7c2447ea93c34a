#include "ui/drawing_board/drawing_view.h"

#include <QPainter>

#include "ui/drawing_board/drawing_colours.h"
#include "ui/drawing_board/drawing_words.h"
#include "ui/widgets/hair.h"

namespace quarterturn {

DrawingView::DrawingView(const HeadDrawing& drawing, QWidget* parent)
    : QWidget(parent), drawing_(drawing) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    //: %1 says what is drawn on it
    setAccessibleName(tr("The head from above: %1").arg(drawing_words(drawing_)));
    setToolTip(accessibleName());
}

QSize DrawingView::sizeHint() const {
    return {space(44), space(48)};
}

void DrawingView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(2, 2, -2, -2);
    painter.strokePath(hair_strands(head_ring_box(box)), QPen(hairline_colour(palette()), 1));
    draw_head_drawing(painter, box, drawing_, drawing_colours(palette()));
}

}  // namespace quarterturn
