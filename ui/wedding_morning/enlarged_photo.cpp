#include "ui/wedding_morning/enlarged_photo.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>

#include "ui/pictures/picture_loader.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/arrow_angle.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/widgets/draw_photo.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/veil.h"

namespace quarterturn {

EnlargedPhoto::EnlargedPhoto(PictureLoader& pictures, const BoardType& type, QWidget* parent)
    : QWidget(parent),
      pictures_(pictures),
      type_(type),
      row_(make_row(2)),
      foot_(new QWidget),
      buttons_(new QButtonGroup(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(2), space(2), space(2), space(2));
    column->addStretch(1);
    foot_->setLayout(row_);
    column->addWidget(foot_);
    connect(&pictures_, &PictureLoader::arrived, this, qOverload<>(&QWidget::update));
}

void EnlargedPhoto::show_photos(std::vector<ShownPhoto> photos, std::size_t first) {
    photos_ = std::move(photos);
    build_buttons();
    go_to(first);
}

const ShownPhoto* EnlargedPhoto::shown_photo() const {
    return current_ < photos_.size() ? &photos_[current_] : nullptr;
}

void EnlargedPhoto::veil(bool veiled) {
    veiled_ = veiled;
    update();
}

void EnlargedPhoto::build_buttons() {
    empty_layout(row_);
    delete buttons_;
    buttons_ = new QButtonGroup(this);
    const auto add = [&](QPushButton* button) {
        suit_board(*button, type_);
        row_->addWidget(button);
    };
    QPushButton* back = make_next_button(tr("Back to the board"));
    connect(back, &QPushButton::clicked, this, &EnlargedPhoto::closed);
    add(back);
    row_->addStretch(1);
    for (std::size_t i = 0; i < photos_.size(); ++i) {
        QPushButton* button = make_button(photos_[i].words);
        button->setCheckable(true);
        buttons_->addButton(button, static_cast<int>(i));
        connect(button, &QPushButton::clicked, this, [this, i] { go_to(i); });
        add(button);
    }
}

void EnlargedPhoto::go_to(std::size_t photo) {
    current_ = photo;
    for (QAbstractButton* button : buttons_->buttons()) {
        const bool chosen = buttons_->id(button) == static_cast<int>(photo);
        button->setChecked(chosen);
        if (chosen) button->setFocus(Qt::OtherFocusReason);
    }
    want_picture();
    update();
}

void EnlargedPhoto::walk(const QKeyEvent& event) {
    if (const auto angle = angle_of_arrow(event)) {
        const auto there = std::ranges::find(photos_, angle, &ShownPhoto::angle);
        if (there != photos_.end()) {
            return go_to(static_cast<std::size_t>(there - photos_.begin()));
        }
        if (photos_.empty() || photos_.front().angle) return;
    }
    const bool forth = event.key() == Qt::Key_Right || event.key() == Qt::Key_Down;
    const std::size_t count = photos_.size();
    go_to((current_ + (forth ? 1 : count - 1)) % count);
}

void EnlargedPhoto::keyPressEvent(QKeyEvent* event) {
    if (angle_of_arrow(*event) && !photos_.empty()) return walk(*event);
    QWidget::keyPressEvent(event);
}

void EnlargedPhoto::mouseReleaseEvent(QMouseEvent*) {
    emit closed();
}

QRect EnlargedPhoto::picture_area() const {
    return rect().adjusted(space(2), space(2), -space(2), -foot_->height() - space(4));
}

int EnlargedPhoto::edge() const {
    const QSize size = picture_area().size();
    return qRound(std::max(size.width(), size.height()) * devicePixelRatioF());
}

void EnlargedPhoto::want_picture() {
    if (const ShownPhoto* shown = shown_photo()) pictures_.want(this, {{shown->photo, edge()}});
}

void EnlargedPhoto::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    want_picture();
}

void EnlargedPhoto::paintEvent(QPaintEvent*) {
    const ShownPhoto* shown = shown_photo();
    if (!shown) return;
    const QImage picture = pictures_.at_hand(shown->photo.id, edge());
    if (picture.isNull()) return;
    QPainter painter(this);
    const QRectF area = picture_area();
    QRectF box(QPointF(), QSizeF(picture.size()).scaled(area.size(), Qt::KeepAspectRatio));
    box.moveCenter(area.center());
    draw_picture(painter, box, veiled_ ? veiled(picture) : picture, shown->photo.tags.mirrored);
}

}  // namespace quarterturn
