#include "ui/widgets/page.h"

#include <QGuiApplication>
#include <utility>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int widest_steps = 270;  // about 1080 px at normal text size

}  // namespace

QScrollArea* make_scrolling_side(QWidget* content) {
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    content->setProperty("kind", QStringLiteral("page"));
    scroll->setWidget(content);
    return scroll;
}

ScrollingPage make_scrolling_page() {
    auto* ground = new QWidget;
    auto* middle = new QHBoxLayout(ground);
    middle->setContentsMargins(space(8), space(6), space(8), space(8));
    auto* content = new QWidget;
    content->setMaximumWidth(space(widest_steps));
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(4));
    middle->addStretch(1);
    middle->addWidget(content, 1000);
    middle->addStretch(1);
    return {make_scrolling_side(ground), column};
}

void set_reading_margins(QLayout& layout, int leading, int top, int trailing, int bottom) {
    if (QGuiApplication::layoutDirection() == Qt::RightToLeft) std::swap(leading, trailing);
    layout.setContentsMargins(leading, top, trailing, bottom);
}

}  // namespace quarterturn
