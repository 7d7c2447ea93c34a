#include "ui/wedding_morning/board.h"

#include <QEvent>
#include <QScrollArea>
#include <QScroller>

#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/board_photo.h"
#include "ui/wedding_morning/client_cautions.h"
#include "ui/wedding_morning/client_head.h"
#include "ui/wedding_morning/looks_row.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double photos_share = 0.58;      // of the width, at most
constexpr double cautions_share = 0.34;    // of the height, at most
constexpr int least_for_two_parts = 30;    // bodies: in less, all of it scrolls as one
constexpr int least_for_two_columns = 46;  // bodies: in less, the recipe stands below the photos
constexpr int least_of_photos = 20;        // bodies: their height, also where all of it scrolls

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
      photos_(new BoardPhotos(pictures, type)),
      recipe_(new RecipePanel(pictures, type)),
      head_(new ClientHead(type)),
      cautions_(new ClientCautions(type)),
      looks_(new LooksRow(type)),
      no_look_(new EmptyPage(tr("She has no look for this wedding yet."), tr("Plan her look"))),
      done_(make_button({})),
      all_(new QVBoxLayout(this)),
      columns_(new QHBoxLayout),
      side_(make_column(0)) {
    all_->setContentsMargins(0, 0, 0, 0);
    all_->setSpacing(type.px(0.4));
    all_->addWidget(head_);
    columns_->setSpacing(type.px(0.8));
    columns_->addWidget(photos_, 0, Qt::AlignTop);
    columns_->addWidget(no_look_, 1);
    build_side();
    columns_->addLayout(side_, 1);
    all_->addLayout(columns_, 1);
    no_look_->hide();
    connect(head_, &ClientHead::turned, this, [this](int by) {
        emit client_chosen(client_ + static_cast<std::size_t>(by));  // only where there is one
    });
    connect(looks_, &LooksRow::chosen, this, &Board::look_chosen);
    connect(no_look_, &EmptyPage::started, this, &Board::look_wanted);
    for (auto* button : no_look_->findChildren<QPushButton*>()) {
        suit_board(*button, type_, BoardRole::body);
    }
}

void Board::build_side() {
    side_->setSpacing(type_.px(0.4));
    side_->addWidget(cautions_);
    side_->addWidget(looks_);
    side_->addWidget(recipe_, 1);
    suit_board(*done_, type_, BoardRole::body);
    done_->setCheckable(true);
    connect(done_, &QPushButton::clicked, this, &Board::done_said);
    side_->addWidget(done_);
    side_->addStretch(0);
}

void Board::lie_in(QScrollArea& around) {
    around_ = &around;
    around.viewport()->installEventFilter(this);
    QScroller::grabGesture(around.viewport(), QScroller::TouchGesture);
}

void Board::show_board(const WeddingBoard& board, const BoardPlace& place) {
    client_ = place.client;
    const BoardClient& client = board.clients[client_];
    head_->show_client(board, client_);
    cautions_->show_cautions(lines_of(client.cautions));
    looks_->show_looks(client.looks, place.look);
    show_done(client);
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
    if (has_look) {
        photos_->show_look(client.looks[place.look]);
        recipe_->show_look(client.looks[place.look]);
    }
    share_room();
}

// What there is to see of it, and no more: what was wider before would never become narrower.
QSize Board::room() const {
    return around_ ? around_->viewport()->size() : size();
}

void Board::share_room() {
    const auto [width, seen] = std::pair(room().width(), room().height());
    // With or without a bar to scroll by, which comes and goes with what is decided here.
    const int at_most = around_ ? around_->width() : this->width();
    stand_in_columns(at_most >= type_.px(least_for_two_columns));
    const int for_photos = in_columns_ ? qRound(width * photos_share) : width;
    const int below_head = seen - head_->heightForWidth(width) - layout()->spacing();
    const int cautions = qRound(below_head * cautions_share);
    const bool as_one = !in_columns_ || seen < type_.px(least_for_two_parts) ||
                        cautions_->wanted_height(width - for_photos) > cautions;
    const int height = as_one ? std::max(seen, type_.px(least_of_photos)) : below_head;
    recipe_->let_flow(as_one);
    cautions_->limit(as_one ? QWIDGETSIZE_MAX : cautions);
    photos_->setFixedSize(std::min(for_photos, photos_->fitting_width(height)),
                          std::max(height, photos_->minimumSizeHint().height()));
}

// What to beware of comes before the photos where they do not stand beside it.
void Board::stand_in_columns(bool in_columns) {
    if (std::exchange(in_columns_, in_columns) == in_columns) return;
    columns_->setDirection(in_columns ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    int place = in_columns ? 0 : 1;  // below her name
    for (QWidget* part : {static_cast<QWidget*>(cautions_), static_cast<QWidget*>(looks_)}) {
        QBoxLayout& from = in_columns ? *all_ : *side_;
        QBoxLayout& to = in_columns ? *side_ : *all_;
        from.removeWidget(part);
        to.insertWidget(place++, part);
    }
}

// Where there are steps, ticking them says it.
void Board::show_done(const BoardClient& client) {
    done_->setVisible(client.steps() == 0);
    done_->setChecked(client.is_done());
    done_->setText(client.is_done() ? tr("✓  She is done") : tr("Mark her as done"));
    show_kind(*done_, client.is_done() ? QStringLiteral("chosen") : QString());
}

void Board::show_pictures() {
    photos_->show_pictures();
    recipe_->show_pictures();
}

void Board::veil_photos(bool veiled) {
    photos_->veil(veiled);
    recipe_->veil_photos(veiled);
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

bool Board::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) share_room();
    return QWidget::eventFilter(watched, event);
}

}  // namespace quarterturn
