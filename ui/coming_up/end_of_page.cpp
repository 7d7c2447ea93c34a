#include "ui/coming_up/end_of_page.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>

#include "ui/widgets/page.h"

namespace quarterturn {

EndOfPage::EndOfPage(QScrollArea& page) : QObject(&page), page_(page) {
    connect(page.verticalScrollBar(), &QScrollBar::actionTriggered, this, [this](int action) {
        was_asked_ = grows_ && action == QAbstractSlider::SliderToMaximum;
    });
    connect(page.verticalScrollBar(), &QScrollBar::rangeChanged, this, &EndOfPage::follow);
}

void EndOfPage::begin_to_grow() {
    grows_ = true;
}

void EndOfPage::end_growing() {
    QTimer::singleShot(0, this, [this] {
        if (was_asked_) lay_out_now(page_);
        follow();
        grows_ = false;
        was_asked_ = false;
    });
}

void EndOfPage::follow() {
    QScrollBar* bar = page_.verticalScrollBar();
    if (was_asked_) bar->setValue(bar->maximum());
}

}  // namespace quarterturn
