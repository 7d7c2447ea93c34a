#include "ui/wedding_morning/board_bar.h"

#include <QMenu>

#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/board_clock.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/wedding_choice.h"

namespace quarterturn {
namespace {

constexpr int letters_of_a_wedding = 22;

}  // namespace

BoardBar::BoardBar(const BoardWorld& world, const BoardType& type, bool alone, QWidget* parent)
    : QWidget(parent), type_(type), alone_(alone) {
    auto* row = new FlowLayout(type.px(0.3), this);
    if (!alone) add_weddings(*row);
    QPushButton* timer = add(*row, tr("Timer (T)"));
    connect(timer, &QPushButton::clicked, this, &BoardBar::timer_asked);
    if (!alone) {
        add_ways(*row);
        add_take_along(*row);
    }
    photos_ = add(*row, {});
    connect(photos_, &QPushButton::clicked, this, &BoardBar::photo_light_asked);
    dim_ = add(*row, tr("Dim (D)"));
    connect(dim_, &QPushButton::clicked, this, &BoardBar::dim_asked);
    QPushButton* whole = add(*row, alone ? tr("Leave (Esc)") : tr("Whole screen (F11)"));
    if (alone) whole->setAccessibleName(tr("Leave the whole screen"));
    connect(whole, &QPushButton::clicked, this, [this] { emit alone_asked(!alone_); });
    row->addWidget(new BoardClock(world, type));
}

QPushButton* BoardBar::add(FlowLayout& row, const QString& text) {
    QPushButton* button = make_button(text);
    suit_board(*button, type_);
    row.addWidget(button);
    return button;
}

void BoardBar::add_ways(FlowLayout& row) {
    const auto add_way = [&](const QString& text, Moment moment) {
        connect(add(row, text), &QPushButton::clicked, this,
                [this, moment] { emit led_to(moment); });
    };
    add_way(tr("Running order"), Moment::running_order);
    add_way(tr("Contact sheet"), Moment::contact_sheet);
    add_way(tr("The recipe"), Moment::recipe);
}

void BoardBar::add_take_along(FlowLayout& row) {
    QPushButton* button = add(row, tr("To take along"));
    auto* menu = new QMenu(button);
    for (const TakenAlong what : all_taken_along) {
        menu->addAction(shown(what), this, [this, what] { emit taken_along(what); });
    }
    button->setMenu(menu);
}

void BoardBar::add_weddings(FlowLayout& row) {
    weddings_ = new WeddingChoice;
    weddings_->setFont(type_.font(BoardRole::small));
    weddings_->setMinimumHeight(type_.target());
    weddings_->setMinimumContentsLength(letters_of_a_wedding);
    connect(weddings_, &WeddingChoice::chosen, this, &BoardBar::wedding_chosen);
    row.addWidget(weddings_);
}

void BoardBar::show_weddings(const std::vector<Wedding>& weddings, WeddingId current) {
    if (weddings_) weddings_->show_weddings(weddings, current);
}

void BoardBar::show_light(bool dim, bool photos_dim) {
    dim_->setText(dim ? tr("Bright (D)") : tr("Dim (D)"));
    photos_->setText(photos_dim ? tr("Photos bright (B)") : tr("Photos dim (B)"));
    photos_->setVisible(dim);
}

}  // namespace quarterturn
