#include "ui/wedding_morning/client_head.h"

#include <QApplication>
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
namespace {

constexpr int widest_of_one_column = 40;  // bodies
constexpr int name_share = 4;             // of the width, where cautions stand beside it
constexpr int cautions_share_of_width = 6;

}  // namespace

ClientHead::ClientHead(const BoardType& type, QWidget* parent)
    : QWidget(parent), type_(type), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(type.px(0.25));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void ClientHead::show_client(const WeddingBoard& board, std::size_t number, std::size_t look) {
    const BoardClient& client = board.clients[number];
    Words words{
        name_of(client), role_and_time(client), from_utf8(chair_text(board, client)), {}, {}, look};
    for (const std::string& caution : client.cautions) words.cautions << from_utf8(caution);
    if (client.looks.size() > 1) {
        for (const BoardLook& each : client.looks) words.looks << look_in_words(each);
    }
    if (words == words_) return;
    const QWidget* focus = QApplication::focusWidget();
    const bool choosing = focus && isAncestorOf(focus);
    words_ = std::move(words);
    build();
    for (auto* button : findChildren<QPushButton*>()) {
        if (choosing && button->isChecked() && !button->isHidden()) button->setFocus();
    }
}

void ClientHead::build() {
    empty_layout(column_);
    said_.clear();
    beside_ = new QBoxLayout(QBoxLayout::TopToBottom);
    beside_->setSpacing(type_.px(0.25));
    column_->addLayout(beside_);
    add_name();
    add_cautions();
    if (!words_.looks.isEmpty()) add_looks();
    fit();
}

void ClientHead::add_name() {
    QVBoxLayout* column = make_column(0);
    beside_->addLayout(column, name_share);
    const auto add = [&](QLabel* label, BoardRole role) {
        label->setFont(type_.font(role));
        column->addWidget(label);
        said_ << label;
    };
    add(make_text(words_.name), BoardRole::name);
    add(make_text(words_.role), BoardRole::heading);
    if (!words_.chair.isEmpty()) add(make_quiet(words_.chair), BoardRole::small);
}

void ClientHead::add_cautions() {
    auto* lines = new QWidget;
    auto* column = new QVBoxLayout(lines);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(type_.px(0.15));
    for (const QString& caution : words_.cautions) {
        column->addWidget(new MarkedLine(LineMark::caution, caution, type_, BoardRole::heading));
    }
    cautions_ = make_scrolling_side(lines);
    cautions_->setAccessibleName(tr("Cautions"));
    QScroller::grabGesture(cautions_->viewport(), QScroller::TouchGesture);
    beside_->addWidget(cautions_, cautions_share_of_width, Qt::AlignTop);
}

void ClientHead::add_looks() {
    auto* row = new FlowLayout(type_.px(0.4));
    for (qsizetype i = 0; i < words_.looks.size(); ++i) {
        const auto look = static_cast<std::size_t>(i);
        QPushButton* button = make_button(words_.looks[i]);
        suit_board(*button, type_);
        button->setCheckable(true);
        button->setChecked(look == words_.look);
        if (look == words_.look) show_kind(*button, QStringLiteral("chosen"));
        connect(button, &QPushButton::clicked, this, [this, look] { emit look_chosen(look); });
        row->addWidget(button);
    }
    column_->addLayout(row);
}

void ClientHead::limit_cautions(int height) {
    at_most_ = height;
    fit();
}

bool ClientHead::wide() const {
    return width() > type_.px(widest_of_one_column);
}

int ClientHead::width_of(int share) const {
    return wide() ? width() * share / (name_share + cautions_share_of_width) - beside_->spacing()
                  : width();
}

// A layout that is short of height would cut words that run over several lines.
void ClientHead::fit() {
    if (!cautions_) return;
    beside_->setDirection(wide() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    for (QLabel* label : said_) {
        label->setMinimumHeight(
            std::max(label->heightForWidth(std::max(width_of(name_share), 1)), 0));
    }
    const int wanted = cautions_->widget()->heightForWidth(
        std::max(width_of(cautions_share_of_width) - type_.px(0.5), 1));
    cautions_->setFixedHeight(std::min(wanted, std::max(at_most_, type_.px(1.6))));
}

void ClientHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

}  // namespace quarterturn
