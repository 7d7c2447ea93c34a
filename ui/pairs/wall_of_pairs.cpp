#include "ui/pairs/wall_of_pairs.h"

#include <QEvent>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <QStyle>

#include "ui/pairs/fact_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/two_heads/laid_picture.h"
#include "ui/widgets/angle_ring.h"
#include "ui/widgets/draw_photo.h"
#include "ui/widgets/veil.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_tile_steps = 68;
constexpr int gap_steps = 6;
constexpr int margin_steps = 2;
constexpr int two_lines = 2;   // whose, and which look
constexpr double between = 2;  // px, between the two
constexpr double corner = 8;
constexpr int painted_kilobytes = 96 << 10;

}  // namespace

WallOfPairs::WallOfPairs(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent)
    : ShelfView(parent),
      session_(session),
      pairs_(pairs),
      laid_(laid),
      painted_(painted_kilobytes) {
    setAccessibleName(tr("Pairs"));
    setModel(&pairs_);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &WallOfPairs::show_again);
    connect(&laid_, &LaidPairs::laid, this,
            [this](PhotoId, PhotoId second) { show_again(second); });
}

void WallOfPairs::forget_pictures() {
    painted_.clear();
    viewport()->update();
}

// Photos are as bright as the window is.
void WallOfPairs::changeEvent(QEvent* event) {
    ShelfView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) forget_pictures();
}

void WallOfPairs::show_again(PhotoId photo) {
    const auto in_view = seen();
    for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
        const Pair& pair = pairs_.at(i);
        if (pair.made.first != photo && pair.made.second != photo) continue;
        painted_.remove(pair.id.value);
        update_tile(i);
    }
}

// Reasons take two lines.
int WallOfPairs::words_height() const {
    const bool reasons = pairs_.rowCount() > 0 && !pairs_.reason(0).isEmpty();
    return (two_lines + (reasons ? 2 : 1)) * line_height(TextRole::small) + space(2);
}

void WallOfPairs::arrange(ShelfLayout& layout) const {
    layout.arrange({.width = viewport()->width(),
                    .margin = space(margin_steps),
                    .least_tile = space(least_tile_steps),
                    .gap = space(gap_steps),
                    .heading = space(1),
                    .below_tile = words_height(),
                    .height_of_width = 1 / (2 * head_aspect)},
                   {pairs_.rowCount()});
}

const LaidPair* WallOfPairs::surely_laid(int position, const TwoPhotos& two) const {
    const auto* now = laid_.at_hand(two.first.id, two.second.id);
    const LaidPair* laid = now ? &now->pair : pairs_.laid(position);
    return laid && laid->refused.empty() && laid->alignment.sure() ? laid : nullptr;
}

void WallOfPairs::paint_two(QPainter& painter, int position, const TwoPhotos& two,
                            const QRectF& area) const {
    const PairPlace& place = pairs_.at(position).made.place;
    const LaidPair* laid = surely_laid(position, two);
    const double width = (area.width() - between) / 2;
    for (const int side : {0, 1}) {
        const Photo& photo = side == 0 ? two.first : two.second;
        const bool at_left = (side == 0) == (layoutDirection() == Qt::LeftToRight);
        const QRectF cell(at_left ? area.x() : area.right() - width, area.y(), width,
                          area.height());
        const QImage small = lit_for_mood(session_.pictures().at_hand(photo.id, small_long_edge));
        if (laid) {
            const Similarity lay = side == 1 ? laid->alignment.second_onto_first : Similarity{};
            draw_laid(painter, cell, small, photo.tags.mirrored, lay,
                      window_of(*laid, cell.width() / cell.height()), palette());
        } else {
            draw_picture(painter, cell, small, photo.tags.mirrored);
        }
        paint_which(painter, place, side, cell);
    }
}

// "Before" or "After" at the foot of its photo.
void WallOfPairs::paint_which(QPainter& painter, const PairPlace& place, int side,
                              const QRectF& cell) const {
    QFont font = text_font(TextRole::small);
    const double ratio = devicePixelRatioF();
    font.setPixelSize(qRound(QFontInfo(font).pixelSize() * ratio));
    const QString words = side == 0 ? first_words(place) : second_words(place);
    const QFontMetricsF metrics(font);
    const double margin = space(1) * ratio;
    const double width = std::min(metrics.horizontalAdvance(words) + 4 * margin, cell.width());
    const QRectF strip(cell.center().x() - width / 2, cell.bottom() - metrics.height() - margin,
                       width, metrics.height() + margin);
    painter.fillRect(strip, card_colour(palette()));
    painter.setFont(font);
    painter.setPen(ink_colour(palette()));
    painter.drawText(strip, Qt::AlignCenter,
                     metrics.elidedText(words, Qt::ElideRight, strip.width()));
}

