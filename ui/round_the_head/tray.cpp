#include "ui/round_the_head/tray.h"

#include <QScrollArea>
#include <QScrollBar>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/sentence_link.h"

namespace quarterturn {
namespace {

constexpr int most_columns = 3;

QSize tile_size() {
    return {space(24), space(34)};
}

int columns_width(int columns) {
    return columns * (tile_size().width() + space(2)) + space(4);
}

PhotoLook tile_look(const WaitingPhoto& waiting) {
    PhotoLook look = look_of(waiting.photo);
    look.caption = time_or_name(waiting.photo);
    look.others_in_burst = static_cast<int>(waiting.others.size());
    return look;
}

}  // namespace

Tray::Tray(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      heading_(make_heading({})),
      nothing_(make_quiet(tr("Every photo has its place."))),
      scroll_(new QScrollArea) {
    setMinimumWidth(columns_width(1));
    setMaximumWidth(columns_width(most_columns));
    auto* ground = new QWidget;
    ground->setProperty("kind", QStringLiteral("page"));
    flow_ = new FlowLayout(space(2), ground);
    flow_->setContentsMargins(0, 0, 0, 0);
    scroll_->setWidget(ground);
    scroll_->setWidgetResizable(true);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(heading_);
    column->addWidget(nothing_);
    more_ = new SentenceLink(tr("Bring more photos in"));
    connect(more_, &SentenceLink::clicked, this, [this] {
        session_.go_to({.moment = Moment::bringing_in, .look = session_.look_in_hand()});
    });
    column->addWidget(more_);
    column->addWidget(scroll_, 1);
    connect(scroll_->verticalScrollBar(), &QScrollBar::valueChanged, this,
            &Tray::want_what_is_seen);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        for (PhotoTile* tile : tiles_) {
            if (tile->photo() == photo) show_picture(*tile);
        }
    });
}

bool Tray::shows_the_same(const std::vector<WaitingPhoto>& waiting) const {
    return std::ranges::equal(waiting, waiting_, [](const auto& one, const auto& other) {
        return one.photo == other.photo && one.others == other.others;
    });
}

void Tray::show_waiting(const std::vector<WaitingPhoto>& waiting, std::optional<PhotoId> in_hand) {
    if (!shows_the_same(waiting)) build_tiles(waiting);
    //: how many photos still have no place round the head
    heading_->setText(tr("%n photo(s) waiting", nullptr, static_cast<int>(waiting.size())));
    nothing_->setVisible(waiting.empty());
    more_->setVisible(waiting.empty());
    in_hand_ = nullptr;
    for (PhotoTile* tile : tiles_) {
        PhotoLook look = tile->look();
        look.current = tile->photo() == in_hand;
        if (look.current) in_hand_ = tile;
        if (look.current != tile->look().current) tile->show_look(look);
    }
    QMetaObject::invokeMethod(this, &Tray::show_pictures, Qt::QueuedConnection);
}

void Tray::build_tiles(const std::vector<WaitingPhoto>& waiting) {
    const bool had_focus = isAncestorOf(focusWidget());
    waiting_ = waiting;
    empty_layout(flow_);
    tiles_.clear();
    for (const WaitingPhoto& shot : waiting_) {
        auto* tile = new PhotoTile(shot.photo.id, tile_size());
        PhotoLook look = tile_look(shot);
        look.picture = session_.pictures().at_hand(shot.photo.id, small_long_edge);
        tile->show_look(look);
        connect(tile, &PhotoTile::clicked, this, [this, id = shot.photo.id] { emit taken(id); });
        flow_->addWidget(tile);
        tiles_.push_back(tile);
    }
    if (had_focus) setFocus();
}

void Tray::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    QMetaObject::invokeMethod(this, &Tray::show_pictures, Qt::QueuedConnection);
}

void Tray::show_pictures() {
    if (in_hand_) scroll_->ensureWidgetVisible(in_hand_, 0, tile_size().height() / 2);
    want_what_is_seen();
}

void Tray::want_what_is_seen() {
    const int top = scroll_->verticalScrollBar()->value();
    const int height = scroll_->viewport()->height();
    std::vector<PictureWish> wishes;
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        const QRect tile = tiles_[i]->geometry();
        if (tile.bottom() < top - height || tile.top() > top + 2 * height) continue;
        wishes.push_back({waiting_[i].photo, small_long_edge});
        show_picture(*tiles_[i]);
    }
    session_.pictures().want(this, wishes);
}

void Tray::show_picture(PhotoTile& tile) {
    PhotoLook look = tile.look();
    if (!look.picture.isNull()) return;
    look.picture = session_.pictures().at_hand(tile.photo(), small_long_edge);
    if (!look.picture.isNull()) tile.show_look(look);
}

}  // namespace quarterturn
