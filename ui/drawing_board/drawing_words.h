#pragma once
// What is drawn on the head, in words: for those who cannot see it, and beside it for everybody.

#include <QString>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

QString place_words(PlanPoint point);        // "front left"
QString stroke_words(const Stroke& stroke);  // "parting from front to crown"
QString mark_words(const PlanMark& mark);    // "mark 2 at back: comb"
QString thing_words(const HeadDrawing& drawing, std::size_t thing);  // of rules/drawing_on_head.h
QString drawing_words(const HeadDrawing& drawing);                   // all of it, in one line

}  // namespace quarterturn
