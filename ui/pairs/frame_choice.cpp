#include "ui/pairs/frame_choice.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize frame_size() {
    return {space(19), space(26)};
}

}  // namespace

FrameChoice::FrameChoice(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      side_(make_text({})),
      row_(new FlowLayout(space(2))),
      best_(make_quiet_button(tr("The best one again"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    column->addWidget(side_);
    column->addLayout(row_);
    column->addWidget(best_, 0, Qt::AlignLeading);
    connect(best_, &QPushButton::clicked, this, &FrameChoice::best_asked);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &FrameChoice::show_pictures);
}

void FrameChoice::show_frames(const QString& side, const std::vector<Photo>& frames,
                              PhotoId current, bool chosen) {
    const QString count = tr("%n photo(s) of this angle", nullptr, static_cast<int>(frames.size()));
    //: a side of the pair, and how many photos could stand there
    side_->setText(tr("%1: %2").arg(side, count));
    best_->setVisible(chosen);
    best_->setAccessibleName(tr("%1: the best photo again").arg(side));
    current_ = current;
    if (frames == frames_) return show_pictures();
    frames_ = frames;
    empty_layout(row_);
    tiles_.clear();
    std::vector<PictureWish> wishes;
    for (const Photo& photo : frames_) {
        auto* tile = new PhotoTile(photo.id, frame_size());
        connect(tile, &PhotoTile::clicked, this, [this, id = photo.id] {
            if (id != current_) emit picked(id);
        });
        row_->addWidget(tile);
        tiles_.push_back(tile);
        wishes.push_back({photo, small_long_edge});
    }
    session_.pictures().want(this, wishes);
    show_pictures();
}

void FrameChoice::show_pictures() {
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        PhotoLook look = look_of(frames_[i]);
        look.picture = session_.pictures().at_hand(frames_[i].id, small_long_edge);
        look.caption = time_or_name(frames_[i]);
        look.current = frames_[i].id == current_;
        tiles_[i]->show_look(look);
    }
}

}  // namespace quarterturn
