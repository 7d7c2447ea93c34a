#include "ui/recipe/drawing_field.h"

#include "ui/drawing_board/drawing_board.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

DrawingField::DrawingField(QWidget* parent) : Field(parent), board_(new DrawingBoard) {
    QHBoxLayout* row = make_row();
    row->addWidget(board_);
    setLayout(row);
    connect(board_, &DrawingBoard::changed, this, &Field::changed);
}

void DrawingField::name_it(const QString& name) {
    board_->setAccessibleName(name);
}

void DrawingField::show_value(const HeadDrawing& drawing) {
    board_->show_drawing(drawing);
}

HeadDrawing DrawingField::value() const {
    return board_->drawing();
}

}  // namespace quarterturn
