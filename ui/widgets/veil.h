#pragma once

#include <QImage>

namespace quarterturn {

// A photo as it stands on a dim board: with half of its light, so that it does not shine into a
// dark room (chosen by looking).
QImage veiled(const QImage& picture);

// Veiled while the window is dim.
QImage lit_for_mood(const QImage& picture);

}  // namespace quarterturn
