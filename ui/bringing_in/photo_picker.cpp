#include "ui/bringing_in/photo_picker.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize tile_size() {
    return {space(30), space(42)};
}

}  // namespace

QString moment_caption(const Photo& photo) {
    if (!photo.moment) return from_utf8(photo.file.name);
    //: the day and the time a photo was taken
    return PhotoPicker::tr("%1, %2").arg(short_shown(date_of(*photo.moment)),
                                         clock_shown(*photo.moment));
}

PhotoPicker::PhotoPicker(Session& session, const std::vector<Photo>& photos, Choice choice,
                         QWidget* parent)
    : QWidget(parent), session_(session), choice_(choice) {
    photos_.assign(photos.begin(), photos.begin() + static_cast<std::ptrdiff_t>(
                                                        std::min(photos.size(), most_shown)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* flow = new FlowLayout(space(2));
    column->addLayout(flow);
    for (const Photo& photo : photos_) {
        add_tile(photo);
        flow->addWidget(tiles_.back());
    }
    if (photos.size() > photos_.size()) {
        column->addWidget(make_quiet(
            tr("And %n more.", nullptr, static_cast<int>(photos.size() - photos_.size()))));
    }
    connect(&session.pictures(), &PictureLoader::arrived, this, &PhotoPicker::show_picture);
    ask_for_pictures();
}

void PhotoPicker::add_tile(const Photo& photo) {
    auto* tile = new PhotoTile(photo.id, tile_size());
    tiles_.push_back(tile);
    if (choice_ == Choice::none) tile->setFocusPolicy(Qt::NoFocus);
    connect(tile, &PhotoTile::clicked, this, [this, id = photo.id] { toggle(id); });
    PhotoLook look;
    look.caption = moment_caption(photo);
    look.mirrored = photo.tags.mirrored;
    tile->show_look(look);
    show_tile(*tile);
}

void PhotoPicker::show_tile(PhotoTile& tile) {
    PhotoLook look = tile.look();
    look.selected = chosen_.contains(tile.photo());
    if (look.picture.isNull()) {
        look.picture = session_.pictures().at_hand(tile.photo(), small_long_edge);
    }
    tile.show_look(look);
}

void PhotoPicker::ask_for_pictures() {
    std::vector<PictureWish> wishes;
    for (const Photo& photo : photos_) wishes.push_back({photo, small_long_edge});
    session_.pictures().want(this, wishes);
}

void PhotoPicker::show_picture(PhotoId photo) {
    for (PhotoTile* tile : tiles_) {
        if (tile->photo() == photo) show_tile(*tile);
    }
}

void PhotoPicker::toggle(PhotoId photo) {
    if (choice_ == Choice::none) return;
    const bool was_chosen = chosen_.erase(photo) > 0;
    if (choice_ == Choice::one) chosen_.clear();
    if (!was_chosen) chosen_.insert(photo);
    for (PhotoTile* tile : tiles_) show_tile(*tile);
    emit choice_changed();
}

}  // namespace quarterturn
