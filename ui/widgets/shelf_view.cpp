#include "ui/widgets/shelf_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
#include <QTimer>

#include "ui/theme/theme.h"

namespace quarterturn {

ShelfView::ShelfView(QWidget* parent) : QListView(parent), wishing_(new QTimer(this)) {
    setFrameShape(NoFrame);
    setSelectionMode(NoSelection);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // the columns stay where they are
    viewport()->setBackgroundRole(QPalette::Window);
    viewport()->setFont(text_font(TextRole::small));
    wishing_->setSingleShot(true);
    wishing_->setInterval(0);
    connect(wishing_, &QTimer::timeout, this, &ShelfView::want_what_is_seen);
    connect(this, &QListView::doubleClicked, this, &ShelfView::pick_current);
}

int ShelfView::line_height(TextRole role) {
    return QFontMetrics(text_font(role)).height();
}

void ShelfView::reset() {
    QAbstractItemView::reset();
    doItemsLayout();
}

void ShelfView::doItemsLayout() {
    arrange(layout_);
    QAbstractItemView::doItemsLayout();
}

void ShelfView::updateGeometries() {
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(space(16));
    verticalScrollBar()->setRange(0, std::max(layout_.height() - viewport()->height(), 0));
    QAbstractItemView::updateGeometries();
    verticalScrollBar()->setEnabled(verticalScrollBar()->maximum() > 0);  // else nothing is painted
}

void ShelfView::resizeEvent(QResizeEvent* event) {
    const int kept = seen().first_photo;
    const bool any = model()->rowCount() > 0 && event->oldSize().width() > 0;
    const bool rearranged = event->oldSize().width() != event->size().width();
    const bool scrolled = verticalScrollBar()->value() > 0;
    QAbstractItemView::resizeEvent(event);
    doItemsLayout();
    if (any && scrolled && rearranged) scrollTo(model()->index(kept, 0), PositionAtTop);
}

void ShelfView::scrollContentsBy(int dx, int dy) {
    viewport()->scroll(dx, dy);
    wishing_->start();
}

int ShelfView::verticalOffset() const {
    return verticalScrollBar()->value();
}

ShelfLayout::Seen ShelfView::seen() const {
    return layout_.seen(verticalOffset(), verticalOffset() + viewport()->height());
}

QRect ShelfView::on_screen(QRect on_page) const {
    return QStyle::visualRect(layoutDirection(), viewport()->rect(),
                              on_page.translated(0, -verticalOffset()));
}

QRect ShelfView::visualRect(const QModelIndex& index) const {
    return index.isValid() ? on_screen(layout_.tile(index.row())) : QRect();
}

bool ShelfView::shows(int position) const {
    return on_screen(layout_.tile(position)).intersects(viewport()->rect());
}

QModelIndex ShelfView::indexAt(const QPoint& point) const {
    const QPoint on_page = QStyle::visualPos(layoutDirection(), viewport()->rect(), point) +
                           QPoint(0, verticalOffset());
    const int position = layout_.photo_at(on_page);
    return position < 0 ? QModelIndex() : model()->index(position, 0);
}

void ShelfView::scrollTo(const QModelIndex& index, ScrollHint hint) {
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

QModelIndex ShelfView::moveCursor(CursorAction action, Qt::KeyboardModifiers) {
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

void ShelfView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        pick_current();
    } else if (!event->text().isEmpty() && event->text().front().isPrint()) {
        event->ignore();
    } else {
        QAbstractItemView::keyPressEvent(event);
    }
}

void ShelfView::focusInEvent(QFocusEvent* event) {
    const bool none = !currentIndex().isValid() && model()->rowCount() > 0;
    if (none) setCurrentIndex(model()->index(seen().first_photo, 0));
    QAbstractItemView::focusInEvent(event);
    viewport()->update();
}

void ShelfView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QAbstractItemView::currentChanged(current, previous);
    scrollTo(current);
    viewport()->update(visualRect(previous));
    viewport()->update(visualRect(current));
}

void ShelfView::pick_current() {
    if (currentIndex().isValid()) emit picked(currentIndex().row());
}

void ShelfView::update_tile(int position) {
    viewport()->update(on_screen(layout_.tile(position)));
}

void ShelfView::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.fillRect(event->rect(), page_colour(palette()));
    const int top = verticalOffset() + event->rect().top();
    const auto part = layout_.seen(top, top + event->rect().height());
    for (int i = part.first_shelf; i < part.end_shelf; ++i) {
        const QRect area = on_screen(layout_.heading(i));
        if (area.intersects(event->rect())) paint_heading(painter, i, area);
    }
    for (int i = part.first_photo; i < part.end_photo; ++i) {
        paint_tile(painter, i, on_screen(layout_.tile(i)));
    }
    wishing_->start();
}

}  // namespace quarterturn
