#include "ui/running_order/chart_ground.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double cooling_width = 2;
constexpr double mark_width = 1.5;

QString chart_words(const char* text) {
    return QCoreApplication::translate("morning_chart", text);
}

class GroundPainter {
  public:
    GroundPainter(QPainter& painter, const ChartGround& ground, const QPalette& palette)
        : painter_(painter),
          layout_(ground.layout),
          needs_(ground.needs),
          ground_(ground),
          palette_(palette) {
        painter_.setRenderHint(QPainter::Antialiasing);
    }

    void draw() {
        for (int i = 0; i < layout_.lanes(); ++i) draw_lane(i);
        draw_hours();
        for (int i = 0; i < static_cast<int>(needs_.stylists.size()); ++i) draw_times_off(i);
        if (ground_.now) draw_now(*ground_.now);
        for (const ReadyFlag& flag : layout_.flags()) draw_flag(flag);
        for (const Seat& seat : ground_.seats) draw_arrival(seat);
        for (const Cooling& cooling : coolings(ground_.seats)) draw_cooling(cooling);
    }

  private:
    void draw_lane(int stylist) {
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(page_colour(palette_));
        painter_.drawRoundedRect(layout_.lane(stylist).adjusted(0, -space(1), 0, space(1)), 6, 6);
        painter_.setPen(ink_colour(palette_));
        painter_.drawText(layout_.name_place(stylist),
                          Qt::AlignLeading | Qt::AlignVCenter | Qt::TextWordWrap,
                          lane_words(stylist));
    }

    QString lane_words(int stylist) const {
        const QString name =
            chart_words(QT_TRANSLATE_NOOP("morning_chart", "Stylist %1")).arg(stylist + 1);
        if (stylist >= static_cast<int>(needs_.stylists.size())) {
            return name + QLatin1Char('\n') +
                   chart_words(QT_TRANSLATE_NOOP("morning_chart", "not there"));
        }
        const int arrives = needs_.stylists[static_cast<std::size_t>(stylist)].arrives;
        return name + QLatin1Char('\n') +
               chart_words(QT_TRANSLATE_NOOP("morning_chart", "from %1"))
                   .arg(from_utf8(minute_text(arrives)));
    }

    // A label where there is room for one: each half hour, else each hour or two.
    void draw_hours() {
        const QFontMetrics metrics(painter_.font());
        const ChartHours& hours = layout_.hours();
        const int half =
            std::abs(layout_.x_of(hours.from + half_an_hour) - layout_.x_of(hours.from));
        const int label = metrics.horizontalAdvance(QStringLiteral("00:00")) + space(3);
        int every = half_an_hour;
        while (half * every / half_an_hour < label) every *= 2;
        for (int minute = hours.from; minute <= hours.to; minute += half_an_hour) {
            const int x = layout_.x_of(minute);
            painter_.setPen(QPen(hairline_colour(palette_), 1));
            painter_.drawLine(x, layout_.head() - space(2), x, layout_.height() - space(3));
            if (minute % every != 0) continue;
            painter_.setPen(quiet_colour(palette_));
            painter_.drawText(QRect(x - label / 2, 0, label, layout_.line()), Qt::AlignCenter,
                              from_utf8(minute_text(minute)));
        }
    }

    void draw_times_off(int stylist) {
        const StylistHours& own = needs_.stylists[static_cast<std::size_t>(stylist)];
        const int from = layout_.hours().from;
        if (own.arrives > from) {
            draw_off(layout_.span(from, own.arrives, layout_.lane(stylist)),
                     chart_words(QT_TRANSLATE_NOOP("morning_chart", "comes %1"))
                         .arg(from_utf8(minute_text(own.arrives))));
        }
        for (const Break& pause : own.breaks) {
            const int begins = std::max(pause.begins, from);
            const int ends = std::min(pause.ends, layout_.hours().to);
            if (begins >= ends) continue;
            draw_off(layout_.span(begins, ends, layout_.lane(stylist)),
                     chart_words(QT_TRANSLATE_NOOP("morning_chart", "break")));
        }
    }

    void draw_off(const QRect& area, const QString& words) {
        painter_.save();
        painter_.setClipRect(area);
        painter_.setPen(QPen(outline_colour(palette_), 1));
        for (int x = area.left() - area.height(); x < area.right(); x += space(2)) {
            painter_.drawLine(x, area.bottom(), x + area.height(), area.top());
        }
        const QFontMetrics metrics(painter_.font());
        const QSize size(metrics.horizontalAdvance(words) + space(2), metrics.height());
        if (size.width() <= area.width()) {
            QRect place(QPoint(), size);
            place.moveCenter(area.center());
            painter_.fillRect(place, page_colour(palette_));
            painter_.setPen(ink_colour(palette_));
            painter_.drawText(place, Qt::AlignCenter, words);
        }
        painter_.restore();
        painter_.setPen(QPen(outline_colour(palette_), 1));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(area.adjusted(0, 0, -1, -1));
    }

