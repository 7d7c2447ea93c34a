// How the photos and the headings of their shelves are painted.

#include <QPainter>
#include <QStyle>

#include "ui/all_photos/marked_text.h"
#include "ui/all_photos/photo_shelves.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_found_steps = 30;  // of room beside a heading

}  // namespace

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

void PhotoShelves::paint_heading(QPainter& painter, int number, const QRect& area) const {
    const Shelf& shelf = photos_.shelves()[static_cast<std::size_t>(number)];
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
    if (round.empty()) return;
    QRect rest = next(words.width() - from);
    rest.setTop(rest.bottom() + 1 - line_height(TextRole::small));
    draw_found(painter, rest, round.front());
}

// In which record the words were found, then its text.
void PhotoShelves::draw_found(QPainter& painter, const QRect& area, const FoundText& found) const {
    //: a record in which words were found, before its text
    draw_marked(painter, area, tr("%1: ").arg(shown(found.where)), found.pieces, palette());
}

void PhotoShelves::paint_tile(QPainter& painter, int position, const QRect& tile) const {
    const Photo* photo = photos_.photo(position);
    if (!photo) return;
    QRect area = tile;
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
    look.current = currentIndex().row() == position;  // what Delete would take
    draw_photo(painter, area, look, palette(), font);
}

}  // namespace quarterturn
