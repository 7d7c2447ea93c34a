#include "ui/widgets/photo_tile.h"

#include <QApplication>
#include <QDrag>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

const QString photos_mime = QStringLiteral("application/x-quarterturn-photos");

}  // namespace

PhotoTile::PhotoTile(PhotoId photo, QSize size, QWidget* parent)
    : QAbstractButton(parent), photo_(photo), size_(size) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setFont(text_font(TextRole::small));
}

void PhotoTile::show_look(const PhotoLook& look) {
    look_ = look;
    setAccessibleName(described(look));
    setToolTip(accessibleName());
    update();
}

void PhotoTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    draw_photo(painter, rect(), look_, palette(), font());
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void PhotoTile::keyPressEvent(QKeyEvent* event) {
    // Arrow keys belong to the screen: on going round the head they place the photo.
    const bool presses = event->key() == Qt::Key_Space || event->key() == Qt::Key_Return;
    if (!presses) {
        event->ignore();
        return;
    }
    if (event->key() == Qt::Key_Return) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

void PhotoTile::mousePressEvent(QMouseEvent* event) {
    pressed_at_ = event->pos();
    QAbstractButton::mousePressEvent(event);
}

void PhotoTile::mouseMoveEvent(QMouseEvent* event) {
    const bool far_enough =
        (event->pos() - pressed_at_).manhattanLength() >= QApplication::startDragDistance();
    if (!(event->buttons() & Qt::LeftButton) || !far_enough) return;
    setDown(false);
    auto* drag = new QDrag(this);
    drag->setMimeData(carry_photos({photo_}));
    drag->setPixmap(grab().scaledToHeight(std::min(height(), 96), Qt::SmoothTransformation));
    drag->exec(Qt::MoveAction);
}

QMimeData* carry_photos(const std::vector<PhotoId>& photos) {
    QByteArrayList numbers;
    for (const PhotoId photo : photos) numbers << QByteArray::number(qint64{photo.value});
    auto* data = new QMimeData;
    data->setData(photos_mime, numbers.join(' '));
    return data;
}

std::vector<PhotoId> carried_photos(const QMimeData& data) {
    std::vector<PhotoId> photos;
    for (const QByteArray& number : data.data(photos_mime).split(' ')) {
        bool is_number = false;
        const qint64 value = number.toLongLong(&is_number);
        if (is_number) photos.push_back(PhotoId{value});
    }
    return photos;
}

}  // namespace quarterturn
