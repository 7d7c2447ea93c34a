#include "ui/wedding_morning/board_photos.h"

#include <QKeyEvent>

#include "ui/wedding_morning/arrow_angle.h"
#include "ui/wedding_morning/board_photo.h"

namespace quarterturn {
namespace {

constexpr double gap = 0.5;             // bodies
constexpr double further_share = 0.55;  // of a quarter's height, for a further angle beside it

bool is_quarter(Angle angle) {
    return std::ranges::find(quarter_angles, angle) != quarter_angles.end();
}

// From the top to the bottom of each column: as on the head plan, with further angles smaller, and
// the crown below the left, so that front and back keep their height.
constexpr std::array left_column{Angle::left_three_quarter, Angle::left, Angle::crown};
constexpr std::array middle_column{Angle::front, Angle::back};
constexpr std::array right_column{Angle::right_three_quarter, Angle::right, Angle::detail};

// Round the head, for Tab.
constexpr std::array round_the_head{Angle::left,  Angle::left_three_quarter,
                                    Angle::front, Angle::right_three_quarter,
                                    Angle::right, Angle::back,
                                    Angle::crown, Angle::detail};

}  // namespace

BoardPhotos::BoardPhotos(const PictureLoader& pictures, const BoardType& type, QWidget* parent)
    : QWidget(parent), pictures_(pictures), type_(type) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("The look from all angles"));
}

// The same photos stay, and the keyboard with them.
void BoardPhotos::show_look(const BoardLook& look) {
    if (shows(look.shots)) return;
    for (const auto& [angle, photo] : photos_) {
        photo->hide();
        photo->deleteLater();
    }
    photos_.clear();
    for (const Angle angle : round_the_head) {
        const auto shot = std::ranges::find(look.shots, angle, &BoardShot::angle);
        if (shot == look.shots.end()) continue;
        auto* photo = new BoardPhoto(*shot, type_, this);
        connect(photo, &BoardPhoto::clicked, this, [this, photo] {
            const BoardShot& pressed = photo->shot();
            pressed.photo ? emit enlarged(pressed.angle) : emit missing(pressed.angle);
        });
        connect(photo, &BoardPhoto::swiped, this, &BoardPhotos::turned);
        photo->show();
        photos_[angle] = photo;
    }
    lay_out();
}

bool BoardPhotos::shows(const std::vector<BoardShot>& shots) const {
    return photos_.size() == shots.size() && std::ranges::all_of(shots, [&](const BoardShot& shot) {
               const BoardPhoto* photo = at(shot.angle);
               return photo && photo->shot().photo == shot.photo &&
                      photo->shot().empty == shot.empty;
           });
}

BoardPhoto* BoardPhotos::at(Angle angle) const {
    const auto found = photos_.find(angle);
    return found == photos_.end() ? nullptr : found->second;
}

std::vector<BoardPhoto*> BoardPhotos::those_of(std::span<const Angle> angles) const {
    std::vector<BoardPhoto*> there;
    for (const Angle angle : angles) {
        if (BoardPhoto* photo = at(angle)) there.push_back(photo);
    }
    return there;
}

void BoardPhotos::lay_out() {
    const int between = type_.px(gap);
    const int width = (this->width() - 2 * between) / 3;
    int x = 0;
    for (const auto column :
         {std::span<const Angle>(left_column), std::span<const Angle>(middle_column),
          std::span<const Angle>(right_column)}) {
        lay_out(those_of(column), {x, 0, width, height()});
        x += width + between;
    }
    show_pictures();
    emit laid_out();
}

// The quarters as high as is left beside the further ones, but none wider than its column; all of
// them in the middle of the height.
void BoardPhotos::lay_out(const std::vector<BoardPhoto*>& photos, const QRect& column) {
    if (photos.empty()) return;
    const int between = type_.px(gap);
    const auto of_quarters = std::ranges::count_if(
        photos, [](const BoardPhoto* photo) { return is_quarter(photo->shot().angle); });
    const auto of_further = std::ssize(photos) - of_quarters;
    const int room = column.height() - static_cast<int>(std::ssize(photos) - 1) * between;
    const double shares = static_cast<double>(of_quarters) + further_share * of_further;
    std::vector<QSize> sizes;
    int taken = static_cast<int>(std::ssize(photos) - 1) * between;
    for (const BoardPhoto* photo : photos) {
        const double share = is_quarter(photo->shot().angle) ? 1 : further_share;
        sizes.push_back(size_in({column.width(), qRound(room * share / shares)}, *photo));
        taken += sizes.back().height();
    }
    int y = column.y() + (column.height() - taken) / 2;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        photos[i]->setGeometry(column.x(), y, column.width(), sizes[i].height());
        y += sizes[i].height() + between;
    }
}

QSize BoardPhotos::size_in(const QSize& room, const BoardPhoto& photo) {
    const int caption = photo.caption_height();
    const int width = std::min(room.width(), qRound((room.height() - caption) * photo.shape()));
    return {width, qRound(width / photo.shape()) + caption};
}

int BoardPhotos::fitting_width(int height) const {
    const int between = type_.px(gap);
    double broadest = 0;
    int caption = 0;
    for (const auto& [angle, photo] : photos_) {
        broadest = std::max(broadest, std::min(photo->shape(), upright_shape));
        caption = photo->caption_height();
    }
    return 3 * qRound(((height - between) / 2 - caption) * broadest) + 2 * between;
}

int BoardPhotos::edge(const BoardPhoto& photo) const {
    const QSize size = photo.picture_box().size();
    return qRound(std::max(size.width(), size.height()) * devicePixelRatioF());
}

void BoardPhotos::show_pictures() {
    for (const auto& [angle, photo] : photos_) {
        if (!photo->shot().photo) continue;
        photo->show_picture(pictures_.at_hand(photo->shot().photo->id, edge(*photo)), veiled_);
    }
}

void BoardPhotos::veil(bool veiled) {
    veiled_ = veiled;
    show_pictures();
}

std::vector<PictureWish> BoardPhotos::wishes() const {
    std::vector<PictureWish> wishes;
    for (const Angle angle : round_the_head) {
        const BoardPhoto* photo = at(angle);
        if (photo && photo->shot().photo) wishes.push_back({*photo->shot().photo, edge(*photo)});
    }
    return wishes;
}

QSize BoardPhotos::minimumSizeHint() const {
    return {type_.px(15), type_.px(8)};
}

void BoardPhotos::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    lay_out();
}

void BoardPhotos::keyPressEvent(QKeyEvent* event) {
    const auto angle = angle_of_arrow(*event);
    BoardPhoto* photo = angle ? at(*angle) : nullptr;
    if (photo) {
        photo->setFocus(Qt::OtherFocusReason);
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace quarterturn
