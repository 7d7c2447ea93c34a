#include "ui/widgets/page.h"

#include <QEvent>
#include <QGuiApplication>
#include <QScrollBar>
#include <map>
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

QScrollArea* page_around(const QWidget& widget) {
    for (QWidget* above = widget.parentWidget(); above; above = above->parentWidget()) {
        if (auto* page = qobject_cast<QScrollArea*>(above)) return page;
    }
    return nullptr;
}

// What stands in it first; until the page has its own length, places in it are not right.
void lay_out_now(QScrollArea& page) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    QEvent grow_or_shrink(QEvent::LayoutRequest);
    QCoreApplication::sendEvent(page.widget(), &grow_or_shrink);
}

bool scroll_by_key(const QWidget& part, int key) {
    static const std::map<int, QAbstractSlider::SliderAction> actions{
        {Qt::Key_PageUp, QAbstractSlider::SliderPageStepSub},
        {Qt::Key_PageDown, QAbstractSlider::SliderPageStepAdd},
        {Qt::Key_Home, QAbstractSlider::SliderToMinimum},
        {Qt::Key_End, QAbstractSlider::SliderToMaximum}};
    const auto action = actions.find(key);
    if (action == actions.end()) return false;
    const auto area = [](const QScrollArea* page) { return page->width() * page->height(); };
    QScrollArea* largest = nullptr;
    for (QScrollArea* page : part.findChildren<QScrollArea*>()) {
        if (!page->isVisible() || page->verticalScrollBar()->maximum() == 0) continue;
        if (!largest || area(page) > area(largest)) largest = page;
    }
    if (largest) largest->verticalScrollBar()->triggerAction(action->second);
    return largest != nullptr;
}

void set_reading_margins(QLayout& layout, int leading, int top, int trailing, int bottom) {
    if (QGuiApplication::layoutDirection() == Qt::RightToLeft) std::swap(leading, trailing);
    layout.setContentsMargins(leading, top, trailing, bottom);
}

}  // namespace quarterturn
