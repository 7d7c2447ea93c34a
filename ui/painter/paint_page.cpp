#include "ui/painter/paint_page.h"

#include <QColorSpace>
#include <QPainterPath>
#include <cmath>

#include "ui/painter/head_drawing.h"
#include "ui/painter/paint.h"
#include "ui/painter/ring.h"
#include "ui/painter/text.h"

namespace quarterturn {
namespace {

// Ink on paper with one warm accent, as on screen (ui/theme). Text keeps a contrast of 4.5 : 1 on
// white and on the tint (WCAG 2.2, 1.4.3); the tests work it out.
const QColor ink(0x2b, 0x23, 0x20);
const QColor soft(0x64, 0x58, 0x50);
const QColor accent(0x9c, 0x3f, 0x26);
const QColor hairline(0xcf, 0xc3, 0xb5);
const QColor tint(0xf7, 0xf2, 0xea);
const QColor darker_tint(0xe6, 0xdc, 0xcd);  // grey enough for a printer without colour

constexpr double hairline_mm = 0.18;
constexpr double frame_line_mm = 0.25;
constexpr double tick_line_mm = 0.3;
constexpr double bar_line_mm = 0.3;
constexpr double thread_end_mm = 0.8;
constexpr double caution_bar_mm = 0.9;
constexpr double frame_padding_mm = 2;

QRectF dots(const Box& box) {
    return {box.x * dots_per_mm, box.y * dots_per_mm, box.width * dots_per_mm,
            box.height * dots_per_mm};
}

QPen pen(const QColor& colour, double width_mm, Qt::PenStyle style = Qt::SolidLine) {
    return {colour, width_mm * dots_per_mm, style, Qt::FlatCap, Qt::MiterJoin};
}

QColor colour_of(Tone tone) {
    switch (tone) {
        case Tone::ink:
            return ink;
        case Tone::soft:
            return soft;
        case Tone::accent:
            return accent;
    }
    return ink;
}

std::string not_shown_words(const PhotoItem& photo, const std::string& problem) {
    if (photo.unnamed) return "A photo cannot be shown.";
    return photo.file.filename().string() + " cannot be shown.\n" + problem;
}

// Draws the items one after the other, taking the pictures as their photos come.
class PagePainter {
  public:
    PagePainter(QPainter& painter, const PagePictures& pictures, LaidTexts& texts)
        : painter_(painter), pictures_(pictures), texts_(texts) {}

    void operator()(const TextItem& item) { texts_.of(item).draw(painter_, colour_of(item.tone)); }

    void operator()(const PhotoItem& item) {
        const BoxPicture& picture = pictures_.at(next_picture_++);
        if (!picture.problem.empty()) {
            (*this)(FrameItem{item.box, not_shown_words(item, picture.problem)});
            return;
        }
        draw_picture(dots(item.box), as_image(picture.bgr));
    }

    void pass_over(const PageItem& item) {
        if (std::holds_alternative<PhotoItem>(item)) ++next_picture_;
    }

    void operator()(const FrameItem& item) {
        const double inside = frame_line_mm * dots_per_mm / 2;
        QPainterPath edge;
        edge.addRect(dots(item.box).adjusted(inside, inside, -inside, -inside));
        // Qt begins dashes anew where it cuts a line off, as at the end of a strip.
        const QPainterPathStroker stroker(pen(soft, frame_line_mm, Qt::DashLine));
        painter_.fillPath(stroker.createStroke(edge), soft);
        draw_text(painter_, centred_text(item), soft);
    }

    void operator()(const TickItem& item) {
        const QRectF box = dots(item.box);
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(pen(ink, tick_line_mm));
        painter_.drawRect(box);
        if (!item.ticked) return;
        const auto at = [&](double x, double y) {
            return box.topLeft() + QPointF(box.width() * x, box.height() * y);
        };
        QPen thick = pen(ink, 2 * tick_line_mm);
        thick.setCapStyle(Qt::RoundCap);
        painter_.setPen(thick);
        painter_.drawPolyline(QPolygonF{at(0.22, 0.52), at(0.43, 0.75), at(0.8, 0.25)});
    }

    void operator()(const RingItem& item) {
        draw_ring(painter_, dots(item.box), item.ring, {ink, accent});
    }

    void operator()(const RuleItem& item) {
        painter_.setPen(pen(hairline, hairline_mm));
        painter_.drawLine(QPointF(item.x1, item.y1) * dots_per_mm,
                          QPointF(item.x2, item.y2) * dots_per_mm);
    }

    void operator()(const PanelItem& item) {
        painter_.fillRect(dots(item.box), tint);
        if (!item.caution) return;
        painter_.fillRect(dots({item.box.x, item.box.y, caution_bar_mm, item.box.height}), accent);
    }

    void operator()(const HeadItem& item) {
        draw_head_drawing(painter_, dots(item.box), item.drawing,
                          {.outline = soft,
                           .line = ink,
                           .parting = accent,
                           .tint = tint,
                           .paper = Qt::white,
                           .in_marks = ink});
    }

