#pragma once
// How large a text is when it is broken between words. Layouts within layouts ask for it many times
// over, and to find the glyphs of a text takes longest: here that is done once for all widths.

#include <QMap>
#include <QSize>
#include <QString>
#include <memory>

class QFont;
class QTextLayout;

namespace quarterturn {

class MeasuredText {
  public:
    MeasuredText();
    ~MeasuredText();

    // As high as QFontMetrics::boundingRect() answers with Qt::TextWordWrap for a text that is not
    // empty, and as wide; where writing of both directions meets, it may be a pixel wider.
    QSize size(int width, const QString& text, const QFont& font);

  private:
    QSize measured(int width);

    QString text_;
    std::unique_ptr<QTextLayout> layout_;
    QMap<int, QSize> sizes_;
};

}  // namespace quarterturn
