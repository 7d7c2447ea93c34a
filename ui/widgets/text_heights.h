#pragma once
// How high a text is at a width. Layouts within layouts ask for it many times over, and breaking a
// text into lines is most of what a long page costs.

#include <QFont>
#include <QMap>
#include <QString>

namespace quarterturn {

class TextHeights {
  public:
    // `measure(width)` is asked once for each width, until text or font are others.
    template <class Measure>
    int at(int width, const QString& text, const QFont& font, Measure measure) {
        if (text != text_ || font != font_) {
            text_ = text;
            font_ = font;
            heights_.clear();
        }
        const auto known = heights_.constFind(width);
        if (known != heights_.constEnd()) return *known;
        return *heights_.insert(width, measure(width));
    }

  private:
    QString text_;
    QFont font_;
    QMap<int, int> heights_;
};

}  // namespace quarterturn