    void operator()(const BarItem& item) {
        const QRectF box = dots(item.box);
        painter_.fillRect(box, item.fill == BarFill::tinted ? darker_tint : QColor(Qt::white));
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(pen(ink, bar_line_mm));
        if (item.fill == BarFill::hatched) hatch(box);
        painter_.drawRect(box);
    }

    void operator()(const ThreadItem& item) {
        const QPointF from = QPointF(item.x1, item.y1) * dots_per_mm;
        const QPointF to = QPointF(item.x2, item.y2) * dots_per_mm;
        const QPointF end(0, thread_end_mm * dots_per_mm);
        painter_.setPen(pen(ink, bar_line_mm));
        painter_.drawLine(from, to);
        painter_.drawLine(from - end, from + end);
        painter_.drawLine(to - end, to + end);
    }

  private:
    // Dot for dot where the box has room for just these.
    void draw_picture(const QRectF& box, const QImage& picture) {
        const QRectF on_device = painter_.transform().mapRect(box);
        const bool fits = picture.width() == qRound(on_device.width()) &&
                          picture.height() == qRound(on_device.height());
        if (!fits || dynamic_cast<const QImage*>(painter_.device()) == nullptr) {
            painter_.drawImage(box, picture);
            return;
        }
        painter_.save();
        painter_.resetTransform();
        painter_.drawImage(QPoint(qRound(on_device.x()), qRound(on_device.y())), picture);
        painter_.restore();
    }

    void hatch(const QRectF& box) {
        painter_.save();
        painter_.setClipRect(box);
        const double step = 1.6 * dots_per_mm;
        for (double x = box.left() - box.height(); x < box.right(); x += step) {
            painter_.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
        }
        painter_.restore();
    }

    TextItem centred_text(const FrameItem& item) {
        TextItem text{.box = item.box, .text = item.text, .points = item.points};
        text.align = Align::centre;
        text.box.x += frame_padding_mm;
        text.box.width = std::max(text.box.width - 2 * frame_padding_mm, 1.0);
        const double room = std::max(text.box.height - 2 * frame_padding_mm, 1.0);
        const double height = std::min(
            room, make_text_ruler()->height_mm(text.text, text.points, false, text.box.width));
        text.box.y += (text.box.height - height) / 2;
        text.box.height = height;
        return text;
    }

    QPainter& painter_;
    const PagePictures& pictures_;
    LaidTexts& texts_;
    std::size_t next_picture_ = 0;
};

struct Rows {  // millimetres from the top of the page
    double from = 0;
    double to = 0;
};

Rows rows_between(int first, int end, double dpi) {
    return {first / dpi * 25.4, end / dpi * 25.4};
}

Rows rows_of(const PageItem& item) {
    return std::visit(
        [](const auto& shown) -> Rows {
            if constexpr (requires { shown.box; }) {
                return {shown.box.y, shown.box.y + shown.box.height};
            } else {
                return {std::min(shown.y1, shown.y2), std::max(shown.y1, shown.y2)};
            }
        },
        item);
}

// Letters and lines stand out of their boxes by less.
constexpr double most_outside_mm = 2;

bool touches(const PageItem& item, const Rows& rows) {
    const Rows own = rows_of(item);
    return own.to + most_outside_mm >= rows.from && own.from - most_outside_mm <= rows.to;
}

void paint_rows(QPainter& painter, const Page& page, const PagePictures& pictures,
                LaidTexts& texts, const Rows& rows) {
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing |
                           QPainter::SmoothPixmapTransform);
    PagePainter draw(painter, pictures, texts);
    for (const PageItem& item : page.items) {
        if (touches(item, rows))
            std::visit(draw, item);
        else
            draw.pass_over(item);
    }
}

}  // namespace

void paint_page(QPainter& painter, const Page& page, const PagePictures& pictures) {
    LaidTexts texts;
    paint_rows(painter, page, pictures, texts, {0, page.size.height});
}

QSize pixels_of_paper(const Size& paper, double dpi) {
    return {qRound(paper.width / 25.4 * dpi), qRound(paper.height / 25.4 * dpi)};
}

bool is_white(const Page& page, double dpi, int first, int count) {
    const Rows rows = rows_between(first, first + count, dpi);
    return std::ranges::none_of(page.items,
                                [&](const PageItem& item) { return touches(item, rows); });
}

void paint_page_rows(QImage& image, const Page& page, const PagePictures& pictures,
                     LaidTexts& texts, double dpi, int first) {
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(0, -first);
    painter.scale(dpi / dots_per_inch, dpi / dots_per_inch);
    paint_rows(painter, page, pictures, texts, rows_between(first, first + image.height(), dpi));
}

QImage page_image(const Page& page, const PagePictures& pictures, double dpi) {
    QImage image(pixels_of_paper(page.size, dpi), QImage::Format_RGB32);
    LaidTexts texts;
    paint_page_rows(image, page, pictures, texts, dpi, 0);
    image.setDotsPerMeterX(qRound(dpi / 0.0254));
    image.setDotsPerMeterY(qRound(dpi / 0.0254));
    image.setColorSpace(QColorSpace::SRgb);
    return image;
}

}  // namespace quarterturn
