#include "ui/wedding_morning/board_photos.h"

#include <QKeyEvent>

#include "ui/wedding_morning/arrow_angle.h"
#include "ui/wedding_morning/board_photo.h"

namespace quarterturn {
namespace {

constexpr double gap = 0.5;  // bodies

// From the top down, as the head lies on the plan. The crown lies in the middle of it.
constexpr std::array left_column{Angle::left_three_quarter, Angle::left};
constexpr std::array middle_column{Angle::front, Angle::crown, Angle::back};
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

void BoardPhotos::show_look(const BoardLook& look) {
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

BoardPhoto* BoardPhotos::at(Angle angle) const {
    const auto found = photos_.find(angle);
    return found == photos_.end() ? nullptr : found->second;
}

void BoardPhotos::lay_out() {
    const int between = type_.px(gap);
    const int width = (this->width() - 2 * between) / 3;
    const auto column = [&](const auto& angles, int x) {
        std::vector<BoardPhoto*> photos;
        for (const Angle angle : angles) {
            if (BoardPhoto* photo = at(angle)) photos.push_back(photo);
        }
        lay_out_column(photos, {x, 0, width, height()});
    };
    column(left_column, 0);
    column(middle_column, width + between);
    column(right_column, 2 * (width + between));
    show_pictures();
    emit laid_out();
}

// Each gets an equal share of the height and lies in the middle of it, as large as its shape lets
// it be.
void BoardPhotos::lay_out_column(const std::vector<BoardPhoto*>& column, const QRect& area) {
    if (column.empty()) return;
    const int count = static_cast<int>(column.size());
    const int between = type_.px(gap);
    const int share = std::min((area.height() - (count - 1) * between) / count, area.height() / 2);
    int y = area.top() + (area.height() - count * share - (count - 1) * between) / 2;
    for (BoardPhoto* photo : column) {
        const int room = share - photo->caption_height();
        const int width = std::min(area.width(), qRound(room * photo->shape()));
        const int height = qRound(width / photo->shape()) + photo->caption_height();
        photo->setGeometry(area.left() + (area.width() - width) / 2, y + (share - height) / 2,
                           width, height);
        y += share + between;
    }
}

int BoardPhotos::edge(const BoardPhoto& photo) const {
    return qRound(std::max(photo.width(), photo.height() - photo.caption_height()) *
                  devicePixelRatioF());
}

void BoardPhotos::show_pictures() {
    for (const auto& [angle, photo] : photos_) {
        if (!photo->shot().photo) continue;
        photo->show_picture(pictures_.at_hand(photo->shot().photo->id, edge(*photo)));
    }
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
