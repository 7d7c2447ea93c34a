#include "ui/theme/type.h"

#include <QApplication>

namespace quarterturn {
namespace {

constexpr double normal_body_points = 11;

double body_points(TextSize size) {
    switch (size) {
        case TextSize::normal:
            return normal_body_points;
        case TextSize::large:
            return 13;
        case TextSize::largest:
            return 15.5;
    }
    return normal_body_points;
}

QFont with_role(QFont font, TextRole role, double body) {
    switch (role) {
        case TextRole::title:
            font.setPointSizeF(body * 1.9);
            break;
        case TextRole::heading:
            font.setPointSizeF(body * 1.25);
            font.setBold(true);
            break;
        case TextRole::body:
            font.setPointSizeF(body);
            break;
        case TextRole::small:
            font.setPointSizeF(body * 0.91);
            break;
    }
    return font;
}

}  // namespace

QFont text_font(TextRole role, TextSize size) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setStyleHint(QFont::SansSerif);
    return with_role(font, role, body_points(size));
}

QFont text_font(TextRole role) {
    const QFont body = QApplication::font();
    return with_role(body, role, body.pointSizeF());
}

int space(int steps) {
    return qRound(4.0 * steps * QApplication::font().pointSizeF() / normal_body_points);
}

}  // namespace quarterturn
