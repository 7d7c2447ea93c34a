#include "ui/shell/moments_row.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QMenu>

#include "ui/shell/moment_button.h"
#include "ui/theme/theme.h"

namespace quarterturn {

MomentsRow::MomentsRow(const std::vector<ScreenEntry>& entries, QWidget* parent)
    : QWidget(parent),
      moments_(new QButtonGroup(this)),
      more_(new MomentButton(tr("More"), MomentButton::Opens::menu)),
      menu_(new QMenu(this)),
      line_(new QHBoxLayout(this)) {
    line_->setContentsMargins(0, 0, 0, 0);
    line_->setSpacing(space(1));
    line_->setSizeConstraint(QLayout::SetNoConstraint);
    for (const ScreenEntry& entry : entries) {
        auto* button = new MomentButton(entry.title);
        moments_->addButton(button, static_cast<int>(entry.moment));
        line_->addWidget(button);
    }
    line_->addWidget(more_);
    line_->addStretch(1);
    more_->hide();
    connect(moments_, &QButtonGroup::idClicked, this,
            [this](int id) { emit chosen(static_cast<Moment>(id)); });
    connect(more_, &MomentButton::clicked, this, [this] {
        share_room();  // a click alone leaves her where she is
        fit_menu();
        menu_->popup(more_->mapToGlobal(QPoint(0, more_->height())));
    });
}

void MomentsRow::show_moment(Moment moment) {
    if (QAbstractButton* button = moments_->button(static_cast<int>(moment))) {
        button->setChecked(true);
    }
    share_room();
}

int MomentsRow::width_of(int count) const {
    int width = 0;
    for (int i = 0; i < count; ++i) {
        width += moments_->buttons().at(i)->sizeHint().width() + line_->spacing();
    }
    return width - line_->spacing();
}

int MomentsRow::with_room() const {
    int count = static_cast<int>(moments_->buttons().size());
    if (width_of(count) <= width()) return count;
    const auto fits = [&] {
        return width_of(count) + line_->spacing() + more_->sizeHint().width() <= width();
    };
    while (count > 0 && !fits()) --count;
    return count;
}

void MomentsRow::share_room() {
    const int count = with_room();
    menu_->clear();
    for (int i = 0; i < moments_->buttons().size(); ++i) {
        QAbstractButton* button = moments_->buttons().at(i);
        button->setVisible(i < count);
        if (i < count) continue;
        QAction* action = menu_->addAction(button->text());
        action->setCheckable(true);
        action->setChecked(button->isChecked());
        connect(action, &QAction::triggered, button, &QAbstractButton::click);
    }
    name_more(count);
    more_->setVisible(!menu_->isEmpty());
}

// In one column, closer where the screen is low: of two, the other would hold next to nothing.
void MomentsRow::fit_menu() {
    menu_->setStyleSheet({});
    const auto entries = menu_->actions();
    if (entries.isEmpty()) return;
    const auto x = [this](QAction* entry) { return menu_->actionGeometry(entry).x(); };
    if (x(entries.first()) == x(entries.last())) return;
    menu_->setStyleSheet(QStringLiteral("QMenu::item { padding-top: 1px; padding-bottom: 1px; }"));
}

void MomentsRow::name_more(int count) {
    const QAbstractButton* current = moments_->checkedButton();
    const bool inside = current && moments_->buttons().indexOf(current) >= count;
    more_->setAccessibleName(inside ? tr("More, now %1").arg(current->text()) : more_->text());
    more_->setChecked(inside);
}

QSize MomentsRow::sizeHint() const {
    return {width_of(static_cast<int>(moments_->buttons().size())), more_->sizeHint().height()};
}

QSize MomentsRow::minimumSizeHint() const {
    return {more_->sizeHint().width(), more_->sizeHint().height()};
}

void MomentsRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    share_room();
}

}  // namespace quarterturn
