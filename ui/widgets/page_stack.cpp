#include "ui/widgets/page_stack.h"

namespace quarterturn {

PageStack::PageStack(QWidget* parent) : QStackedWidget(parent) {
    connect(this, &QStackedWidget::currentChanged, this, &PageStack::updateGeometry);
}

QSize PageStack::minimumSizeHint() const {
    const QWidget* page = currentWidget();
    return page ? page->minimumSizeHint().expandedTo(page->minimumSize()) : QSize();
}

bool PageStack::hasHeightForWidth() const {
    return currentWidget() && currentWidget()->hasHeightForWidth();
}

int PageStack::heightForWidth(int width) const {
    return currentWidget() ? currentWidget()->heightForWidth(width) : -1;
}

}  // namespace quarterturn
