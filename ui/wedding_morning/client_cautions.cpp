#include "ui/wedding_morning/client_cautions.h"

#include <QScrollArea>
#include <QScroller>

#include "ui/wedding_morning/marked_line.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

ClientCautions::ClientCautions(const BoardType& type, QWidget* parent)
    : QFrame(parent), type_(type) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(type.px(0.5), type.px(0.35), type.px(0.5), type.px(0.35));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void ClientCautions::show_cautions(const QStringList& cautions) {
    if (scroll_ && cautions_ == cautions) return;
    cautions_ = cautions;
    empty_layout(layout());
    scroll_ =
        make_scrolling_side(new MarkedLine(LineMark::caution, cautions, type_, BoardRole::heading));
    scroll_->widget()->setProperty("kind", QVariant());  // the box shows through
    scroll_->widget()->setAutoFillBackground(false);
    scroll_->viewport()->setAutoFillBackground(false);
    scroll_->setAccessibleName(tr("Cautions"));
    QScroller::grabGesture(scroll_->viewport(), QScroller::TouchGesture);
    layout()->addWidget(scroll_);
    fit();
}

void ClientCautions::limit(int height) {
    at_most_ = height;
    fit();
}

int ClientCautions::wanted_height(int width) const {
    if (!scroll_) return 0;
    const QMargins around = layout()->contentsMargins();
    const int inside = width - around.left() - around.right() - 2 * frameWidth();
    return scroll_->widget()->heightForWidth(std::max(inside - type_.px(0.5), 1));
}

void ClientCautions::fit() {
    if (!scroll_) return;
    scroll_->setFixedHeight(std::min(wanted_height(width()), std::max(at_most_, type_.px(1.6))));
}

void ClientCautions::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

}  // namespace quarterturn
