#include "ui/painter/shaped_line.h"

#include <QGlyphRun>
#include <QPaintEngine>
#include <QPainterPath>
#include <QRawFont>
#include <algorithm>
#include <limits>

namespace quarterturn {
namespace {

// Scripts whose letters keep their shape, so that a PDF says what was written by itself.
bool keeps_its_shapes(QChar::Script script) {
    switch (script) {
        case QChar::Script_Unknown:
        case QChar::Script_Inherited:
        case QChar::Script_Common:
        case QChar::Script_Latin:
        case QChar::Script_Greek:
        case QChar::Script_Cyrillic:
        case QChar::Script_Armenian:
        case QChar::Script_Hebrew:
        case QChar::Script_Georgian:
        case QChar::Script_Hangul:
        case QChar::Script_Ethiopic:
        case QChar::Script_Hiragana:
        case QChar::Script_Katakana:
        case QChar::Script_Bopomofo:
        case QChar::Script_Han:
            return true;
        default:
            return false;
    }
}

QPainterPath outlines(const QTextLine& line) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const QGlyphRun& run : line.glyphRuns()) {
        const QRawFont font = run.rawFont();
        const auto glyphs = run.glyphIndexes();
        const auto places = run.positions();
        for (qsizetype i = 0; i < glyphs.size(); ++i) {
            path.addPath(font.pathForGlyph(glyphs[i]).translated(places[i]));
        }
    }
    return path;
}

// The letters of a word as they were written, one beside the other in the order they are read.
QGlyphRun unshaped(const QString& word, const QRawFont& font, bool to_the_left) {
    auto glyphs = font.glyphIndexesForString(word);
    if (to_the_left) std::ranges::reverse(glyphs);
    const auto advances = font.advancesForGlyphIndexes(glyphs, QRawFont::UseDesignMetrics);
    QList<QPointF> places;
    double x = 0;
    for (const QPointF& advance : advances) {
        places.append({x, 0});
        x += advance.x();
    }
    QGlyphRun run;
    run.setRawFont(font);
    run.setGlyphIndexes(glyphs);
    run.setPositions(places);
    run.setBoundingRect({0, 0, x, 0});
    return run;
}

// From where to where the glyphs go, whatever runs the other way beside them. A cursor between two
// directions could stand at the end of either, so it is not asked.
std::pair<double, double> reach_of(const QList<QGlyphRun>& runs) {
    double from = std::numeric_limits<double>::max();
    double to = std::numeric_limits<double>::lowest();
    for (const QGlyphRun& run : runs) {
        const auto places = run.positions();
        const auto advances = run.rawFont().advancesForGlyphIndexes(run.glyphIndexes());
        for (qsizetype i = 0; i < places.size(); ++i) {
            from = std::min(from, places[i].x());
            to = std::max(to, places[i].x() + advances[i].x());
        }
    }
    return {from, to};
}

void draw_word_behind(QPainter& painter, const QString& text, const QTextLine& line, int start,
                      int length, const QPointF& at) {
    const auto runs = line.glyphRuns(start, length);
    const auto [from, to] = reach_of(runs);
    if (from >= to) return;
    const QGlyphRun letters =
        unshaped(text.mid(start, length), runs.first().rawFont(), runs.first().isRightToLeft());
    const double width = letters.boundingRect().width();
    if (width <= 0) return;
    painter.save();
    painter.setPen(Qt::white);
    painter.translate(at.x() + from, at.y() + line.y() + line.ascent());
    painter.scale((to - from) / width, 1);
    painter.drawGlyphRun({0, 0}, letters);
    painter.restore();
}

void draw_words_behind(QPainter& painter, const QString& text, const QTextLine& line,
                       const QPointF& at) {
    const int end = line.textStart() + line.textLength();
    for (int start = line.textStart(); start < end; ++start) {
        if (text[start].isSpace()) continue;
        int stop = start;
        while (stop < end && !text[stop].isSpace()) ++stop;
        draw_word_behind(painter, text, line, start, stop - start, at);
        start = stop;
    }
}

bool is_pdf(const QPainter& painter) {
    return painter.paintEngine()->type() == QPaintEngine::Pdf;
}

}  // namespace

bool needs_shaping(const QString& words) {
    const auto letters = words.toUcs4();
    return std::ranges::any_of(
        letters, [](char32_t letter) { return !keeps_its_shapes(QChar::script(letter)); });
}

void draw_shaped_line(QPainter& painter, const QString& text, const QTextLine& line,
                      const QPointF& at) {
    if (is_pdf(painter)) draw_words_behind(painter, text, line, at);
    painter.fillPath(outlines(line).translated(at), painter.pen().color());
}

}  // namespace quarterturn