    // A pennant at the time, and a dashed line down through the lanes.
    void draw_flag(const ReadyFlag& flag) {
        const int x = layout_.x_of(flag.minute);
        const int top = flag.place.bottom();
        painter_.setPen(QPen(ink_colour(palette_), mark_width, Qt::DashLine));
        painter_.drawLine(x, top, x, layout_.height() - space(3));
        QPainterPath pennant;
        pennant.moveTo(x - space(1), top - space(1));
        pennant.lineTo(x + space(1), top - space(1));
        pennant.lineTo(x, top + space(1));
        pennant.closeSubpath();
        painter_.fillPath(pennant, ink_colour(palette_));
        painter_.setPen(ink_colour(palette_));
        const QFontMetrics metrics(painter_.font());
        const QRect words = flag.place.adjusted(0, 0, 0, -space(1));
        painter_.fillRect(words, card_colour(palette_));  // no line runs through them
        painter_.drawText(words, Qt::AlignTrailing | Qt::AlignVCenter,
                          metrics.elidedText(flag.words, Qt::ElideRight, flag.place.width()));
    }

    // She comes at a time of her own: a triangle under her lane.
    void draw_arrival(const Seat& seat) {
        const auto client = std::ranges::find(needs_.clients, seat.client, &MorningClient::client);
        if (seat.part != SeatPart::set || client == needs_.clients.end()) return;
        if (client->arrives < layout_.hours().from || client->arrives > layout_.hours().to) return;
        const QRect& lane = layout_.lane(std::clamp(seat.stylist, 0, layout_.lanes() - 1));
        const int x = layout_.x_of(client->arrives);
        const int y = lane.bottom() + space(1);
        QPainterPath mark;
        mark.moveTo(x, y - space(1));
        mark.lineTo(x + space(1), y + space(1));
        mark.lineTo(x - space(1), y + space(1));
        mark.closeSubpath();
        painter_.fillPath(mark, ink_colour(palette_));
    }

    void draw_cooling(const Cooling& cooling) {
        const QRect& lane = layout_.lane(std::clamp(cooling.stylist, 0, layout_.lanes() - 1));
        const int y = layout_.cooling_y(cooling);
        const int from = layout_.x_of(cooling.from);
        const int to = layout_.x_of(cooling.to);
        const int inward = to > from ? space(1) : -space(1);
        QPainterPath thread;
        thread.moveTo(from - inward, lane.bottom());
        thread.lineTo(from - inward, y);
        thread.lineTo(to + inward, y);
        thread.lineTo(to + inward, lane.bottom());
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(QPen(outline_colour(palette_), cooling_width, Qt::SolidLine, Qt::RoundCap,
                             Qt::RoundJoin));
        painter_.drawPath(thread);
    }

    void draw_now(int minute) {
        if (minute < layout_.hours().from || minute > layout_.hours().to) return;
        const int x = layout_.x_of(minute);
        const QString words = chart_words(QT_TRANSLATE_NOOP("morning_chart", "now %1"))
                                  .arg(from_utf8(minute_text(minute)));
        painter_.save();
        QFont bold = painter_.font();
        bold.setBold(true);
        painter_.setFont(bold);
        const int room = QFontMetrics(bold).horizontalAdvance(words) + space(2);
        const QRect place(x - room / 2, 0, room, layout_.line());
        painter_.setPen(QPen(accent_colour(palette_), 3));
        painter_.drawLine(x, layout_.line(), x, layout_.height() - space(3));
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(accent_colour(palette_));
        painter_.drawRoundedRect(place, 4, 4);
        painter_.setPen(on_accent_colour(palette_));
        painter_.drawText(place, Qt::AlignCenter, words);
        painter_.restore();
    }

    QPainter& painter_;
    const ChartLayout& layout_;
    const MorningNeeds& needs_;
    const ChartGround& ground_;
    const QPalette& palette_;
};

}  // namespace

void draw_chart_ground(QPainter& painter, const ChartGround& ground, const QPalette& palette) {
    GroundPainter(painter, ground, palette).draw();
}

}  // namespace quarterturn
