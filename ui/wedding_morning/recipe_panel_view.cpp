// What of the recipe is in view.

#include <QEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QScroller>
#include <QTimer>

#include "ui/wedding_morning/recipe_panel.h"
#include "ui/wedding_morning/step_row.h"
#include "ui/wedding_morning/tick_box.h"

namespace quarterturn {

void RecipePanel::let_flow(bool flows) {
    if (std::exchange(flows_, flows) != flows) fit_scroll();
}

void RecipePanel::fit_scroll() {
    if (!scroll_) return;
    if (flows_) {
        QScroller::ungrabGesture(scroll_->viewport());
        scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        column_->activate();
        scroll_->setFixedHeight(column_->heightForWidth(std::max(width(), 1)));
    } else {
        QScroller::grabGesture(scroll_->viewport(), QScroller::TouchGesture);
        scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
        scroll_->setMinimumHeight(type_.px(6));
        scroll_->setMaximumHeight(QWIDGETSIZE_MAX);
    }
    setMinimumHeight(std::max(all_->minimumHeightForWidth(width()), 0));
}

QScrollArea* RecipePanel::what_scrolls() const {
    if (!flows_) return scroll_;
    for (QWidget* around = parentWidget(); around; around = around->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(around)) return scroll;
    }
    return scroll_;
}

// What stands in it has become higher or lower.
bool RecipePanel::eventFilter(QObject* watched, QEvent* event) {
    if (flows_ && event->type() == QEvent::LayoutRequest) fit_scroll();
    return QWidget::eventFilter(watched, event);
}

void RecipePanel::go_to_next() {
    StepRow* next = next_step();
    if (!next) return;
    next->box().setFocus(Qt::OtherFocusReason);
    scroll_to(*next);
}

// With the keyboard, where it was on a step.
void RecipePanel::move_to_next(const StepRow* before) {
    StepRow* next = next_step();
    if (!next || next == before) return;
    const bool on_a_step =
        std::ranges::any_of(steps_, [](const StepRow* row) { return row->box().hasFocus(); });
    if (on_a_step) next->box().setFocus(Qt::OtherFocusReason);
    scroll_to(*next);
}

// To the top, once all is laid out.
void RecipePanel::scroll_to(const StepRow& step) {
    QTimer::singleShot(0, &step, [this, &step] {
        QScrollArea* scroll = what_scrolls();
        const QPoint place = step.mapTo(scroll->widget(), QPoint());
        scroll->verticalScrollBar()->setValue(place.y() - type_.px(0.3));
    });
}

}  // namespace quarterturn
