#include "ui/wedding_morning/board_photos.h"

#include <QKeyEvent>

#include "ui/wedding_morning/arrow_angle.h"
#include "ui/wedding_morning/board_photo.h"

namespace quarterturn {
namespace {

constexpr double gap = 0.5;  // bodies

// Where it lies on the head plan: column, and row of three.
struct PlanCell {
    int column = 1;
    int row = 1;
};

PlanCell cell_of(Angle angle) {
    switch (angle) {
        case Angle::left_three_quarter:
            return {0, 0};
        case Angle::front:
            return {1, 0};
        case Angle::right_three_quarter:
            return {2, 0};
        case Angle::left:
            return {0, 1};
        case Angle::crown:
            return {1, 1};
        case Angle::right:
            return {2, 1};
        case Angle::back:
            return {1, 2};
        case Angle::detail:
            return {2, 2};
    }
    return {};
}

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

// Where there is room for larger ones, front and back share the height, and what lies at the sides
// keeps to the middle, or makes room for the other on its side.
int BoardPhotos::rows() const {
    return at(Angle::crown) || (at(Angle::detail) && at(Angle::right_three_quarter)) ? 3 : 2;
}

double BoardPhotos::row_of(const BoardPhoto& photo) const {
    const Angle angle = photo.shot().angle;
    const int row = cell_of(angle).row;
    if (rows() == 3 || row == 0) return row;
    const Angle above =
        angle == Angle::left ? Angle::left_three_quarter : Angle::right_three_quarter;
    if (angle == Angle::back || angle == Angle::detail || at(above)) return 1;
    return angle == Angle::right && at(Angle::detail) ? 0 : 0.5;
}

void BoardPhotos::lay_out() {
    const int between = type_.px(gap);
    const int width = (this->width() - 2 * between) / 3;
    const int share = (height() - (rows() - 1) * between) / rows();
    for (const auto& [angle, photo] : photos_) {
        const int x = cell_of(angle).column * (width + between);
        const int y = qRound(row_of(*photo) * (share + between));
        fit(*photo, {x, y, width, share});
    }
    show_pictures();
    emit laid_out();
}

void BoardPhotos::fit(BoardPhoto& photo, const QRect& area) {
    const int caption = photo.caption_height();
    const int width = std::min(area.width(), qRound((area.height() - caption) * photo.shape()));
    QRect box(0, 0, width, qRound(width / photo.shape()) + caption);
    box.moveCenter(area.center());
    photo.setGeometry(box);
}

int BoardPhotos::fitting_width(int height) const {
    const int between = type_.px(gap);
    double widest = 0;
    int caption = 0;
    for (const auto& [angle, photo] : photos_) {
        widest = std::max(widest, std::min(photo->shape(), upright_shape));
        caption = photo->caption_height();
    }
    const int share = (height - (rows() - 1) * between) / rows();
    return 3 * qRound((share - caption) * widest) + 2 * between;
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
