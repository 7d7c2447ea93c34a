#include "ui/drawing_board/drawing_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "indexer/rules/drawing_on_head.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double middle_third = 1.0 / 3;

struct DrawingWords {
    Q_DECLARE_TR_FUNCTIONS(DrawingWords)
};

int third(double value) {
    return value < -middle_third ? 0 : value > middle_third ? 2 : 1;
}

}  // namespace

QString place_words(PlanPoint point) {
    const std::array<std::array<QString, 3>, 3> places{
        {{DrawingWords::tr("front left"), DrawingWords::tr("front"),
          DrawingWords::tr("front right")},
         {DrawingWords::tr("left"), DrawingWords::tr("crown"), DrawingWords::tr("right")},
         {DrawingWords::tr("back left"), DrawingWords::tr("back"),
          DrawingWords::tr("back right")}}};
    return places[third(point.y)][third(point.x)];
}

QString stroke_words(const Stroke& stroke) {
    const bool parting = stroke.kind == StrokeKind::parting;
    if (stroke.points.empty()) {
        return parting ? DrawingWords::tr("parting") : DrawingWords::tr("section");
    }
    if (goes_round(stroke)) {
        PlanPoint middle;
        for (const PlanPoint& point : stroke.points) {
            const auto count = static_cast<double>(stroke.points.size());
            middle = {middle.x + point.x / count, middle.y + point.y / count};
        }
        //: %1 is a place on the head, as in "back left"
        return (parting ? DrawingWords::tr("parting round the %1")
                        : DrawingWords::tr("section round the %1"))
            .arg(place_words(middle));
    }
    //: %1 and %2 are places on the head
    return (parting ? DrawingWords::tr("parting from %1 to %2")
                    : DrawingWords::tr("section from %1 to %2"))
        .arg(place_words(stroke.points.front()), place_words(stroke.points.back()));
}

QString mark_words(const PlanMark& mark) {
    const QString place =
        DrawingWords::tr("mark %1 at %2").arg(mark.number).arg(place_words(mark.at));
    if (mark.words.empty()) return place;
    //: a mark with its place, and what she wrote to it
    return DrawingWords::tr("%1: %2").arg(place, isolated(from_utf8(mark.words)));
}

QString thing_words(const HeadDrawing& drawing, std::size_t thing) {
    const std::size_t strokes = drawing.strokes.size();
    return thing < strokes ? stroke_words(drawing.strokes[thing])
                           : mark_words(drawing.marks.at(thing - strokes));
}

QString drawing_words(const HeadDrawing& drawing) {
    QStringList words;
    for (std::size_t thing = 0; thing < things_drawn(drawing); ++thing) {
        words << thing_words(drawing, thing);
    }
    return words.isEmpty() ? DrawingWords::tr("nothing is drawn yet")
                           : words.join(QStringLiteral("; "));
}

}  // namespace quarterturn
