#include "ui/wedding_morning/looks_row.h"

#include <QPushButton>

#include "ui/wedding_morning/board_button.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

namespace {

constexpr double widest_words_of_look = 14;  // bodies

}  // namespace

LooksRow::LooksRow(const BoardType& type, QWidget* parent)
    : QWidget(parent), type_(type), row_(new FlowLayout(type.px(0.4), this)) {
    setAccessibleName(tr("Her looks"));
}

void LooksRow::show_looks(const std::vector<BoardLook>& looks, std::size_t chosen) {
    QStringList names;
    for (const BoardLook& look : looks) names << look_in_words(look);
    setVisible(names.size() > 1);
    if (names != looks_) {
        looks_ = names;
        build();
    }
    for (std::size_t look = 0; look < buttons_.size(); ++look) {
        buttons_[look]->setChecked(look == chosen);
        show_kind(*buttons_[look], look == chosen ? QStringLiteral("chosen") : QString());
    }
}

void LooksRow::build() {
    empty_layout(row_);
    buttons_.clear();
    for (const QString& name : looks_) {
        const std::size_t look = buttons_.size();
        QPushButton* button = make_button(
            on_lines(name, type_.font(BoardRole::small), type_.px(widest_words_of_look)));
        button->setAccessibleName(name);
        suit_board(*button, type_);
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, look] { emit chosen(look); });
        row_->addWidget(button);
        buttons_.push_back(button);
    }
}

}  // namespace quarterturn
