#include "ui/all_photos/photo_shelves.h"

#include <QKeyEvent>
#include <QScrollBar>
#include <QTimer>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int least_tile_steps = 50;  // "12:42, after, right three-quarter" fits below
constexpr int page_margin_steps = 8;
constexpr int gap_steps = 4;
constexpr int painted_kilobytes = 96 << 10;
constexpr int found_lines = 2;  // below a picture, while words are looked for

}  // namespace

PhotoShelves::PhotoShelves(Session& session, FoundPhotos& photos, QWidget* parent)
    : QListView(parent),
      session_(session),
      photos_(photos),
      painted_(painted_kilobytes),
      wishing_(new QTimer(this)) {
    setAccessibleName(tr("Photos"));
    setFrameShape(NoFrame);
    setSelectionMode(NoSelection);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // the columns stay where they are
    setModel(&photos_);
    viewport()->setBackgroundRole(QPalette::Window);
    viewport()->setFont(text_font(TextRole::small));
    wishing_->setSingleShot(true);
    wishing_->setInterval(0);
    connect(wishing_, &QTimer::timeout, this, &PhotoShelves::want_what_is_seen);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        const auto in_view = seen();
        for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
            if (photos_.id(i) == photo) viewport()->update(on_screen(layout_.tile(i)));
        }
    });
    connect(this, &QListView::doubleClicked, this, &PhotoShelves::open_current);
}

int PhotoShelves::line_height(TextRole role) {
    return QFontMetrics(text_font(role)).height();
}

void PhotoShelves::reset() {
    QAbstractItemView::reset();
    doItemsLayout();
}

void PhotoShelves::doItemsLayout() {
    std::vector<int> counts;
    for (const Shelf& shelf : photos_.shelves()) counts.push_back(shelf.photos);
    const int small = line_height(TextRole::small);
    const int words = photos_.has_words() ? found_lines * small : 0;
    layout_.arrange({.width = viewport()->width(),
                     .margin = space(page_margin_steps),
                     .least_tile = space(least_tile_steps),
                     .gap = space(gap_steps),
                     .heading = line_height(TextRole::heading) + space(7),
                     .below_tile = small + 4 + words},
                    counts);
    QAbstractItemView::doItemsLayout();
}

void PhotoShelves::updateGeometries() {
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(space(16));
    verticalScrollBar()->setRange(0, std::max(layout_.height() - viewport()->height(), 0));
    QAbstractItemView::updateGeometries();
}

void PhotoShelves::resizeEvent(QResizeEvent* event) {
    const int kept = seen().first_photo;
    const bool any = model()->rowCount() > 0 && event->oldSize().width() > 0;
    const bool scrolled = verticalScrollBar()->value() > 0;
    QAbstractItemView::resizeEvent(event);
    doItemsLayout();
    if (any && scrolled) scrollTo(model()->index(kept, 0), PositionAtTop);
}

void PhotoShelves::scrollContentsBy(int dx, int dy) {
    viewport()->scroll(dx, dy);
    wishing_->start();
}

int PhotoShelves::verticalOffset() const {
    return verticalScrollBar()->value();
}

ShelfLayout::Seen PhotoShelves::seen() const {
    return layout_.seen(verticalOffset(), verticalOffset() + viewport()->height());
}

QRect PhotoShelves::on_screen(QRect on_page) const {
    return QStyle::visualRect(layoutDirection(), viewport()->rect(),
                              on_page.translated(0, -verticalOffset()));
}

QRect PhotoShelves::visualRect(const QModelIndex& index) const {
    return index.isValid() ? on_screen(layout_.tile(index.row())) : QRect();
}

QModelIndex PhotoShelves::indexAt(const QPoint& point) const {
    const QPoint on_page = QStyle::visualPos(layoutDirection(), viewport()->rect(), point) +
                           QPoint(0, verticalOffset());
    const int position = layout_.photo_at(on_page);
    return position < 0 ? QModelIndex() : model()->index(position, 0);
}

void PhotoShelves::scrollTo(const QModelIndex& index, ScrollHint hint) {
    if (!index.isValid()) return;
    const QRect tile = layout_.tile(index.row());
    const int shelf = layout_.shelf_of(index.row());
    // The first row of a shelf is shown with its heading.
    const bool first_row = tile.top() == layout_.heading(shelf).bottom() + 1;
    const int top = first_row ? layout_.heading(shelf).top() : tile.top() - space(2);
    const int bottom = tile.bottom() + space(4);
    const int now = verticalOffset();
    if (hint == PositionAtTop || top < now) {
        verticalScrollBar()->setValue(top);
    } else if (bottom > now + viewport()->height()) {
        verticalScrollBar()->setValue(bottom - viewport()->height());
    }
}

QModelIndex PhotoShelves::moveCursor(CursorAction action, Qt::KeyboardModifiers) {
    const int count = model()->rowCount();
    if (count == 0) return {};
    int at = currentIndex().isValid() ? currentIndex().row() : seen().first_photo;
    const int forward = isRightToLeft() ? -1 : 1;
    const auto step = [&](int from, bool down) {
        return down ? layout_.below(from) : layout_.above(from);
    };
    const auto page = [&](bool down) {
        const int start = layout_.tile(at).top();
        for (int next = step(at, down); next != at; next = step(at, down)) {
            if (std::abs(layout_.tile(next).bottom() - start) > viewport()->height()) break;
            at = next;
        }
    };
    switch (action) {
        case MoveUp:
        case MoveDown:
            at = step(at, action == MoveDown);
            break;
        case MoveLeft:
            at -= forward;
            break;
        case MoveRight:
            at += forward;
            break;
        case MoveNext:
            ++at;
            break;
        case MovePrevious:
            --at;
            break;
        case MoveHome:
            at = 0;
            break;
        case MoveEnd:
            at = count - 1;
            break;
        case MovePageUp:
        case MovePageDown:
            page(action == MovePageDown);
            break;
    }
    return model()->index(std::clamp(at, 0, count - 1), 0);
}

void PhotoShelves::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        open_current();
    } else if (!event->text().isEmpty() && event->text().front().isPrint()) {
        event->ignore();
    } else {
        QAbstractItemView::keyPressEvent(event);
    }
}

void PhotoShelves::focusInEvent(QFocusEvent* event) {
    const bool none = !currentIndex().isValid() && model()->rowCount() > 0;
    if (none) setCurrentIndex(model()->index(seen().first_photo, 0));
    QAbstractItemView::focusInEvent(event);
    viewport()->update();
}

void PhotoShelves::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QAbstractItemView::currentChanged(current, previous);
    scrollTo(current);
    viewport()->update(visualRect(previous));
    viewport()->update(visualRect(current));
}

void PhotoShelves::open_current() {
    if (currentIndex().isValid()) emit opened(photos_.id(currentIndex().row()));
}

void PhotoShelves::want_what_is_seen() {
    std::vector<PictureWish> wishes;
    const auto in_view = seen();
    for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
        if (const Photo* photo = photos_.photo(i)) wishes.push_back({*photo, small_long_edge});
    }
    session_.pictures().want(this, wishes);
}

}  // namespace quarterturn
