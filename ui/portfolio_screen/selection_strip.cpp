#include "ui/portfolio_screen/selection_strip.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int tile_width_steps = 23;
constexpr int tile_height_steps = 28;
constexpr int photo_role = Qt::UserRole;

// Draws each photo as everywhere in the window.
class StripTiles : public QStyledItemDelegate {
  public:
    StripTiles(Session& session, const std::map<PhotoId, Photo>& photos, QObject* parent)
        : QStyledItemDelegate(parent), session_(session), photos_(photos) {}

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
        return {space(tile_width_steps), space(tile_height_steps)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const PhotoId id{index.data(photo_role).toLongLong()};
        const auto photo = photos_.find(id);
        if (photo == photos_.end()) return;
        PhotoLook look = look_of(photo->second);
        look.picture = session_.pictures().at_hand(id, small_long_edge);
        look.caption = QLocale().toString(index.row() + 1);
        look.current = option.state & QStyle::State_Selected;
        draw_photo(*painter, option.rect.adjusted(0, 0, -space(2), 0), look, option.palette,
                   text_font(TextRole::small));
        if (!(option.state & QStyle::State_HasFocus)) return;
        draw_focus_ring(*painter, option.rect.adjusted(0, 0, -space(2), 0), option.palette);
    }

  private:
    Session& session_;
    const std::map<PhotoId, Photo>& photos_;
};

}  // namespace

SelectionStrip::SelectionStrip(Session& session, QWidget* parent)
    : QListWidget(parent), session_(session) {
    setAccessibleName(tr("The selection, in its order"));
    setFlow(LeftToRight);
    setWrapping(false);
    setFrameShape(NoFrame);
    setSelectionMode(SingleSelection);
    setDragDropMode(NoDragDrop);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setItemDelegate(new StripTiles(session_, photos_, this));
    setFixedHeight(space(tile_height_steps) + space(5));
    viewport()->setBackgroundRole(QPalette::Window);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        if (photos_.contains(photo)) viewport()->update();
    });
    connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0) emit looked_at(photo_at(row));
    });
}

void SelectionStrip::show_photos(const std::vector<Photo>& photos) {
    std::vector<PhotoId> wanted;
    std::vector<PictureWish> wishes;
    for (const Photo& photo : photos) {
        wanted.push_back(photo.id);
        wishes.push_back({photo, small_long_edge});
        photos_[photo.id] = photo;
    }
    session_.pictures().want(this, wishes);
    if (wanted == order()) return viewport()->update();
    const QSignalBlocker quiet(this);
    const PhotoId current = currentRow() < 0 ? PhotoId{} : photo_at(currentRow());
    clear();
    for (const Photo& photo : photos) add(photo);
    const auto again = std::ranges::find(wanted, current);
    if (again != wanted.end()) setCurrentRow(static_cast<int>(again - wanted.begin()));
}

void SelectionStrip::add(const Photo& photo) {
    auto* item = new QListWidgetItem(this);
    item->setData(photo_role, qlonglong{photo.id.value});
    QStringList words{from_utf8(photo.file.name)};
    if (photo.tags.angle) words << shown(*photo.tags.angle);
    item->setData(Qt::AccessibleTextRole, words.join(QStringLiteral(", ")));
    item->setToolTip(words.join(QStringLiteral(", ")));
}

PhotoId SelectionStrip::photo_at(int row) const {
    return PhotoId{item(row)->data(photo_role).toLongLong()};
}

std::vector<PhotoId> SelectionStrip::order() const {
    std::vector<PhotoId> photos;
    for (int row = 0; row < count(); ++row) photos.push_back(photo_at(row));
    return photos;
}

void SelectionStrip::move(int from, int to) {
    if (to < 0 || to >= count() || from == to) return;
    const QSignalBlocker quiet(this);
    insertItem(to, takeItem(from));
    setCurrentRow(to);
}

void SelectionStrip::keyPressEvent(QKeyEvent* event) {
    const int row = currentRow();
    const bool moves = event->modifiers() & Qt::ControlModifier;
    const bool sideways = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right;
    if (row >= 0 && moves && sideways) {
        const bool forth = (event->key() == Qt::Key_Right) == !isRightToLeft();
        const auto before = order();
        move(row, row + (forth ? 1 : -1));
        if (order() != before) emit ordered(order());
    } else if (row >= 0 && (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)) {
        emit taken_out(photo_at(row));
    } else {
        QListWidget::keyPressEvent(event);
    }
}

void SelectionStrip::mousePressEvent(QMouseEvent* event) {
    QListWidget::mousePressEvent(event);
    pressed_at_ = event->pos();
    moved_ = false;
    carried_ = event->button() == Qt::LeftButton ? indexAt(event->pos()).row() : -1;
}

// It changes places as she carries it along, so that she sees where it will stand.
void SelectionStrip::mouseMoveEvent(QMouseEvent* event) {
    if (carried_ < 0 || !(event->buttons() & Qt::LeftButton)) return;
    const bool far_enough =
        (event->pos() - pressed_at_).manhattanLength() >= QApplication::startDragDistance();
    const int there = indexAt({event->pos().x(), viewport()->height() / 3}).row();
    if (!far_enough || there < 0 || there == carried_) return;
    move(carried_, there);
    carried_ = there;
    moved_ = true;
}

void SelectionStrip::mouseReleaseEvent(QMouseEvent* event) {
    QListWidget::mouseReleaseEvent(event);
    carried_ = -1;
    if (std::exchange(moved_, false)) emit ordered(order());
}

}  // namespace quarterturn
