#include "ui/recipe/photo_tiles.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize small_tile() {
    return {space(22), space(30)};
}

PhotoLook look_of_step_photo(const Photo& photo) {
    PhotoLook look = look_of(photo);
    look.caption = photo.tags.angle ? shown(*photo.tags.angle) : time_or_name(photo);
    return look;
}

}  // namespace

PhotoTiles::PhotoTiles(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), flow_(new FlowLayout(space(2), this)) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        for (PhotoTile* tile : tiles_) {
            if (tile->photo() == photo) show_picture(*tile);
        }
    });
}

void PhotoTiles::show_photos(const std::vector<Photo>& photos,
                             const std::set<std::string>& chosen) {
    if (photos != photos_) build(photos);
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        PhotoLook look = tiles_[i]->look();
        look.selected = chosen.contains(photos_[i].file.sha256);
        tiles_[i]->show_look(look);
    }
    if (isVisible()) want_pictures();
}

void PhotoTiles::build(const std::vector<Photo>& photos) {
    empty_layout(flow_);
    tiles_.clear();
    photos_ = photos;
    for (const Photo& photo : photos_) {
        auto* tile = new PhotoTile(photo.id, small_tile());
        tile->show_look(look_of_step_photo(photo));
        connect(tile, &PhotoTile::clicked, this, [this, id = photo.id] { emit clicked(id); });
        flow_->addWidget(tile);
        tiles_.push_back(tile);
    }
    updateGeometry();
}

void PhotoTiles::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    want_pictures();
}

void PhotoTiles::want_pictures() {
    std::vector<PictureWish> wishes;
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        wishes.push_back({photos_[i], small_long_edge});
        show_picture(*tiles_[i]);
    }
    session_.pictures().want(this, wishes);
}

void PhotoTiles::show_picture(PhotoTile& tile) {
    PhotoLook look = tile.look();
    if (!look.picture.isNull()) return;
    look.picture = session_.pictures().at_hand(tile.photo(), small_long_edge);
    if (!look.picture.isNull()) tile.show_look(look);
}

}  // namespace quarterturn
