#pragma once
// Text as it stands on a page. All of it is laid out in dots of 1/720 inch (a tenth of a point),
// whatever it is drawn on, so that it breaks into the same lines on paper, in pixels and on screen.

#include <QPainter>
#include <QTextLayout>
#include <map>

#include "indexer/sheet/page.h"

namespace quarterturn {

inline constexpr int dots_per_inch = 720;
inline constexpr double dots_per_mm = dots_per_inch / 25.4;

// The painter's unit must be one dot. What does not fit the box is cut with an ellipsis.
void draw_text(QPainter& painter, const TextItem& item, const QColor& colour);

// The same of words that are laid out once and drawn several times.
class LaidText {
  public:
    explicit LaidText(const TextItem& item);
    void draw(QPainter& painter, const QColor& colour) const;

  private:
    QTextLayout layout_;
    QPointF at_;
    int fitting_ = 0;  // lines
};

// Those of a page, whose items stay where they are meanwhile.
class LaidTexts {
  public:
    const LaidText& of(const TextItem& item) {
        return laid_.try_emplace(&item, item).first->second;
    }

  private:
    std::map<const TextItem*, LaidText> laid_;
};

}  // namespace quarterturn