QImage WallOfPairs::picture(int position, const TwoPhotos& two, QSize size) const {
    const QSize pixels = size * devicePixelRatioF();
    if (pixels != painted_size_) painted_.clear();
    painted_size_ = pixels;
    const qint64 pair = pairs_.at(position).id.value;
    if (const QImage* known = painted_.object(pair)) return *known;
    auto* made = new QImage(pixels, QImage::Format_ARGB32_Premultiplied);
    made->fill(hairline_colour(palette()));
    QPainter painter(made);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    paint_two(painter, position, two, made->rect());
    painter.end();
    const QImage result = *made;
    painted_.insert(pair, made, made->sizeInBytes() / 1024 + 1);
    return result;
}

QString WallOfPairs::last_line(int position, bool& unfair) const {
    const QString reason = pairs_.reason(position);
    if (!reason.isEmpty()) return reason;
    const MadePair& made = pairs_.at(position).made;
    const auto* laid = laid_.at_hand(made.first, made.second);
    const QString differs = laid ? from_utf8(unfair_in_short(laid->figures)) : QString();
    unfair = !differs.isEmpty();
    if (unfair) return differs;
    const bool usual = made.place.kind == PairKind::before_and_after;
    QStringList words;
    if (made.worn_on) {
        const QString day =
            isolated(QLocale().toString(to_qdate(*made.worn_on), QStringLiteral("d MMM yyyy")));
        const bool to_come = *made.worn_on > session_.today();
        //: the day on which a look is worn
        words << (to_come ? tr("to be worn %1") : tr("worn %1")).arg(day);
    }
    if (!usual) words << shown(made.place.kind);
    return words.join(QStringLiteral(" · "));
}

// The ring stands beside the first two lines; a hatched mark before what is not fair.
void WallOfPairs::paint_words(QPainter& painter, int position, const QRect& area) const {
    const Pair& pair = pairs_.at(position);
    const int line = line_height(TextRole::small);
    const auto in_area = [&](const QRect& part) {
        return QStyle::visualRect(layoutDirection(), area, part);
    };
    const QRect ring(area.left(), area.top() + 2, 2 * line - 4, 2 * line - 4);
    draw_angle_ring(painter, in_area(ring), pair.made.place.angle, palette());
    bool unfair = false;
    const QString last = last_line(position, unfair);
    const QFont plain = text_font(TextRole::small);
    QFont bold = plain;
    bold.setBold(true);
    //: a look and an angle
    const QString what =
        tr("%1 · %2").arg(pairs_.look(pair), capitalised_words(shown(pair.made.place.angle)));
    const int indent = ring.width() + space(2);
    int top = area.top();
    const auto draw = [&](const QFont& font, const QColor& colour, const QString& text, int from) {
        const QRect room(area.left() + from, top, area.width() - from, line);
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(in_area(room), Qt::AlignVCenter | Qt::AlignLeading | Qt::TextSingleLine,
                         QFontMetrics(font).elidedText(text, Qt::ElideRight, room.width()));
        top += line;
    };
    draw(bold, ink_colour(palette()), pairs_.client(pair), indent);
    draw(plain, ink_colour(palette()), what, indent);
    if (unfair) {
        const QRect mark(area.left() + 2, top + 3, ring.width() - 4, line - 6);
        draw_hatched_mark(painter, in_area(mark), palette());
    }
    const QRect rest(area.left() + indent, top, area.width() - indent, area.bottom() + 1 - top);
    painter.setFont(plain);
    painter.setPen(unfair ? ink_colour(palette()) : quiet_colour(palette()));
    painter.drawText(in_area(rest), Qt::AlignTop | Qt::AlignLeading | Qt::TextWordWrap, last);
}

void WallOfPairs::paint_tile(QPainter& painter, int position, const QRect& area) const {
    const TwoPhotos* two = pairs_.photos(position);
    if (!two) return;
    const QRect top = area.adjusted(0, 0, 0, -words_height());
    QPainterPath rounded;
    rounded.addRoundedRect(top, corner, corner);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipPath(rounded, Qt::IntersectClip);
    painter.drawImage(top, picture(position, *two, top.size()));
    painter.restore();
    paint_words(painter, position, area.adjusted(0, top.height() + space(1), 0, 0));
    if (hasFocus() && currentIndex().row() == position) {
        draw_focus_ring(painter, top.adjusted(-3, -3, 3, 3), palette());
    }
}

void WallOfPairs::want_what_is_seen() {
    std::vector<PictureWish> wishes;
    std::vector<TwoPhotos> pairs;
    const auto in_view = seen();
    for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
        const TwoPhotos* two = pairs_.photos(i);
        if (!two) continue;
        pairs.push_back(*two);
        wishes.push_back({two->first, small_long_edge});
        wishes.push_back({two->second, small_long_edge});
    }
    session_.pictures().want(this, wishes);
    session_.attempt([&] { laid_.want(pairs); });
}

}  // namespace quarterturn
