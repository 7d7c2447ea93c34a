#include "ui/wedding_morning/client_head.h"

#include <QScrollArea>
#include <QScroller>

#include "indexer/looks/board_words.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/marked_line.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

ClientHead::ClientHead(const BoardType& type, QWidget* parent)
    : QWidget(parent), type_(type), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(type.px(0.25));
}

void ClientHead::show_client(const WeddingBoard& board, std::size_t number, std::size_t look) {
    const BoardClient& client = board.clients[number];
    empty_layout(column_);
    add_name(board, client);
    add_cautions(client);
    if (client.looks.size() > 1) add_looks(client, look);
    fit_cautions();
}

void ClientHead::add_name(const WeddingBoard& board, const BoardClient& client) {
    QLabel* name = make_text(name_of(client));
    name->setFont(type_.font(BoardRole::name));
    column_->addWidget(name);
    QLabel* role = make_text(role_and_time(client));
    role->setFont(type_.font(BoardRole::heading));
    column_->addWidget(role);
    const QString seats = from_utf8(chair_text(board, client));
    if (seats.isEmpty()) return;
    QLabel* chair = make_quiet(seats);
    chair->setFont(type_.font(BoardRole::small));
    column_->addWidget(chair);
}

void ClientHead::add_cautions(const BoardClient& client) {
    auto* lines = new QWidget;
    auto* column = new QVBoxLayout(lines);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(type_.px(0.15));
    for (const std::string& caution : client.cautions) {
        column->addWidget(
            new MarkedLine(LineMark::caution, from_utf8(caution), type_, BoardRole::heading));
    }
    cautions_ = make_scrolling_side(lines);
    cautions_->setAccessibleName(tr("Cautions"));
    QScroller::grabGesture(cautions_->viewport(), QScroller::TouchGesture);
    column_->addWidget(cautions_);
}

void ClientHead::add_looks(const BoardClient& client, std::size_t look) {
    auto* row = new FlowLayout(type_.px(0.4));
    for (std::size_t i = 0; i < client.looks.size(); ++i) {
        QPushButton* button = make_button(look_in_words(client.looks[i]));
        suit_board(*button, type_);
        button->setCheckable(true);
        button->setChecked(i == look);
        button->setProperty("kind", i == look ? QStringLiteral("chosen") : QString());
        connect(button, &QPushButton::clicked, this, [this, i] { emit look_chosen(i); });
        row->addWidget(button);
    }
    column_->addLayout(row);
}

void ClientHead::limit_cautions(int height) {
    at_most_ = height;
    fit_cautions();
}

void ClientHead::fit_cautions() {
    if (!cautions_) return;
    const int wanted = cautions_->widget()->heightForWidth(std::max(width(), 1));
    cautions_->setFixedHeight(std::min(wanted, std::max(at_most_, type_.px(1.6))));
}

void ClientHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_cautions();
}

}  // namespace quarterturn
