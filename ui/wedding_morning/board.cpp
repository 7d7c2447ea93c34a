#include "ui/wedding_morning/board.h"

#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/board_photo.h"
#include "ui/wedding_morning/client_head.h"
#include "ui/wedding_morning/client_strip.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double photos_share = 0.55;   // of the width, at most
constexpr double cautions_share = 0.4;  // of the height, at most

std::vector<Photo> photos_of(const BoardClient& client) {
    std::vector<Photo> photos;
    if (client.looks.empty()) return photos;
    for (const BoardShot& shot : client.looks.front().shots) {
        if (shot.photo) photos.push_back(*shot.photo);
    }
    return photos;
}

}  // namespace

Board::Board(const PictureLoader& pictures, const BoardType& type, QWidget* parent)
    : QWidget(parent),
      pictures_(pictures),
      type_(type),
      strip_(new ClientStrip(type)),
      photos_(new BoardPhotos(pictures, type)),
      recipe_(new RecipePanel(pictures, type)),
      head_(new ClientHead(type)),
      no_look_(new EmptyPage(tr("She has no look for this wedding yet."), tr("Plan her look"))),
      previous_(make_button({})),
      next_(make_button({})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(type.px(0.4));
    column->addWidget(strip_);
    auto* row = new QHBoxLayout;
    row->setSpacing(type.px(0.8));
    row->addWidget(photos_);
    row->addWidget(no_look_, 1);
    row->addWidget(build_side(), 1);
    column->addLayout(row, 1);
    no_look_->hide();
    connect(strip_, &ClientStrip::chosen, this, &Board::client_chosen);
    connect(head_, &ClientHead::look_chosen, this, &Board::look_chosen);
    connect(no_look_, &EmptyPage::started, this, &Board::look_wanted);
    for (auto* button : no_look_->findChildren<QPushButton*>()) {
        suit_board(*button, type_, BoardRole::body);
    }
}

QWidget* Board::build_side() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(type_.px(0.4));
    column->addWidget(head_);
    column->addWidget(recipe_, 1);
    column->addStretch(0);
    column->addLayout(build_turning());
    return side;
}

QLayout* Board::build_turning() {
    QHBoxLayout* row = make_row(2);
    for (QPushButton* button : {previous_, next_}) {
        suit_board(*button, type_);
        QSizePolicy policy = button->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        button->setSizePolicy(policy);
        row->addWidget(button, 1);
    }
    connect(previous_, &QPushButton::clicked, this, [this] { emit client_chosen(client_ - 1); });
    connect(next_, &QPushButton::clicked, this, [this] { emit client_chosen(client_ + 1); });
    return row;
}

void Board::show_board(const WeddingBoard& board, const BoardPlace& place) {
    client_ = place.client;
    const BoardClient& client = board.clients[client_];
    strip_->show_clients(board.clients, client_);
    head_->show_client(board, client_, place.look);
    show_turning(board);
    others_.clear();
    for (const std::size_t other : {client_ + 1, client_ - 1}) {
        if (other >= board.clients.size()) continue;
        const auto photos = photos_of(board.clients[other]);
        others_.insert(others_.end(), photos.begin(), photos.end());
    }
    const bool has_look = !client.looks.empty();
    photos_->setVisible(has_look);
    recipe_->setVisible(has_look);
    no_look_->setVisible(!has_look);
    if (!has_look) return;
    photos_->show_look(client.looks[place.look]);
    recipe_->show_look(client.looks[place.look]);
    share_room();
}

void Board::share_room() {
    const int height = this->height() - strip_->height() - type_.px(0.4);
    photos_->setFixedWidth(
        std::min(qRound(width() * photos_share), photos_->fitting_width(height)));
    head_->limit_cautions(qRound(height * cautions_share));
}

void Board::show_turning(const WeddingBoard& board) {
    const auto show = [&](QPushButton& button, std::size_t client, const QString& words) {
        const bool there = client < board.clients.size();
        const QString name = there ? name_of(board.clients[client]) : QString();
        button.setText(words.arg(name.section(QLatin1Char(' '), 0, 0)));
        button.setAccessibleName(words.arg(name));
        button.setVisible(there);
    };
    //: the client before this one in the order of work
    show(*previous_, client_ - 1, tr("Previous: %1"));
    show(*next_, client_ + 1, tr("Next: %1"));
}

void Board::show_pictures() {
    photos_->show_pictures();
    recipe_->show_pictures();
}

std::vector<PictureWish> Board::wishes() const {
    std::vector<PictureWish> wishes = photos_->wishes();
    const auto of_steps = recipe_->wishes();
    wishes.insert(wishes.end(), of_steps.begin(), of_steps.end());
    const bool all_there = std::ranges::all_of(wishes, [&](const PictureWish& wish) {
        return pictures_.is_at_hand(wish.photo.id, wish.long_edge);
    });
    if (!all_there) return wishes;
    for (const Photo& photo : others_) wishes.push_back({photo});
    return wishes;
}

void Board::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    share_room();
}

}  // namespace quarterturn
