#pragma once

#include <QProxyStyle>

namespace quarterturn {

// What a style sheet cannot say: our focus ring, and manners such as menus by one click.
class PaperStyle : public QProxyStyle {
    Q_OBJECT
  public:
    PaperStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* result) const override;
};

}  // namespace quarterturn
