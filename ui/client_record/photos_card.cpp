#include "ui/client_record/photos_card.h"

#include <QVBoxLayout>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {

PhotosCard::PhotosCard(Session& session, const PhotoSection& section, QWidget* parent)
    : QFrame(parent), session_(session), photos_(section.photos) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(3));
    column->addWidget(make_heading(from_utf8(section.heading)));
    column->addWidget(
        make_quiet(tr("%n photo(s)", nullptr, static_cast<int>(section.photos.size()))));
    auto* tiles = new FlowLayout(space(2));
    for (const Photo& photo : photos_) add_tile(*tiles, photo);
    column->addLayout(tiles);
}

void PhotosCard::add_tile(QLayout& tiles, const Photo& photo) {
    auto* tile = new PhotoTile(photo.id, {space(30), space(36)});
    PhotoLook look = look_of(photo);
    look.caption = photo.tags.angle ? shown(*photo.tags.angle) : time_or_name(photo);
    tile->show_look(look);
    connect(tile, &PhotoTile::clicked, this, [this, photo] {
        session_.go_to({.moment = Moment::round_the_head,
                        .sitting = photo.tags.sitting,
                        .look = photo.tags.look,
                        .photo = photo.id});
    });
    tiles.addWidget(tile);
    tiles_[photo.id] = tile;
    show_picture(photo.id);
}

std::vector<PictureWish> PhotosCard::wishes() const {
    std::vector<PictureWish> wishes;
    for (const Photo& photo : photos_) wishes.push_back({photo, small_long_edge});
    return wishes;
}

void PhotosCard::show_picture(PhotoId photo) {
    const auto tile = tiles_.find(photo);
    if (tile == tiles_.end()) return;
    PhotoLook look = tile->second->look();
    look.picture = session_.pictures().at_hand(photo, small_long_edge);
    tile->second->show_look(look);
}

}  // namespace quarterturn
