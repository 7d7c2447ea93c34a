#include "ui/wedding_morning/board_bar.h"

#include <QComboBox>
#include <QMenu>

#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/board_clock.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int letters_of_a_wedding = 22;

}  // namespace

BoardBar::BoardBar(const BoardWorld& world, const BoardType& type, bool alone, QWidget* parent)
    : QWidget(parent), type_(type), alone_(alone), weddings_(new QComboBox) {
    auto* row = new FlowLayout(type.px(0.3), this);
    weddings_->setFont(type.font(BoardRole::small));
    weddings_->setMinimumHeight(type.target());
    weddings_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    weddings_->setMinimumContentsLength(letters_of_a_wedding);
    weddings_->setAccessibleName(tr("Wedding"));
    connect(weddings_, &QComboBox::activated, this, [this](int index) {
        emit wedding_chosen(WeddingId{weddings_->itemData(index).toLongLong()});
    });
    row->addWidget(weddings_);
    QPushButton* timer = add(*row, tr("Timer (T)"));
    connect(timer, &QPushButton::clicked, this, &BoardBar::timer_asked);
    if (!alone) {
        add_ways(*row);
        add_take_along(*row);
    }
    dim_ = add(*row, tr("Dim (D)"));
    connect(dim_, &QPushButton::clicked, this, &BoardBar::dim_asked);
    QPushButton* whole =
        add(*row, alone ? tr("Leave the whole screen (Esc)") : tr("Whole screen (F11)"));
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

void BoardBar::show_weddings(const std::vector<Wedding>& weddings, WeddingId current) {
    weddings_->clear();
    for (const Wedding& wedding : weddings) {
        //: a day and whose wedding is on it
        weddings_->addItem(
            tr("%1: %2").arg(short_shown(wedding.date), isolated(from_utf8(wedding.name))),
            QVariant::fromValue(qlonglong{wedding.id.value}));
    }
    weddings_->setCurrentIndex(weddings_->findData(QVariant::fromValue(qlonglong{current.value})));
}

void BoardBar::show_dim(bool dim) {
    dim_->setText(dim ? tr("Bright (D)") : tr("Dim (D)"));
}

}  // namespace quarterturn
