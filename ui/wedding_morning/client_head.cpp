#include "ui/wedding_morning/client_head.h"

#include "indexer/looks/board_words.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int widest_of_one_column = 44;  // bodies

}  // namespace

ClientHead::ClientHead(const BoardType& type, QWidget* parent)
    : QWidget(parent),
      type_(type),
      row_(new QHBoxLayout(this)),
      name_(make_text({})),
      role_(make_text({})),
      chair_(make_quiet({})),
      previous_(make_turn(-1)),
      next_(make_turn(1)) {
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(type.px(0.8));
    name_->setFont(type.font(BoardRole::name));
    role_->setFont(type.font(BoardRole::heading));
    chair_->setFont(type.font(BoardRole::small));
    row_->addLayout(build_words(), 1);
    QHBoxLayout* turning = make_row(2);
    turning->addWidget(previous_);
    turning->addWidget(next_);
    row_->addLayout(turning);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

// Her name, and beside or below it in two lines what she is and when she sits.
QBoxLayout* ClientHead::build_words() {
    QHBoxLayout* words = make_row(0);
    words->setSpacing(type_.px(1));
    QVBoxLayout* about = make_column(0);
    about->addStretch(1);
    about->addWidget(role_);
    about->addWidget(chair_);
    about->addStretch(1);
    words->addWidget(name_, 1);
    words->addLayout(about, 1);
    return words;
}

QPushButton* ClientHead::make_turn(int by) {
    QPushButton* button = make_button({});
    suit_board(*button, type_);
    connect(button, &QPushButton::clicked, this, [this, by] { emit turned(by); });
    return button;
}

void ClientHead::show_client(const WeddingBoard& board, std::size_t number) {
    const BoardClient& client = board.clients[number];
    name_->setText(name_of(client));
    role_->setText(role_and_time(client));
    chair_->setText(from_utf8(chair_text(board, client)));
    chair_->setVisible(!chair_->text().isEmpty());
    //: the client before this one in the order of work
    show_turn(*previous_, board, number - 1, tr("Previous: %1"));
    show_turn(*next_, board, number + 1, tr("Next: %1"));
    fit();
}

// Below the first there is none.
void ClientHead::show_turn(QPushButton& button, const WeddingBoard& board, std::size_t client,
                           const QString& words) {
    const bool there = client < board.clients.size();
    const QString name = there ? name_of(board.clients[client]) : QString();
    button.setText(words.arg(name.section(QLatin1Char(' '), 0, 0)));
    button.setAccessibleName(words.arg(name));
    button.setVisible(there);
}

// A layout that is short of height would cut words that run over several lines.
void ClientHead::fit() {
    const bool wide = width() > type_.px(widest_of_one_column);
    row_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    row_->activate();
    for (QLabel* label : {name_, role_, chair_}) {
        const int wanted =
            label->isHidden() ? 0 : label->heightForWidth(std::max(label->width(), 1));
        label->setMinimumHeight(std::max(wanted, 0));
    }
}

void ClientHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

}  // namespace quarterturn
