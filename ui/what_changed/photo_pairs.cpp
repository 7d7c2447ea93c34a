#include "ui/what_changed/photo_pairs.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_frame.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize photo_size() {
    return {space(38), space(50)};
}

}  // namespace

PhotoPairs::PhotoPairs(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), flow_(new FlowLayout(space(6))) {
    setLayout(flow_);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        for (PhotoTile* tile : tiles_) {
            if (tile->photo() == photo) show_picture(*tile);
        }
    });
}

void PhotoPairs::show_pairs(const std::vector<AnglePair>& pairs) {
    empty_layout(flow_);
    tiles_.clear();
    std::vector<PictureWish> wishes;
    for (const AnglePair& pair : pairs) {
        add_pair(pair);
        for (const auto& photo : {pair.was, pair.is}) {
            if (photo) wishes.push_back({*photo, small_long_edge});
        }
    }
    session_.pictures().want(this, wishes);
}

void PhotoPairs::add_pair(const AnglePair& pair) {
    auto* both = new QWidget;
    auto* column = new QVBoxLayout(both);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    const QString angle = shown(pair.angle);
    column->addWidget(make_text(angle.left(1).toUpper() + angle.mid(1)));
    QHBoxLayout* row = make_row(1);
    add_photo(*row, pair.was, tr("then"), pair.angle);
    add_photo(*row, pair.is, tr("now"), pair.angle);
    column->addLayout(row);
    flow_->addWidget(both);
}

void PhotoPairs::add_photo(QHBoxLayout& row, const std::optional<Photo>& photo, const QString& side,
                           Angle angle) {
    if (!photo) {
        //: %1 is "then" or "now"
        row.addWidget(new EmptyFrame(photo_size(), tr("%1: no photo of this angle").arg(side)));
        return;
    }
    auto* tile = new PhotoTile(photo->id, photo_size());
    PhotoLook look = look_of(*photo);
    look.caption = side;
    tile->show_look(look);
    //: an angle, "then" or "now", and the photo's time or name
    tile->setAccessibleName(tr("%1, %2, %3").arg(shown(angle), side, time_or_name(*photo)));
    connect(
        tile, &PhotoTile::clicked, this, [this, look_of_photo = photo->tags.look, id = photo->id] {
            session_.go_to({.moment = Moment::round_the_head, .look = look_of_photo, .photo = id});
        });
    row.addWidget(tile);
    tiles_.push_back(tile);
    show_picture(*tile);
}

void PhotoPairs::show_picture(PhotoTile& tile) {
    PhotoLook look = tile.look();
    const QString name = tile.accessibleName();
    look.picture = session_.pictures().at_hand(tile.photo(), small_long_edge);
    tile.show_look(look);
    tile.setAccessibleName(name);
}

}  // namespace quarterturn
