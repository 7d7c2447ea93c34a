#include "ui/all_photos/photo_shelves.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QTimer>

#include "ui/all_photos/marked_text.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_tile_steps = 50;  // "12:42, after, right three-quarter" fits below
constexpr int page_margin_steps = 8;
constexpr int gap_steps = 4;
constexpr int painted_kilobytes = 96 << 10;
constexpr int least_found_steps = 30;  // of room beside a heading
constexpr int found_lines = 2;         // below a picture, while words are looked for

int line_height(TextRole role) {
    return QFontMetrics(text_font(role)).height();
}

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

void PhotoShelves::reset() {
    QAbstractItemView::reset();
    doItemsLayout();
}

void PhotoShelves::doItemsLayout() {
    std::vector<int> counts;
    for (const Shelf& shelf : photos_.shelves()) counts.push_back(shelf.photos);
    const int small = line_height(TextRole::small);
    const int words = photos_.has_words() ? found_lines * small : 0;
    layout_.arrange(
        {.width = viewport()->width(),
         .margin = space(page_margin_steps),
         .least_tile = space(least_tile_steps),
         .gap = space(gap_steps),
         .heading = line_height(TextRole::heading) + space(7) + (photos_.has_words() ? small : 0),
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

QImage PhotoShelves::picture(PhotoId photo, QSize size) const {
    const QSize pixels = size * devicePixelRatioF();
    if (pixels != painted_size_) painted_.clear();
    painted_size_ = pixels;
    if (const QImage* known = painted_.object(photo.value)) return *known;
    const QImage small = session_.pictures().at_hand(photo, small_long_edge);
    if (small.isNull()) return {};
    const QImage scaled =
        small.scaled(pixels, Qt::KeepAspectRatioByExpanding, Qt::SmoothTransformation);
    const QRect middle(
        QPoint((scaled.width() - pixels.width()) / 2, (scaled.height() - pixels.height()) / 2),
        pixels);
    auto* kept = new QImage(scaled.copy(middle));
    painted_.insert(photo.value, kept, kept->sizeInBytes() / 1024 + 1);
    return *kept;
}

QString PhotoShelves::caption(const Photo& photo) const {
    QStringList words{time_or_name(photo)};
    if (photo.moment && !photo.tags.sitting) words.prepend(short_shown(date_of(*photo.moment)));
    if (photo.tags.stage) words << shown(*photo.tags.stage);
    if (photo.tags.angle) words << shown(*photo.tags.angle);
    return words.join(QStringLiteral(", "));
}

void PhotoShelves::paint_heading(QPainter& painter, const Shelf& shelf, const QRect& area) const {
    const int line = area.top() + space(2);
    painter.setPen(hairline_colour(palette()));
    if (shelf.first > 0) painter.drawLine(area.left(), line, area.right(), line);
    const QFont bold = text_font(TextRole::heading);
    const QFont plain = text_font(TextRole::body);
    const QFontMetrics metrics(bold);
    const QString count = tr("%n photo(s)", nullptr, shelf.photos);
    //: a day and how many photos there are of it
    const QString day = tr("%1 · %2").arg(photos_.day(shelf), count);
    const int day_width = QFontMetrics(plain).horizontalAdvance(day);
    const int room = std::max(area.width() - day_width - space(3), area.width() / 3);
    const QString name = metrics.elidedText(photos_.heading(shelf), Qt::ElideRight, room);
    const QRect words(area.left(), area.bottom() - space(2) - metrics.height(), area.width(),
                      metrics.height());
    int from = 0;
    const auto next = [&](int width) {
        const QRect part(words.left() + from, words.top(), std::min(width, words.width() - from),
                         words.height());
        from += width + space(3);
        return QStyle::visualRect(layoutDirection(), words, part);
    };
    const auto draw = [&](const QFont& font, const QColor& colour, const QString& text) {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(next(QFontMetrics(font).horizontalAdvance(text) + 1),
                         Qt::AlignBottom | Qt::AlignLeading | Qt::TextSingleLine, text);
    };
    draw(bold, ink_colour(palette()), name);
    draw(plain, quiet_colour(palette()), day);
    if (!photos_.has_words() || words.width() - from < space(least_found_steps)) return;
    painter.setFont(text_font(TextRole::small));
    painter.setPen(ink_colour(palette()));
    const auto round = photos_.found_round(shelf);
    if (!round.empty()) draw_found(painter, next(words.width() - from), round.front());
}

// In which record the words were found, then its text.
void PhotoShelves::draw_found(QPainter& painter, const QRect& area, const FoundText& found) const {
    //: a record in which words were found, before its text
    draw_marked(painter, area, tr("%1: ").arg(shown(found.where)), found.pieces, palette());
}

void PhotoShelves::paint_photo(QPainter& painter, int position) const {
    const Photo* photo = photos_.photo(position);
    if (!photo) return;
    QRect area = on_screen(layout_.tile(position));
    const int small = line_height(TextRole::small);
    const QFont font = text_font(TextRole::small);
    if (photos_.has_words()) {
        const QRect words(area.left(), area.bottom() + 1 - found_lines * small, area.width(),
                          found_lines * small);
        area.setBottom(words.top() - 1);
        if (const FoundText* text = photos_.found_text(position)) {
            painter.setFont(font);
            painter.setPen(ink_colour(palette()));
            draw_found(painter, words, *text);
        }
    }
    PhotoLook look = look_of(*photo);
    look.caption = caption(*photo);
    look.picture = picture(photo->id, area.size() - QSize(0, small + 4));
    look.current = hasFocus() && currentIndex().row() == position;
    draw_photo(painter, area, look, palette(), font);
}

void PhotoShelves::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.fillRect(event->rect(), page_colour(palette()));
    const int top = verticalOffset() + event->rect().top();
    const auto part = layout_.seen(top, top + event->rect().height());
    for (int i = part.first_shelf; i < part.end_shelf; ++i) {
        const QRect area = on_screen(layout_.heading(i));
        if (area.intersects(event->rect())) {
            paint_heading(painter, photos_.shelves()[static_cast<std::size_t>(i)], area);
        }
    }
    for (int i = part.first_photo; i < part.end_photo; ++i) paint_photo(painter, i);
    wishing_->start();
}

}  // namespace quarterturn
